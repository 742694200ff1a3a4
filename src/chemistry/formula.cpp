// SPDX-License-Identifier: MIT
#include <cmath>

#include "elements.hpp"

namespace scruple::chemistry {

using quantity::Exact;

namespace {

using What = FormulaFault::What;
using Digits = std::array<std::string_view, 10>;

constexpr Digits plain_digits = {"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"};
constexpr Digits subscripts = {"₀", "₁", "₂", "₃", "₄", "₅", "₆", "₇", "₈", "₉"};
constexpr Digits superscripts = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};

constexpr int most_atoms = 100000;  // of one element; far past any substance, far below overflow
constexpr std::size_t most_bytes = 1000;
constexpr int most_brackets = 16;  // one inside the other

bool is_continuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}
bool is_ascii(char c) {
    return static_cast<unsigned char>(c) < 0x80;
}
bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}
bool is_upper(char c) {
    return c >= 'A' && c <= 'Z';
}

/// Reads one formula from left to right; a FormulaFault is thrown at the first place that does not fit.
///
///   formula <- group+ (dot multiplier? group+)* charge?
///   group   <- element count? / '(' group+ ')' count? / '[' group+ ']' count?
class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {}

    Formula read() {
        if (text_.empty()) throw fault(What::empty, 0, 0);
        if (text_.size() > most_bytes) throw fault(What::too_large, most_bytes, 0);
        part(1);
        while (take("·") || take(".") || take("*")) hydrate();
        formula_.charge = charge();
        if (at_ != text_.size()) fail_here();
        for (Element e = 0; e < element_count; ++e)
            if (!total_[e].is_zero()) formula_.atoms.push_back({e, total_[e]});
        return std::move(formula_);
    }

  private:
    using Counts = std::array<int, element_count>;

    // ---- groups ----------------------------------------------------------------------------

    void part(const Exact& multiplier) {
        const Counts counts = groups();
        for (Element e = 0; e < element_count; ++e)
            if (counts[e] != 0) total_[e] += multiplier * Exact(counts[e]);
    }

    void hydrate() {
        const Exact times = multiplier();
        const std::size_t from = at_;
        part(times);
        const std::string_view said = text_.substr(from, at_ - from);
        if (said == "H2O" || said == "H₂O") formula_.water += times;
    }

    Counts groups() {
        Counts sum{};
        for (int here = 0;; ++here) {
            const std::size_t from = at_;
            const std::optional<Counts> one = group();
            if (!one && here == 0) fail_here();
            if (!one) {
                groups_in_part_ = here;
                return sum;
            }
            const int times = count();
            for (Element e = 0; e < element_count; ++e)
                if ((*one)[e] != 0) sum[e] = limited(sum[e] + std::int64_t{times} * (*one)[e], from);
        }
    }

    std::optional<Counts> group() {
        if (take("(")) return bracket(")");
        if (take("[")) return bracket("]");
        if (at_ == text_.size() || !is_upper(text_[at_])) return std::nullopt;
        Counts one{};
        one[element()] = 1;
        return one;
    }

    Counts bracket(std::string_view closing) {
        const std::size_t opening = at_ - 1;
        if (++depth_ > most_brackets) throw fault(What::too_large, opening, 1);
        const Counts inside = groups();
        if (at_ == text_.size()) throw fault(What::unbalanced_bracket, opening, 1);
        if (!take(closing)) fail_here();
        --depth_;
        return inside;
    }

    Element element() {
        std::size_t end = at_ + 1;
        while (end < text_.size() && is_lower(text_[end])) ++end;
        const std::string_view said = text_.substr(at_, end - at_);
        const std::optional<Element> known = find_element(said);
        if (!known) throw fault(What::unknown_element, at_, said.size());
        at_ = end;
        return *known;
    }

    // ---- numbers ---------------------------------------------------------------------------

    /// How often a group counts; nothing there is once. Keeps where plain digits stood, for charge().
    int count() {
        const std::size_t from = at_;
        const std::optional<int> plain = number(plain_digits);
        plain_count_ = plain ? text_.substr(from, at_ - from) : std::string_view();
        const std::optional<int> said = plain ? plain : number(subscripts);
        if (said == 0) throw fault(What::unexpected, from, at_ - from);
        return said.value_or(1);
    }

    /// After a hydrate dot: `10`, `0.5`, `1/2`, `½`, `1½`; nothing there is once.
    Exact multiplier() {
        const std::size_t from = at_;
        const std::optional<int> whole = number(plain_digits);
        Exact times = whole.value_or(0);
        if (take("½"))
            times += Exact(1, 2);
        else if (whole && take("/"))
            times /= number_after(from);
        else if (whole && take("."))
            times += decimals();
        else if (!whole)
            return 1;
        if (times.is_zero()) throw fault(What::unexpected, from, at_ - from);
        return times;
    }

    int number_after(std::size_t from) {
        const std::optional<int> below = number(plain_digits);
        if (!below || *below == 0) throw fault(What::unexpected, from, at_ - from);
        return *below;
    }

    Exact decimals() {
        const std::size_t from = at_;
        const int digits = number_after(from);
        Exact scale = 1;
        for (std::size_t i = from; i < at_; ++i) scale *= 10;
        return Exact(digits) / scale;
    }

    std::optional<int> number(const Digits& digits) {
        const std::size_t from = at_;
        std::int64_t value = 0;
        while (const std::optional<int> digit = take_digit(digits)) value = limited(value * 10 + *digit, from);
        return at_ == from ? std::nullopt : std::optional(static_cast<int>(value));
    }

    std::optional<int> take_digit(const Digits& digits) {
        if (at_ == text_.size()) return std::nullopt;
        const bool is_plain = is_ascii(text_[at_]);  // as most are, and easily told
        if (is_plain != is_ascii(digits.front().front()) || (is_plain && !is_digit(text_[at_]))) return std::nullopt;
        for (int value = 0; value < 10; ++value)
            if (take(digits[static_cast<std::size_t>(value)])) return value;
        return std::nullopt;
    }

    // ---- charge ----------------------------------------------------------------------------

    int charge() {
        const std::size_t digits_at = at_ - plain_count_.size();
        const std::optional<int> before = number(superscripts);
        const int sign = take_sign();
        if (sign == 0) {
            if (before) fail_here();
            return 0;
        }
        const std::optional<int> after = before ? before : charge_after_sign();
        if (!after && reads_both_ways()) throw fault(What::charge_both_ways, digits_at, at_ - digits_at);
        if (after == 0) throw fault(What::unexpected, digits_at, at_ - digits_at);
        return sign * after.value_or(1);
    }

    std::optional<int> charge_after_sign() {
        const std::optional<int> plain = number(plain_digits);
        return plain ? plain : number(superscripts);
    }

    int take_sign() {
        if (take("+") || take("⁺")) return 1;
        if (take("-") || take("−") || take("⁻")) return -1;
        return 0;
    }

    /// `CO32-` and `Fe2+` do, the 4 of `NH4+` can only count the atoms before it.
    bool reads_both_ways() const { return plain_count_.size() > 1 || (!plain_count_.empty() && groups_in_part_ == 1); }

    // ---- characters ------------------------------------------------------------------------

    bool take(std::string_view piece) {
        if (!text_.substr(at_).starts_with(piece)) return false;
        at_ += piece.size();
        return true;
    }

    int limited(std::int64_t value, std::size_t from) const {
        if (value > most_atoms) throw fault(What::too_large, from, at_ - from);
        return static_cast<int>(value);
    }

    FormulaFault fault(What what, std::size_t at, std::size_t length) const {
        return {what, at, std::string(text_.substr(at, length))};
    }

    /// Names the whole character that stands here, be it of several bytes.
    [[noreturn]] void fail_here() const {
        std::size_t length = at_ < text_.size() ? 1 : 0;
        while (length < 4 && at_ + length < text_.size() && is_continuation(text_[at_ + length])) ++length;
        throw fault(is_stray_bracket() ? What::unbalanced_bracket : What::unexpected, at_, length);
    }

    /// A closing bracket; that of an empty pair is not stray, only unexpected.
    bool is_stray_bracket() const {
        constexpr std::string_view closing = ")]", opening = "([";
        if (at_ == text_.size() || closing.find(text_[at_]) == closing.npos) return false;
        return at_ == 0 || opening.find(text_[at_ - 1]) == opening.npos;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int depth_ = 0;
    int groups_in_part_ = 0;        // groups of the part that was read last
    std::string_view plain_count_;  // the digits of the count that was read last, where they were plain ones
    Tally total_{};
    Formula formula_;
};

}  // namespace

std::variant<Formula, FormulaFault> read_formula(std::string_view text) {
    try {
        return Reader(text).read();
    } catch (const FormulaFault& fault) {
        return fault;
    }
}

Formula without_water(Formula formula) {
    for (auto& [element, atoms] : formula.atoms) {
        if (symbol(element) == "H") atoms -= formula.water * 2;
        if (symbol(element) == "O") atoms -= formula.water;
    }
    std::erase_if(formula.atoms, [](const Formula::Count& count) { return count.atoms.is_zero(); });
    formula.water = 0;
    return formula;
}

Exact molar_mass(const Formula& formula) {
    Exact sum;
    for (const auto& [element, atoms] : formula.atoms) sum += atoms * atomic_weight(element);
    return sum;
}

double molar_mass_off(const Formula& formula) {
    double off = 0;
    for (const auto& [element, atoms] : formula.atoms)
        off = std::hypot(off, atoms.to_double() * atomic_weight_off(element));
    return formula.atoms.empty() ? 0 : off / molar_mass(formula).to_double();
}

}  // namespace scruple::chemistry
