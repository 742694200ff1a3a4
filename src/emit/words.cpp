// SPDX-License-Identifier: MIT
#include "scruple/emit/words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "scruple/plan/calendar.hpp"
#include "scruple/quantity/exact.hpp"

namespace scruple::emit::words {

std::string listed(const std::vector<std::string>& parts, std::string_view between) {
    std::string all;
    for (const std::string& part : parts) {
        if (part.empty()) continue;
        if (!all.empty()) all += between;
        all += part;
    }
    return all;
}

std::string with_units_kept(std::string_view text) {
    std::string kept;
    bool number = false;
    for (const char c : text) {
        if (c == ' ' && number)
            kept += plan::unit_blank;
        else
            kept += c;
        const bool digit = c >= '0' && c <= '9';
        const bool begins = kept.size() == 1 || kept[kept.size() - 2] == ' ';
        number = digit ? number || begins : number && (c == '.' || c == '/');
    }
    return kept;
}

std::string title(const plan::Card& card) {
    return listed({card.recipe, card.section});
}

std::string binder_entry(const plan::Card& card) {
    return listed({card.recipe, card.section, card.variant});
}

std::string running_head(const plan::Card& card) {
    return fmt::format("{} – {}", title(card), card.makes.with_unit());
}

std::string subtitle(const plan::Card& card) {
    return listed({card.is_a, card.strength, card.variant.empty() ? "" : "variant " + card.variant});
}

std::string chemical(std::string_view name, std::string_view form) {
    return form.empty() ? std::string(name) : fmt::format("{} ({})", name, form);
}

std::string_view before_amount(const plan::Work& work) {
    if (work.up_to) return "up to";
    return work.about ? "about" : "";
}

std::string rounding(const plan::Figure& figure) {
    if (!(figure.error_percent > 1)) return {};
    return fmt::format("rounded by {}\u00A0%", quantity::significant_text(figure.error_percent, 2));
}

namespace {

bool is_put_elsewhere(const plan::Work& work) {
    const bool named_already =
        work.what_to_do == plan::Work::Do::open_vessel || work.what_to_do == plan::Work::Do::set_aside;
    return !work.vessel.empty() && !named_already;
}

}  // namespace

std::string elsewhere(const plan::Work& work) {
    return is_put_elsewhere(work) ? "in the other vessel: " + work.vessel : "";
}

std::vector<std::string> remarks(const plan::Work& work) {
    const bool measured = work.amount && !work.amount->instrument.empty();
    // Advice says by how much the reading would be off.
    const bool tells_rounding = work.amount && work.advice.empty();
    const std::string first =
        listed({work.at.empty() ? "" : "at " + work.at, measured ? "with the " + work.amount->instrument : "",
                tells_rounding ? rounding(*work.amount) : ""});
    std::vector<std::string> all;
    if (!first.empty()) all.push_back(first);
    if (std::string other = elsewhere(work); !other.empty()) all.push_back(std::move(other));
    all.insert(all.end(), work.details.begin(), work.details.end());
    all.insert(all.end(), work.advice.begin(), work.advice.end());
    return all;
}

std::string running(const plan::Work& work) {
    if (!work.running) return {};
    return fmt::format("now in {} vessel: {}{}", work.vessel.empty() ? "the" : "that",
                       work.running_estimated ? "about " : "", work.running->with_unit());
}

std::string_view box_of(const plan::Work& work) {
    if (!work.weighed_box) return {};
    const bool by_weight = !work.amount || work.amount->unit == "g" || work.amount->unit == "kg";
    return by_weight ? "weighed" : "measured";
}

std::string with_source(std::string_view text, std::string_view source) {
    return source.empty() ? std::string(text) : fmt::format("{} ({})", text, source);
}

std::string substitution_head(const plan::Substitution& it) {
    return fmt::format("for {}: {}", it.wanted, it.taken);
}

std::vector<std::string> substitution(const plan::Substitution& it) {
    std::vector<std::string> lines{it.kind, "taken because: " + it.why};
    for (const std::string& other : it.others) lines.push_back("not taken: " + other);
    return lines;
}

std::string hazards(const std::vector<std::string>& codes) {
    return codes.empty() ? std::string(no_caution) : listed(codes);
}

std::string hazards(const plan::HazardRow& row) {
    return row.codes.empty() && row.cautioned ? "no hazard statement recorded; see the caution above"
                                              : hazards(row.codes);
}

bool wants_tally(const plan::Card& card) {
    for (const std::string& rule : card.capacity)
        if (rule.find("one-shot") != std::string::npos) return false;
    return !card.capacity.empty();
}

std::string warnings_below(const plan::Card& card) {
    if (card.warnings.empty()) return {};
    const bool one = card.warnings.size() == 1;
    return fmt::format("{} warning{} at the end of this card: read {} first.", card.warnings.size(), one ? "" : "s",
                       one ? "it" : "them");
}

std::string label_strength(const plan::Label& label) {
    return listed({label.strength, listed(label.uses, "; ")}, ": ");
}

std::string label_chemical(const plan::LabelHazard& hazard) {
    return hazard.signal.empty() ? hazard.chemical + ": " : fmt::format("{}: {}: ", hazard.chemical, hazard.signal);
}

std::string label_statements(const plan::LabelHazard& hazard) {
    if (!hazard.statements.empty()) return listed(hazard.statements, "; ");
    return hazard.cautioned ? "no hazard statement recorded; see the caution on its card" : std::string(no_caution);
}

namespace {

std::string day_or_blank(const std::optional<check::Day>& day) {
    return day ? plan::day_text(*day) : "";
}

std::string use_by(const plan::Life& life) {
    if (life.text.ends_with("half full")) return "half full, use by";
    return life.text.ends_with("full") ? "full, use by" : "use by";
}

}  // namespace

std::string label_accepted(const plan::Label& label) {
    if (label.accepted.empty()) return {};
    std::vector<std::string> names;
    for (const plan::AcceptedMeeting& it : label.accepted)
        if (std::ranges::find(names, it.meeting) == names.end()) names.push_back(it.meeting);
    const bool lethal = std::ranges::any_of(label.accepted, &plan::AcceptedMeeting::lethal);
    return fmt::format("{} if they meet: {}. Read the card.", lethal ? "LETHAL" : "Harmful", listed(names));
}

std::vector<LabelFact> label_facts(const plan::Label& label) {
    std::vector<LabelFact> facts{{"mixed on", day_or_blank(label.mixed_on)}};
    for (const plan::Life& life : label.keeps) facts.push_back({use_by(life), day_or_blank(life.use_by)});
    if (!label.use_within.empty()) facts.push_back({"use within", with_units_kept(label.use_within)});
    facts.push_back({"batch", label.batch});
    facts.push_back({"volume", label.volume ? label.volume->with_unit() : ""});
    return facts;
}

std::string hazard_line(const plan::HazardRow& row) {
    return with_source(fmt::format("{}: {}", row.chemical, hazards(row)), row.source);
}

std::string accepted_head(const plan::AcceptedMeeting& accepted) {
    return fmt::format("accepted: {}, because {}", accepted.meeting, accepted.reason);
}

std::vector<std::string> accepted_lines(const plan::AcceptedMeeting& accepted) {
    std::vector<std::string> all{fmt::format("{}: {}", accepted.lethal ? "LETHAL" : "harmful", accepted.comes),
                                 fmt::format("{}: {}", accepted.where, accepted.what)};
    all.insert(all.end(), accepted.cautions.begin(), accepted.cautions.end());
    all.push_back(fmt::format("{}, and local rules", check_the_sheet));
    for (const std::string& source : accepted.sources) all.push_back("from: " + source);
    return all;
}

std::string warning_line(const plan::Warning& warning) {
    return fmt::format("{} ({})", warning.message, diagnostics::info(warning.kind).name);
}

std::string give_or_take(const plan::ContentRow& row) {
    const double percent = row.give_or_take * 100;
    return fmt::format("± {:.{}f}{}%", percent, percent < 1 ? 2 : 1, plan::unit_blank);
}

std::string ph_head(const plan::PhRow& row) {
    return row.value ? fmt::format("pH at {:g}{}°C", row.celsius, plan::unit_blank) : "pH: " + row.text;
}

std::vector<std::string> ph_remarks(const plan::PhRow& row) {
    std::vector<std::string> lines;
    for (const std::string& reason : row.widened_by) lines.push_back((lines.empty() ? "wide by " : "and by ") + reason);
    return lines;
}

std::string table_figure(double value) {
    return quantity::significant_text(value, 4);
}

std::string_view name_of(plan::Work::Do what) {
    switch (what) {
        case plan::Work::Do::water:
            return "water";
        case plan::Work::Do::add:
            return "add";
        case plan::Work::Do::make_up:
            return "make up";
        case plan::Work::Do::stir:
            return "stir";
        case plan::Work::Do::wait:
            return "wait";
        case plan::Work::Do::stand:
            return "stand";
        case plan::Work::Do::filter:
            return "filter";
        case plan::Work::Do::cool:
            return "cool";
        case plan::Work::Do::warm:
            return "warm";
        case plan::Work::Do::watch:
            return "watch";
        case plan::Work::Do::act:
            return "act";
        case plan::Work::Do::open_vessel:
            return "open vessel";
        case plan::Work::Do::pour_in:
            return "pour in";
        case plan::Work::Do::set_aside:
            return "set aside";
    }
    return {};
}

}  // namespace scruple::emit::words
