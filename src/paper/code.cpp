// SPDX-License-Identifier: MIT
#include "code.hpp"

#include <qrencode.h>

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace scruple::paper {
namespace {

constexpr int quiet = 4;  // modules, as the standard asks

struct Free {
    void operator()(QRcode* code) const { QRcode_free(code); }
    void operator()(QRinput* input) const { QRinput_free(input); }
};
using Code = std::shared_ptr<QRcode>;

constexpr unsigned int utf8 = 26;  // its number among the extended channel interpretations

Code encoded(const std::string& text, QRecLevel level) {
    const std::unique_ptr<QRinput, Free> input(QRinput_new2(0, level));
    const bool plain = std::ranges::all_of(text, [](char c) { return (c & 0x80) == 0; });
    const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
    if (!plain && QRinput_appendECIheader(input.get(), utf8) != 0) return nullptr;
    if (QRinput_append(input.get(), QR_MODE_8, static_cast<int>(text.size()), bytes) != 0) return nullptr;
    return {QRcode_encodeInput(input.get()), Free{}};
}

Code encoded(const std::string& text) {
    for (const QRecLevel level : {QR_ECLEVEL_Q, QR_ECLEVEL_L})
        if (Code code = encoded(text, level)) return code;
    throw std::runtime_error("a name is too long for the code on a label");
}

}  // namespace

Block qr_code(const std::string& text, double side) {
    const Code code = encoded(text);
    const double module = side / (code->width + 2 * quiet);
    return {side, 0, false, [code, module](cairo_t* ink, double x, double y) {
                const auto at = [module](int place) { return (place + quiet) * module; };
                for (int row = 0; row < code->width; ++row)
                    for (int column = 0; column < code->width; ++column)
                        if ((code->data[row * code->width + column] & 1) != 0)
                            cairo_rectangle(ink, x + at(column), y + at(row), module, module);
                cairo_fill(ink);
            }};
}

}  // namespace scruple::paper
