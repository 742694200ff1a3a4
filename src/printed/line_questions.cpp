// SPDX-License-Identifier: MIT
// What one line may mean: which form, which ounce, which percent.
#include <fmt/format.h>

#include <algorithm>

#include "questions.hpp"

namespace scruple::printed {
namespace {

constexpr double told = 6.0;  ///< another ounce in one line is told of only where it is at all likely

class LineAsker {
  public:
    explicit LineAsker(const Asked& asked) : asked_(asked) {}

    std::vector<Question> run() {
        const std::size_t lines = asked_.layout.lines.size();
        for (std::size_t i = 0; i < lines; ++i) form(i);
        for (std::size_t i = 0; i < lines; ++i) other_ounce(i);
        for (std::size_t i = 0; i < lines; ++i) percent(i);
        return std::move(all_);
    }

  private:
    [[nodiscard]] Question of(std::size_t i, std::string about) const {
        const Known& known = asked_.layout.lines[i];
        return {.about = std::move(about),
                .line = static_cast<std::size_t>(known.line - asked_.page.lines.data()),
                .of_line = true};
    }

    void add(Question question, BySaying by_saying) {
        if (question.options.size() > 1 || question.verdict == Verdict::by_hand)
            all_.push_back(judged(std::move(question), by_saying));
    }

    void form(std::size_t i) {
        const Known& known = asked_.layout.lines[i];
        if (known.what.chemical == check::none || !known.line->form.empty()) return;
        const check::Chemical& chemical = asked_.model.chemicals[known.what.chemical];
        if (chemical.forms.size() < 2) return;
        Question question = of(i, fmt::format("which {}", chemical.name));
        question.look_for = fmt::format(
            "a word such as `dry`, `anhydrous` or `cryst.` beside any {} of the book, its list of chemicals, or what "
            "was "
            "sold under that name where it was printed",
            chemical.name);
        const check::Id taken = known.ways[asked_.options.best().ways[i]].form;
        for (check::Id form = 0; form < chemical.forms.size(); ++form) {
            const auto found = asked_.search.best_with(i, [form](const Way& way) { return way.form == form; });
            if (!found) continue;
            const Found& shown = form == taken ? asked_.options.best() : *found;
            Option option =
                asked_.options.option(fmt::format("{} ({})", chemical.name, chemical.forms[form].name), shown, i);
            const double factor = (chemical.forms[form].molar_mass / chemical.forms[taken].molar_mass).to_double();
            if (form != taken)
                option.changes.push_back(fmt::format("{} % of what ({}) brings",
                                                     quantity::significant_text(100 / factor, 3),
                                                     chemical.forms[taken].name));
            question.options.push_back(std::move(option));
        }
        settle_by(question, form_by_hand(chemical.name));
        add(std::move(question), BySaying::yes);
    }

    [[nodiscard]] const check::ReadingByHand* form_by_hand(std::string_view chemical) const {
        for (const auto& line : asked_.by_hand) {
            if (by_hand_of(line.said) != ByHand::form) continue;
            const Named named = chemical_named(asked_.model, line.said.substr(0, line.said.find(" (")));
            if (named.chemical != check::none && asked_.model.chemicals[named.chemical].name == chemical) return &line;
        }
        return nullptr;
    }

    /// A line that settles things for one chemical of several says which.
    [[nodiscard]] static std::string narrowed_to(const Known& known) {
        return known.what.chemical == check::none ? "" : " of " + name_of(known);
    }

    static std::string_view ounce_words(Ounce ounce) {
        return ounce == Ounce::apothecaries ? "oz apothecaries" : "oz avoirdupois";
    }

    void ounce_by_hand(std::size_t i) {
        const Known& known = asked_.layout.lines[i];
        const ByHand said = *known.ounce == Ounce::apothecaries ? ByHand::apothecaries : ByHand::avoirdupois;
        Question question = of(i, "whose ounce for " + name_of(known));
        question.options.push_back(
            asked_.options.option(std::string(ounce_words(*known.ounce)), asked_.options.best(), i));
        settle_by(question, hand_line(asked_, said, 0, known.what.chemical));
        add(std::move(question), BySaying::yes);
    }

    void other_ounce(std::size_t i) {
        if (asked_.layout.lines[i].ounce) {
            ounce_by_hand(i);
            return;
        }
        const bool taken = asked_.layout.lines[i].ways[asked_.options.best().ways[i]].other_ounce;
        const auto as_page = asked_.search.best_with(i, [](const Way& way) { return !way.other_ounce; });
        const auto other = asked_.search.best_with(i, [](const Way& way) { return way.other_ounce; });
        if (!as_page || !other) return;
        // A single column knows nothing of one line against the others.
        if (!taken && asked_.layout.lines[i].line->columns.size() < 2) return;
        if (!taken && other->cost - asked_.options.best().cost > told) return;
        const Known& known = asked_.layout.lines[i];
        const Ounce of_page = as_page->shared.ounce;
        const Ounce of_line = other->shared.ounce == Ounce::apothecaries ? Ounce::avoirdupois : Ounce::apothecaries;
        if (of_line == of_page) return;
        Question question =
            of(i, fmt::format("whose ounce for {}, where the page has {}", name_of(known), ounce_words(of_page)));
        question.look_for = "whether the columns of its other lines agree";
        question.narrowed = narrowed_to(known);
        question.options.push_back(asked_.options.option(std::string(ounce_words(of_page)), *as_page, i));
        question.options.push_back(asked_.options.option(std::string(ounce_words(of_line)), *other, i));
        add(std::move(question), BySaying::yes);
    }

    void percent(std::size_t i) {
        const Known& known = asked_.layout.lines[i];
        if (!known.line->percent || known.line->percent_said) return;
        Question question = of(i, "which percent of " + name_of(known));
        question.look_for = "how the book makes its solutions: so much in so much by weight, or made up to a volume";
        for (const Percent percent : {Percent::by_volume, Percent::by_weight, Percent::weight_in_volume})
            if (const auto found = asked_.search.best_with(i, [&](const Way& way) { return way.percent == percent; }))
                question.options.push_back(asked_.options.option(std::string(words_of(percent)), *found, i));
        for (const ByHand hand : {ByHand::by_volume, ByHand::by_weight, ByHand::weight_in_volume})
            settle_by(question, hand_line(asked_, hand, 0, known.what.chemical));
        question.narrowed = narrowed_to(known);
        add(std::move(question), BySaying::yes);
    }

    const Asked& asked_;
    std::vector<Question> all_;
};

}  // namespace

std::vector<Question> line_questions(const Asked& asked) {
    return LineAsker(asked).run();
}

}  // namespace scruple::printed
