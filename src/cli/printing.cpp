// SPDX-License-Identifier: MIT
#include "printing.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cstdlib>

#include "batch.hpp"
#include "terminal.hpp"

namespace scruple::cli {
namespace {

std::optional<paper::Medium> medium_of(const Call& call) {
    const auto format = call.value("--as");
    if (format == "pdf") return paper::Medium::pdf;
    if (format == "svg") return paper::Medium::svg;
    if (format == "png") return paper::Medium::png;
    return std::nullopt;
}

paper::SheetSize sheet_of(const Call& call) {
    const auto sheet = call.value("--paper");
    if (!sheet || *sheet == "a4") return paper::a4;
    if (*sheet == "a5") return paper::a5;
    if (*sheet == "letter") return paper::letter;
    throw Stop{Exit::wrong_call, fmt::format("`--paper {}` is no sheet; there are a4, a5 and letter", *sheet)};
}

/// Seconds since 1970, as reproducible-builds.org has it.
std::optional<check::Day> day_of_the_input() {
    const char* text = std::getenv("SOURCE_DATE_EPOCH");
    if (text == nullptr) return std::nullopt;
    const std::string_view digits(text);
    long long seconds = 0;
    const auto [end, error] = std::from_chars(digits.begin(), digits.end(), seconds);
    constexpr long long day = 86400, most_days = 2932896;  // 9999-12-31
    if (error != std::errc() || end != digits.end() || seconds < 0 || seconds / day > most_days) return std::nullopt;
    return static_cast<check::Day>(seconds / day);
}

paper::Printing printing(const Call& call, paper::Medium medium) {
    const auto day = mixed_on(call);
    return {medium, sheet_of(call), day ? day : day_of_the_input()};
}

}  // namespace

std::optional<paper::Printing> asked_printing(const Call& call) {
    const auto medium = medium_of(call);
    if (!medium) {
        if (call.has("--paper")) throw Stop{Exit::wrong_call, "`--paper` goes with `--as pdf`, `svg` or `png`"};
        return std::nullopt;
    }
    if (!call.has("--out") && is_terminal(Stream::out))
        throw Stop{Exit::wrong_call, fmt::format("say where to put it: `--out card.{}`", *call.value("--as"))};
    return printing(call, *medium);
}

paper::Printing as_pdf(const Call& call) {
    return printing(call, paper::Medium::pdf);
}

}  // namespace scruple::cli
