// SPDX-License-Identifier: MIT
#include "json.hpp"

#include <charconv>

#include "scruple/quantity/exact.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::emit::json {

Value number(std::string_view printed) {
    double value = 0;
    const char* end = printed.data() + printed.size();
    const auto [stop, error] = std::from_chars(printed.data(), end, value);
    if (error != std::errc() || stop != end) return nullptr;
    constexpr double exactly_held = 9007199254740992.0;  // 2^53: past it whole doubles have gaps
    if (printed.find('.') == std::string_view::npos && value < exactly_held && value > -exactly_held)
        return static_cast<std::int64_t>(value);
    return value;
}

Value number(double value) {
    return number(quantity::significant_text(value, 6));
}

Value number(const quantity::Exact& value, int places) {
    return number(quantity::decimal_text(value, places));
}

Value figure(const plan::Figure& figure) {
    Value all;
    all["value"] = number(figure.text);
    if (all["value"].is_null()) all["value"] = number(figure.value.to_double());  // `33 1/3`
    all["unit"] = figure.unit;
    return all;
}

Value text_or_null(std::string_view text) {
    return text.empty() ? Value(nullptr) : Value(text);
}

std::string document(const Value& value) {
    return text::with_unseen_escaped(value.dump(2, ' ', false, Value::error_handler_t::replace)) + '\n';
}

}  // namespace scruple::emit::json
