// SPDX-License-Identifier: MIT
#include "questions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>

namespace scruple::printed {
namespace {

// Odds of 20 to 1 are clear, less than about 3 to 1 is open; ours.
constexpr double clear = 3.0, open = 1.0;
constexpr double one_part_in = 0.9;

using Holds = std::function<bool(const Shared&)>;

struct Choice {
    std::string words;
    ByHand hand;
    Holds holds;
    std::size_t column = 0;
};

void ask_of_page(const Asked& asked, Question question, const std::vector<Choice>& choices, BySaying by_saying,
                 std::vector<Question>& all, bool of_the_page = false) {
    for (const Choice& choice : choices) {
        const auto found = asked.search.best_of(choice.holds, of_the_page);
        if (!found) continue;
        question.options.push_back(asked.options.option(choice.words, *found));
        settle_by(question, hand_line(asked, choice.hand, choice.column));
    }
    if (question.options.size() > 1 || question.verdict == Verdict::by_hand)
        all.push_back(judged(std::move(question), by_saying));
}

void ask_fluid(const Asked& asked, std::size_t column, std::vector<Question>& all) {
    const auto is = [column](Fluid fluid) {
        return [column, fluid](const Shared& one) { return one.fluid[column] == fluid; };
    };
    const bool both = asked.search.best_of(is(Fluid::us)) && asked.search.best_of(is(Fluid::imperial));
    const bool hand =
        hand_line(asked, ByHand::us, column) != nullptr || hand_line(asked, ByHand::imperial, column) != nullptr;
    if (asked.layout.columns[column].metric || (!both && !hand)) return;
    const std::string where = asked.layout.columns.size() > 1 ? fmt::format(" in column {}", column + 1) : "";
    ask_of_page(asked,
                {.about = "whose fluid ounce" + where,
                 .narrowed = where,
                 .look_for = "where the book was printed, and how many ounces its pint has: 20 make an imperial pint, "
                             "16 a US one"},
                {{"fl oz imperial", ByHand::imperial, is(Fluid::imperial), column},
                 {"fl oz us", ByHand::us, is(Fluid::us), column}},
                BySaying::yes, all);
}

std::string without_blanks(std::string_view text) {
    std::string all(text);
    std::erase(all, ' ');
    return all;
}

std::string_view hand_dilution(const std::vector<check::ReadingByHand>& by_hand) {
    for (const auto& line : by_hand)
        if (by_hand_of(line.said) == ByHand::one_and) return line.said;
    return {};
}

}  // namespace

const check::ReadingByHand* hand_line(const Asked& asked, ByHand what, std::size_t column, check::Id chemical) {
    if (what == ByHand::nothing) return nullptr;
    const auto found = std::ranges::find_if(asked.by_hand, [&](const auto& line) {
        return by_hand_of(line.said) == what && narrowed(line.said).column.value_or(column) == column &&
               is_about(asked.model, line, chemical);
    });
    return found == asked.by_hand.end() ? nullptr : &*found;
}

void settle_by(Question& question, const check::ReadingByHand* line) {
    if (line == nullptr) return;
    question.verdict = Verdict::by_hand;
    question.because = line->reason;
}

Question judged(Question question, BySaying by_saying) {
    std::ranges::stable_sort(question.options, {}, &Option::cost);
    const double margin = question.options.size() > 1 ? question.options[1].cost : clear;
    if (question.verdict != Verdict::by_hand)
        question.verdict = margin >= clear ? Verdict::clear : margin >= open ? Verdict::likely : Verdict::open;
    if (by_saying == BySaying::yes && question.options.size() > 1)
        question.settle_with = fmt::format("reading {}{} because \"…\"", question.options[1].words, question.narrowed);
    return question;
}

std::vector<Question> page_questions(const Asked& asked) {
    std::vector<Question> all;
    for (std::size_t i = 0; i < asked.layout.columns.size(); ++i) ask_fluid(asked, i, all);
    const auto is = [](Ounce ounce) { return [ounce](const Shared& one) { return one.ounce == ounce; }; };
    ask_of_page(asked,
                {.about = "whose ounce for what is weighed",
                 .look_for = "a table of weights in the book: 437.5 grains make an avoirdupois ounce, 480 an "
                             "apothecaries' ounce"},
                {{"oz avoirdupois", ByHand::avoirdupois, is(Ounce::avoirdupois)},
                 {"oz apothecaries", ByHand::apothecaries, is(Ounce::apothecaries)}},
                BySaying::yes, all, true);
    ask_of_page(asked,
                {.about = "what gr means", .look_for = "a line of the book in which grains or grams are written out"},
                {{"gr grain", ByHand::grain, [](const Shared& one) { return !one.gr_is_gram; }},
                 {"gr gram", ByHand::gram, [](const Shared& one) { return one.gr_is_gram; }}},
                BySaying::yes, all);
    if (asked.options.best().shared.stronger != 1)
        ask_of_page(
            asked,
            {.about = "whether the columns are of one strength", .look_for = "what the book says of its columns"},
            {{"the metric column is stronger or weaker throughout", ByHand::nothing,
              [](const Shared& one) { return one.stronger != 1; }},
             {"the columns are of one strength, and rounded", ByHand::nothing,
              [](const Shared& one) { return one.stronger == 1; }}},
            BySaying::no, all);
    return all;
}

/// `1 : 9` is mostly meant as one part and nine of water, and by some as one part in nine.
std::vector<Question> dilution_questions(const Asked& asked) {
    std::vector<Question> all;
    for (const Line& line : asked.page.lines) {
        if (line.what != Line::What::dilution || line.ratio->by_sum || line.ratio->other <= line.ratio->one) continue;
        const std::string one = quantity::exact_text(line.ratio->one);
        const std::string other = quantity::exact_text(line.ratio->other);
        const std::string rest = quantity::exact_text(line.ratio->other - line.ratio->one);
        const double stronger = ((line.ratio->one + line.ratio->other) / line.ratio->other).to_double() * 100 - 100;
        Question question{.about = fmt::format("what {} : {} means", one, other),
                          .look_for =
                              "the times and temperatures beside it, or another dilution of the book that is "
                              "written out"};
        question.options.push_back({fmt::format("{}+{}", one, other), 0});
        question.options.push_back(
            {fmt::format("{}+{}", one, rest),
             one_part_in,
             {fmt::format("one part in {}, {} % stronger", other, quantity::significant_text(stronger, 2))}});
        const std::string by_hand = without_blanks(hand_dilution(asked.by_hand));
        for (Option& option : question.options)
            if (!by_hand.empty()) option.cost = option.words == by_hand ? 0 : one_part_in;
        if (std::ranges::find(question.options, by_hand, &Option::words) != question.options.end())
            settle_by(question, hand_line(asked, ByHand::one_and));
        all.push_back(judged(std::move(question), BySaying::yes));
    }
    return all;
}

Mixture dilution_taken(const Line& line, const std::vector<check::ReadingByHand>& by_hand) {
    const quantity::Exact rest = line.ratio->other - line.ratio->one;
    const std::string one_in = fmt::format("{}+{}", quantity::exact_text(line.ratio->one), quantity::exact_text(rest));
    const bool in = rest > 0 && without_blanks(hand_dilution(by_hand)) == one_in;
    return {{{line.solution, line.ratio->one}}, in ? rest : line.ratio->other};
}

std::vector<Question> questions(const Asked& asked) {
    std::vector<Question> all = page_questions(asked);
    for (auto more : {line_questions(asked), dilution_questions(asked)})
        std::ranges::move(more, std::back_inserter(all));
    return all;
}

}  // namespace scruple::printed
