// SPDX-License-Identifier: MIT
#include "number.hpp"

#include <array>
#include <limits>
#include <optional>

namespace scruple::syntax {
namespace {

struct Ratio {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
};

struct Vulgar {
    std::string_view text;
    Ratio value;
};

constexpr std::array<Vulgar, 9> vulgars = {{{"½", {1, 2}},
                                            {"¼", {1, 4}},
                                            {"¾", {3, 4}},
                                            {"⅓", {1, 3}},
                                            {"⅔", {2, 3}},
                                            {"⅛", {1, 8}},
                                            {"⅜", {3, 8}},
                                            {"⅝", {5, 8}},
                                            {"⅞", {7, 8}}}};

/// Reads a number from its beginning on; `fits` turns false where a word is too small.
class Reader {
  public:
    explicit Reader(std::string_view text) : rest_(text) {}

    bool fits = true;

    [[nodiscard]] bool done() const { return rest_.empty(); }

    bool take(std::string_view text) {
        if (!rest_.starts_with(text)) return false;
        rest_.remove_prefix(text.size());
        return true;
    }

    [[nodiscard]] bool at_digit() const { return !rest_.empty() && rest_[0] >= '0' && rest_[0] <= '9'; }

    void take_digits(Ratio& into, std::int64_t times_denominator) {
        while (at_digit()) {
            fits = fits && !__builtin_mul_overflow(into.numerator, std::int64_t{10}, &into.numerator) &&
                   !__builtin_add_overflow(into.numerator, std::int64_t{rest_[0] - '0'}, &into.numerator) &&
                   !__builtin_mul_overflow(into.denominator, times_denominator, &into.denominator);
            rest_.remove_prefix(1);
        }
    }

    std::optional<Ratio> take_vulgar() {
        if (at_digit()) return std::nullopt;
        for (const auto& vulgar : vulgars) {
            if (take(vulgar.text)) return vulgar.value;
        }
        return std::nullopt;
    }

    /// `1/2` after a whole number, the gap before it already taken.
    Ratio take_fraction() {
        Ratio top, bottom;
        take_digits(top, 1);
        if (!take("/")) take("⁄");
        take_digits(bottom, 1);
        return {top.numerator, bottom.numerator};
    }

    void skip_gap() {
        while (take(" ") || take("\t") || take("\u00A0")) {
        }
    }

    Ratio mixed(Ratio whole, Ratio part) {
        Ratio result{0, part.denominator};
        fits = fits && !__builtin_mul_overflow(whole.numerator, part.denominator, &result.numerator) &&
               !__builtin_add_overflow(result.numerator, part.numerator, &result.numerator);
        return result;
    }

    Ratio unsigned_number() {
        if (const auto part = take_vulgar()) return *part;
        Ratio whole;
        take_digits(whole, 1);
        if (done()) return whole;
        if (take(".")) {
            take_digits(whole, 10);
            return whole;
        }
        if (const auto part = take_vulgar()) return mixed(whole, *part);
        if (take("/") || take("⁄")) {
            Ratio bottom;
            take_digits(bottom, 1);
            return {whole.numerator, bottom.numerator};
        }
        skip_gap();
        return mixed(whole, take_fraction());
    }

  private:
    std::string_view rest_;
};

}  // namespace

Number read_number(std::string_view text, Span span) {
    Reader reader(text);
    const bool negative = reader.take("-") || reader.take("−");
    if (!negative) reader.take("+");
    const auto value = reader.unsigned_number();
    const bool fits = reader.fits && value.denominator <= std::numeric_limits<std::uint32_t>::max();
    if (!fits) return {0, 0, span};
    return {negative ? -value.numerator : value.numerator, static_cast<std::uint32_t>(value.denominator), span};
}

}  // namespace scruple::syntax
