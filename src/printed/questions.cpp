// SPDX-License-Identifier: MIT
#include "questions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace scruple::printed {
namespace {

// Odds of 20 to 1 are clear, less than about 3 to 1 is open; ours.
constexpr double clear = 3.0, open = 1.0;
constexpr double told = 6.0;  ///< another ounce in one line is told of only where it is at all likely

constexpr double percent_unsaid = 0.4;
constexpr double one_part_in = 0.9;

using Holds = std::function<bool(const Shared&)>;

class Asker {
  public:
    Asker(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge, const Search& search,
          const std::vector<check::ReadingByHand>& by_hand)
        : model_(model), page_(page), layout_(layout), judge_(judge), search_(search), by_hand_(by_hand) {}

    std::vector<Question> run() {
        for (std::size_t i = 0; i < layout_.columns.size(); ++i) fluid(i);
        ounce();
        gr();
        stronger();
        for (std::size_t i = 0; i < layout_.lines.size(); ++i) form(i);
        for (std::size_t i = 0; i < layout_.lines.size(); ++i) other_ounce(i);
        for (std::size_t i = 0; i < layout_.lines.size(); ++i) percent(i);
        for (const Line& line : page_.lines)
            if (line.what == Line::What::dilution) dilution(line);
        return std::move(all_);
    }

  private:
    /// Whether a `reading` line can settle it.
    enum class BySaying : std::uint8_t { no, yes };

    // ---- of the page ----

    struct Choice {
        std::string words;
        ByHand hand;
        Holds holds;
    };

    void of_page(const std::string& about, const std::vector<Choice>& choices, BySaying by_saying,
                 bool of_the_page = false) {
        const auto best = search_.best_of([](const Shared&) { return true; }, of_the_page);
        Question question{.about = about};
        for (const Choice& choice : choices) {
            const auto found = search_.best_of(choice.holds, of_the_page);
            if (!found) continue;
            question.options.push_back({choice.words, found->cost - best->cost, differences(*best, *found)});
            if (const auto* line = by_hand(choice.hand)) {
                question.verdict = Verdict::by_hand;
                question.because = line->reason;
            }
        }
        if (question.options.size() > 1 || question.verdict == Verdict::by_hand) add(std::move(question), by_saying);
    }

    void fluid(std::size_t column) {
        const auto is = [column](Fluid fluid) {
            return [column, fluid](const Shared& one) { return one.fluid[column] == fluid; };
        };
        const bool both = search_.best_of(is(Fluid::us)) && search_.best_of(is(Fluid::imperial));
        const bool hand = by_hand(ByHand::us) != nullptr || by_hand(ByHand::imperial) != nullptr;
        if (layout_.columns[column].metric || (!both && !hand)) return;
        const std::string where = layout_.columns.size() > 1 ? fmt::format(" in column {}", column + 1) : "";
        of_page("whose fluid ounce" + where,
                {{"fl oz imperial", ByHand::imperial, is(Fluid::imperial)}, {"fl oz us", ByHand::us, is(Fluid::us)}},
                BySaying::yes);
    }

    void ounce() {
        const auto is = [](Ounce ounce) { return [ounce](const Shared& one) { return one.ounce == ounce; }; };
        of_page("whose ounce for what is weighed",
                {{"oz avoirdupois", ByHand::avoirdupois, is(Ounce::avoirdupois)},
                 {"oz apothecaries", ByHand::apothecaries, is(Ounce::apothecaries)}},
                BySaying::yes, true);
    }

    void gr() {
        of_page("what gr means",
                {{"gr grain", ByHand::grain, [](const Shared& one) { return !one.gr_is_gram; }},
                 {"gr gram", ByHand::gram, [](const Shared& one) { return one.gr_is_gram; }}},
                BySaying::yes);
    }

    void stronger() {
        if (search_.best().shared.stronger == 1) return;
        of_page("whether the columns are of one strength",
                {{"the metric column is stronger or weaker throughout", ByHand::nothing,
                  [](const Shared& one) { return one.stronger != 1; }},
                 {"the columns are of one strength, and rounded", ByHand::nothing,
                  [](const Shared& one) { return one.stronger == 1; }}},
                BySaying::no);
    }

