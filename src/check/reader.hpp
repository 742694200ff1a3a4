// SPDX-License-Identifier: MIT
// What every part of the checker needs while it reads one file: the text, the tree, the model so far,
// and a place for what is wrong.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scruple/check/model.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::check {

struct Reader {
    const Model& model;
    text::FileId file;
    const text::Source& source;
    const syntax::Tree& tree;
    std::vector<diagnostics::Diagnostic>& out;
    std::string scratch = {};        ///< for normal names, so that a look-up allocates nothing
    std::uint32_t statement = none;  ///< the statement being read
    unsigned suggestions_left =
        20;  ///< near spellings still looked for: a block whose every line is wrong gets no thousand searches

    [[nodiscard]] std::string_view text(text::Span span) const { return source.at(span); }
    [[nodiscard]] std::string_view text(const syntax::Name& name) const { return source.at(name.span); }
    [[nodiscard]] Place place(text::Span span) const { return {file, span, statement}; }
    [[nodiscard]] text::Span statement_span() const { return tree.statements[statement].span; }

    /// The normal name, in `scratch`; good until the next call.
    const std::string& normal(std::string_view written);

    diagnostics::Diagnostic& report(diagnostics::Kind kind, text::Span span,
                                    std::initializer_list<std::string_view> arguments = {});
};

// ---- quantities ------------------------------------------------------------------------------------

/// A quantity in base units (°C for temperatures; the stated number for strengths).
struct Measured {
    Exact value{};
    quantity::Dimension dimension;
    quantity::Unit unit;
};

/// Reads a number; reports a loose one.
[[nodiscard]] std::optional<Exact> read_number(Reader& reader, const syntax::Number& number);

/// Says what is wrong with a unit that is none, or that has several readings; `wanted`: what belongs there, if but one
/// thing does.
void explain_unit(Reader& reader, const syntax::Quantity& quantity,
                  std::optional<quantity::Dimension> wanted = std::nullopt);

/// Says that a quantity with a known unit measures another thing than what is wanted.
void report_wrong_kind(Reader& reader, const syntax::Quantity& quantity, quantity::Dimension wanted);

/// Reads a quantity of any dimension; reports a loose one with its readings.
[[nodiscard]] std::optional<Measured> read_any(Reader& reader, const syntax::Quantity& quantity,
                                               std::optional<quantity::Dimension> wanted = std::nullopt);

/// Reads a quantity that must be of one dimension; reports another.
[[nodiscard]] std::optional<Exact> read_as(Reader& reader, const syntax::Quantity& quantity,
                                           quantity::Dimension wanted);
/// The same, and more than zero.
[[nodiscard]] std::optional<Exact> read_positive(Reader& reader, const syntax::Quantity& quantity,
                                                 quantity::Dimension wanted);

/// A bare number, more than zero.
[[nodiscard]] std::optional<Exact> read_positive(Reader& reader, const syntax::Number& number);

[[nodiscard]] std::optional<Interval> read_interval(Reader& reader, const syntax::Range& range,
                                                    quantity::Dimension wanted);
/// Seconds, more than none.
[[nodiscard]] std::optional<Interval> read_duration(Reader& reader, const syntax::Range& range);
/// °C, with a look at whether water would still be a liquid.
[[nodiscard]] std::optional<Interval> read_celsius(Reader& reader, const syntax::Range& range);

/// A strength that there can be.
[[nodiscard]] std::optional<Strength> read_strength(Reader& reader, const syntax::Quantity& quantity);

/// Money, none of it too.
[[nodiscard]] std::optional<Money> read_money(Reader& reader, const syntax::Money& money);

/// The day, or nullopt for one that the calendar does not have.
[[nodiscard]] std::optional<Day> read_day(Reader& reader, const syntax::Date& date);

// ---- names -----------------------------------------------------------------------------------------

/// What a substance in the text turned out to be.
struct Resolved {
    Id chemical = none, form = none;
    Id solution = none;
    std::string_view grade{};
    std::optional<Strength> strength{};
    std::string_view solvent{};
    bool saturated = false;
    std::optional<Interval> saturated_at{};
};

/// How strict a look-up is about the form.
enum class FormNeed : std::uint8_t {
    required,  ///< several forms and none stated is a fault, and so is a bottle whose strength is not said
    pure,      ///< the form counts, and not which bottle it comes from
    free       ///< the chemical alone will do
};

/// What a name may stand for.
enum class NameOf : std::uint8_t { anything, chemical, solution };

/// A chemical in a form, a part of `recipe` (or none), or another recipe's solution; reports what it is not.
[[nodiscard]] std::optional<Resolved> resolve(Reader& reader, const syntax::Substance& substance, Id recipe,
                                              FormNeed need = FormNeed::required);
/// A chemical only; a solution of one only where the bottle counts (FormNeed::required).
[[nodiscard]] std::optional<Resolved> resolve_chemical(Reader& reader, const syntax::Substance& substance,
                                                       FormNeed need = FormNeed::required);
/// A solution only, by name.
[[nodiscard]] Id resolve_solution(Reader& reader, const syntax::Name& name, Id recipe);

/// The solution a normal name means inside a recipe, or `none`; reports nothing.
[[nodiscard]] Id find_solution(const Model& model, Id recipe, const std::string& normal, std::string& key);

/// A film or sheet format: its id (none for a sheet with a stated size) and the area of one, where known.
struct ResolvedFormat {
    Id format = none;
    std::optional<Exact> area_cm2{};
};
[[nodiscard]] std::optional<ResolvedFormat> resolve_format(Reader& reader, const syntax::FilmFormat& format);

/// `part C`, `stock`: a name that one recipe's solutions may have among themselves.
[[nodiscard]] bool begins_with_section_word(std::string_view normal);

/// Says that nothing is called so, with the nearest name that there is; where the line begins with a word of the
/// language, how a line with that word is said instead. A recipe of several solutions asks which.
void report_unknown(Reader& reader, const syntax::Name& name, Id recipe, NameOf wanted = NameOf::anything);

/// The nearest of `known`, in backticks, or `otherwise`.
[[nodiscard]] std::string nearest_or(Reader& reader, std::string_view written,
                                     const std::vector<std::string_view>& known, std::string_view otherwise);
/// The same among the names of processes, suppliers …
template <class T>
[[nodiscard]] std::string suggestion(Reader& reader, std::string_view written, const std::vector<T>& all,
                                     std::string_view otherwise) {
    std::vector<std::string_view> names;
    names.reserve(all.size());
    for (const auto& one : all) names.push_back(one.name);
    return nearest_or(reader, written, names, otherwise);
}

}  // namespace scruple::check
