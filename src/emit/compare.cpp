// SPDX-License-Identifier: MIT
// Two versions of recipes beside each other, in all three ways.
#include <fmt/format.h>

#include "html.hpp"
#include "json.hpp"
#include "layout.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;
using plan::Compared;
using plan::ComparedSolution;
using plan::Difference;
using plan::Fact;

std::string_view label_of(Fact::Of of) {
    switch (of) {
        case Fact::Of::contents:
            return "What is in it";
        case Fact::Of::ph:
            return "Its pH";
        case Fact::Of::checks:
            return "What to test";
        case Fact::Of::batch:
            return "The batch";
        case Fact::Of::work:
            return "The work, for a litre";
        case Fact::Of::keeping:
            return "How long and how much";
        case Fact::Of::cautions:
            return "Cautions";
        case Fact::Of::notes:
            return "Notes";
    }
    return {};
}

std::string_view word_of(Fact::Of of) {
    constexpr std::string_view all[] = {"contents", "ph", "checks", "batch", "work", "keeping", "cautions", "notes"};
    return all[static_cast<std::size_t>(of)];
}

std::string_view word_of(Difference::How how) {
    constexpr std::string_view all[] = {"changed", "moved", "gone", "new"};
    return all[static_cast<std::size_t>(how)];
}

std::string_view word_of(ComparedSolution::How how) {
    constexpr std::string_view all[] = {"changed", "written otherwise", "gone", "new", "not compared"};
    return all[static_cast<std::size_t>(how)];
}

std::string within(double percent) {
    return percent < 0.01 ? "exactly" : fmt::format("to within {}\u00A0%", quantity::significant_text(percent, 2));
}

/// In a sentence, what became of the solution.
std::string verdict(const ComparedSolution& it) {
    switch (it.how) {
        case ComparedSolution::How::written_otherwise:
            return "The same solution, made the same way, written otherwise.";
        case ComparedSolution::How::gone:
            return "No longer there.";
        case ComparedSolution::How::come:
            return "New.";
        case ComparedSolution::How::not_compared:
            return fmt::format("Not compared. {}.", it.why);
        case ComparedSolution::How::changed:
            break;
    }
    if (!it.contents_differ) return it.differences.empty() ? "As it was." : "The same solution; what else differs:";
    if (!it.percent_apart) return "No longer the same solution:";
    return fmt::format("The same solution, {}, of {}:", within(*it.percent_apart),
                       it.of_the_same_chemicals ? "the same chemicals" : "other chemicals, once they have settled");
}

std::string called_before(const ComparedSolution& it) {
    return it.called_before.empty() ? "" : fmt::format("It was called {}.", it.called_before);
}

std::string said(const Difference& it) {
    if (it.how == Difference::How::changed || it.how == Difference::How::moved)
        return fmt::format("{}{}", it.what, it.how == Difference::How::moved ? ": moved" : "");
    const std::string& value = it.how == Difference::How::gone ? it.before : it.after;
    return fmt::format("{}: {}{}", word_of(it.how), it.what, value.empty() ? "" : ", " + value);
}

bool has_both(const Difference& it) {
    return it.how == Difference::How::changed || it.how == Difference::How::moved;
}

std::string or_nothing(const std::string& value) {
    return value.empty() ? "nothing said" : value;
}

void add_difference(Sheet& sheet, const Difference& it) {
    sheet.indented(4, said(it));
    if (!has_both(it)) return;
    sheet.item("      was  ", or_nothing(it.before));
    sheet.item("      is   ", or_nothing(it.after));
}

void add_solution(Sheet& sheet, const ComparedSolution& it) {
    sheet.heading(it.name);
    if (const std::string before = called_before(it); !before.empty()) sheet.item("", before);
    sheet.item("", verdict(it));
    const Difference* last = nullptr;
    for (const Difference& difference : it.differences) {
        if (last == nullptr || last->of != difference.of) {
            sheet.blank();
            sheet.indented(2, label_of(difference.of));
        }
        add_difference(sheet, difference);
        last = &difference;
    }
}

std::string count(const Compared& compared) {
    if (compared.same == 0) return "No solution is as it was.";
    return compared.same == 1 ? "1 solution is as it was."
                              : fmt::format("{} solutions are as they were.", compared.same);
}

std::string title(const Compared& compared) {
    return fmt::format("From {} to {}", compared.before, compared.after);
}

Markup article(const ComparedSolution& it) {
    Markup all = element("h1", it.name);
    if (const std::string before = called_before(it); !before.empty()) all += element("p", before);
    all += element("p", verdict(it));
    if (it.differences.empty()) return element("article", all);
    html::Table table({"what", "was", "is"}, 0);
    for (const Difference& d : it.differences)
        table.row({fmt::format("{}: {}", label_of(d.of), has_both(d) ? said(d) : d.what),
                   d.how == Difference::How::come ? "–" : or_nothing(d.before),
                   d.how == Difference::How::gone ? "–" : or_nothing(d.after)});
    all += table.take();
    return element("article", all);
}

json::Value difference_json(const Difference& it) {
    json::Value all;
    all["of"] = word_of(it.of);
    all["how"] = word_of(it.how);
    all["what"] = it.what;
    all["before"] = json::text_or_null(it.before);
    all["after"] = json::text_or_null(it.after);
    return all;
}

json::Value solution_json(const ComparedSolution& it) {
    json::Value all;
    all["solution"] = it.name;
    all["called_before"] = json::text_or_null(it.called_before);
    all["how"] = word_of(it.how);
    const bool compared =
        it.how == ComparedSolution::How::changed || it.how == ComparedSolution::How::written_otherwise;
    all["same_solution"] = compared ? json::Value(!it.contents_differ || it.percent_apart) : json::Value(nullptr);
    all["percent_apart"] =
        it.percent_apart ? json::number(quantity::significant_text(*it.percent_apart, 2)) : json::Value(nullptr);
    all["why"] = json::text_or_null(it.why);
    all["differences"] = json::each(it.differences, difference_json);
    return all;
}

}  // namespace

std::string compare_text(const Compared& compared, const TextStyle& style) {
    Sheet sheet(style);
    sheet.blank();
    sheet.item("", title(compared));
    for (const std::string& remark : compared.remarks) sheet.item("", remark);
    for (const ComparedSolution& it : compared.solutions) add_solution(sheet, it);
    sheet.blank();
    sheet.item("", count(compared));
    return sheet.take();
}

std::string compare_html(const Compared& compared) {
    Markup all;
    for (const ComparedSolution& it : compared.solutions) all += article(it);
    for (const std::string& remark : compared.remarks) all += element("p", remark);
    all += element("p", count(compared));
    return html::page(title(compared), element("main", all));
}

std::string compare_json(const Compared& compared) {
    json::Value all;
    all["kind"] = "compare";
    all["before"] = compared.before;
    all["after"] = compared.after;
    all["solutions"] = json::each(compared.solutions, solution_json);
    all["same"] = compared.same;
    all["remarks"] = compared.remarks;
    return json::document(all);
}

}  // namespace scruple::emit