    [[nodiscard]] const check::ReadingByHand* by_hand(ByHand what) const {
        if (what == ByHand::nothing) return nullptr;
        const auto found =
            std::ranges::find_if(by_hand_, [&](const auto& line) { return by_hand_of(line.said) == what; });
        return found == by_hand_.end() ? nullptr : &*found;
    }

    [[nodiscard]] std::vector<std::string> differences(const Found& best, const Found& other) const {
        std::vector<std::string> all;
        for (std::size_t i = 0; i < layout_.lines.size(); ++i) {
            const Known& known = layout_.lines[i];
            if (auto text =
                    difference(i, known.ways[best.ways[i]], best.shared, known.ways[other.ways[i]], other.shared);
                !text.empty())
                all.push_back(std::move(text));
        }
        return all;
    }

    [[nodiscard]] std::string difference(std::size_t line, const Way& way, const Shared& shared, const Way& other_way,
                                         const Shared& other_shared) const {
        const PerLitre here = judge_.per_litre(line, 0, way, shared);
        const PerLitre there = judge_.per_litre(line, 0, other_way, other_shared);
        const std::string name = layout_.lines[line].what.chemical == check::none
                                     ? layout_.lines[line].line->name
                                     : std::string(layout_.lines[line].what.as);
        const double from = here.per_litre > 0 ? here.per_litre : here.amount.base;
        const double to = there.per_litre > 0 ? there.per_litre : there.amount.base;
        if (from <= 0 || to <= 0 || std::abs(std::log(to / from)) < 0.005) return {};
        const std::string unit = here.amount.by_volume ? "ml" : "g";
        return fmt::format("{} {} to {} {}{}", name, quantity::significant_text(from, 3),
                           quantity::significant_text(to, 3), unit, here.per_litre > 0 ? "/l" : "");
    }

    // ---- of one line ----

    void form(std::size_t i) {
        const Known& known = layout_.lines[i];
        if (known.what.chemical == check::none) return;
        const check::Chemical& chemical = model_.chemicals[known.what.chemical];
        if (chemical.forms.size() < 2 || !known.line->form.empty() || known.line->percent) return;
        Question question{.about = fmt::format("which {}", chemical.name), .line = line_of(known), .of_line = true};
        const auto taken = known.ways[search_.best().ways[i]].form;
        for (check::Id form = 0; form < chemical.forms.size(); ++form) {
            const double least = search_.least_of_line(i, [form](const Way& way) { return way.form == form; });
            if (std::isinf(least)) continue;
            Option option{
                fmt::format("{} ({})", chemical.name, chemical.forms[form].name), least - search_.best().cost, {}};
            const double factor = (chemical.forms[form].molar_mass / chemical.forms[taken].molar_mass).to_double();
            if (form != taken)
                option.changes.push_back(
                    fmt::format("{} % of the salt that it would be", quantity::significant_text(100 / factor, 3)));
            question.options.push_back(std::move(option));
        }
        if (const auto* line = form_by_hand(chemical.name)) {
            question.verdict = Verdict::by_hand;
            question.because = line->reason;
        }
        if (question.options.size() > 1 || question.verdict == Verdict::by_hand)
            add(std::move(question), BySaying::yes);
    }

    [[nodiscard]] const check::ReadingByHand* form_by_hand(std::string_view chemical) const {
        for (const auto& line : by_hand_) {
            if (by_hand_of(line.said) != ByHand::form) continue;
            const Named named = chemical_named(model_, line.said.substr(0, line.said.find(" (")));
            if (named.chemical != check::none && model_.chemicals[named.chemical].name == chemical) return &line;
        }
        return nullptr;
    }

    void other_ounce(std::size_t i) {
        const Known& known = layout_.lines[i];
        const double as_page = search_.least_of_line(i, [](const Way& way) { return !way.other_ounce; });
        const double other = search_.least_of_line(i, [](const Way& way) { return way.other_ounce; });
        if (std::isinf(other)) return;
        const Way& taken = known.ways[search_.best().ways[i]];
        if (!taken.other_ounce && other - search_.best().cost > told) return;
        Way turned = taken;
        turned.other_ounce = !taken.other_ounce;
        const std::string name = known.what.chemical == check::none ? known.line->name : std::string(known.what.as);
        Question question{.about = "whose ounce for " + name, .line = line_of(known), .of_line = true};
        const auto& best = search_.best();
        const std::string change = difference(i, taken, best.shared, turned, best.shared);
        question.options.push_back({"the ounce of the page", as_page - best.cost, {}});
        question.options.push_back({"the other ounce in this line", other - best.cost, {}});
        if (!change.empty()) question.options[taken.other_ounce ? 0 : 1].changes.push_back(change);
        add(std::move(question), BySaying::no);
    }

    /// `1 : 9` is mostly meant as one part and nine of water, and by some as one part in nine.
    void dilution(const Line& line) {
        const std::string one = quantity::exact_text(line.ratio->one);
        const std::string other = quantity::exact_text(line.ratio->other);
        Question question{.about = fmt::format("what {} : {} means", one, other)};
        const std::string sum = quantity::exact_text(line.ratio->other - line.ratio->one);
        question.options.push_back({fmt::format("{}+{}", one, other), 0, {}});
        if (line.ratio->other > line.ratio->one) {
            const double stronger = ((line.ratio->one + line.ratio->other) / line.ratio->other).to_double() * 100 - 100;
            question.options.push_back({fmt::format("{}+{}, one part in {}", one, sum, other),
                                        one_part_in,
                                        {fmt::format("{} % stronger", quantity::significant_text(stronger, 2))}});
        }
        if (question.options.size() > 1) add(std::move(question), BySaying::no);
    }

    /// Percent by weight and by volume are told apart by nothing on a page.
    void percent(std::size_t i) {
        const Known& known = layout_.lines[i];
        if (!known.line->percent) return;
        const std::string name = known.what.chemical == check::none ? known.line->name : std::string(known.what.as);
        Question question{.about = "which percent of " + name, .line = line_of(known), .of_line = true};
        for (const ByHand hand : {ByHand::by_volume, ByHand::by_weight, ByHand::weight_in_volume})
            if (const auto* line = by_hand(hand)) {
                question.verdict = Verdict::by_hand;
                question.because = line->reason;
            }
        const std::string_view taken = percent_of(known, by_hand_);
        question.options.push_back({std::string(taken), 0, {}});
        if (question.verdict != Verdict::by_hand)
            question.options.push_back({taken == "% w/w" ? "% w/v" : "% w/w", percent_unsaid, {}});
        add(std::move(question), BySaying::yes);
    }

    [[nodiscard]] std::size_t line_of(const Known& known) const {
        return static_cast<std::size_t>(known.line - page_.lines.data());
    }

    void add(Question question, BySaying by_saying) {
        std::ranges::stable_sort(question.options, {}, &Option::cost);
        const double margin = question.options.size() > 1 ? question.options[1].cost : clear;
        if (question.verdict != Verdict::by_hand)
            question.verdict = margin >= clear ? Verdict::clear : margin >= open ? Verdict::likely : Verdict::open;
        question.settle_with = by_saying == BySaying::yes && question.options.size() > 1
                                   ? fmt::format("reading {} because \"…\"", question.options[1].words)
                                   : "";
        all_.push_back(std::move(question));
    }

    const check::Model& model_;
    const Page& page_;
    const Layout& layout_;
    const Judge& judge_;
    const Search& search_;
    const std::vector<check::ReadingByHand>& by_hand_;
    std::vector<Question> all_;
};

}  // namespace

std::vector<Question> questions(const check::Model& model, const Page& page, const Layout& layout, const Judge& judge,
                                const Search& search, const std::vector<check::ReadingByHand>& by_hand) {
    return Asker(model, page, layout, judge, search, by_hand).run();
}

}  // namespace scruple::printed
