// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <tuple>

#include "batch.hpp"
#include "commands.hpp"
#include "drawing.hpp"
#include "jobs.hpp"
#include "printing.hpp"
#include "scruple/emit/emit.hpp"
#include "terminal.hpp"
#include "workspace.hpp"

namespace scruple::cli {
namespace {

constexpr int most_bottles = 1000;
constexpr double most_mm = 1000;

Stop wrong(std::string_view option) {
    const OptionInfo& info = cli::option(option);
    return {Exit::wrong_call, fmt::format("`{}` takes {}: `{}`", info.name, info.takes, info.example)};
}

/// Whether all of the text is a number from `least` to `most`.
template <class T>
bool reads_as(std::string_view text, T least, T most, T& value) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() && value >= least && value <= most;
}

/// `96x68`
template <class T>
std::optional<std::pair<T, T>> pair_of(const Call& call, std::string_view option, T least, T most) {
    const auto text = call.value(option);
    if (!text) return std::nullopt;
    const std::size_t x = std::min(text->find('x'), text->size());
    std::pair<T, T> both{};
    const std::string_view all(*text);
    const bool read = x < all.size() && reads_as(all.substr(0, x), least, most, both.first) &&
                      reads_as(all.substr(x + 1), least, most, both.second);
    if (!read) throw wrong(option);
    return both;
}

/// As many as fit on the sheet, where the call does not say how many.
void fill_sheet(paper::LabelGrid& grid, const paper::SheetSize& sheet) {
    const auto fitting = [](double all, double one, double gap) {
        return std::max(1, static_cast<int>((all + gap) / (one + gap)));
    };
    constexpr double edges = 10;
    grid.columns = fitting(sheet.width_mm - edges, grid.width_mm, grid.gap_x_mm);
    grid.rows = fitting(sheet.height_mm - edges, grid.height_mm, grid.gap_y_mm);
}

paper::LabelGrid grid_of(const Call& call, const paper::SheetSize& sheet) {
    paper::LabelGrid grid;
    if (const auto size = pair_of<double>(call, "--label", 25, most_mm))
        std::tie(grid.width_mm, grid.height_mm) = *size;
    if (const auto gap = pair_of<double>(call, "--between", 0, most_mm)) std::tie(grid.gap_x_mm, grid.gap_y_mm) = *gap;
    if (const auto first = pair_of<double>(call, "--first", 0, most_mm)) std::tie(grid.left_mm, grid.top_mm) = *first;
    fill_sheet(grid, sheet);
    if (const auto count = pair_of<int>(call, "--grid", 1, 50)) std::tie(grid.columns, grid.rows) = *count;
    const double right = grid.left_mm.value_or(0) + grid.columns * (grid.width_mm + grid.gap_x_mm) - grid.gap_x_mm;
    const double bottom = grid.top_mm.value_or(0) + grid.rows * (grid.height_mm + grid.gap_y_mm) - grid.gap_y_mm;
    if (right > sheet.width_mm + 0.01 || bottom > sheet.height_mm + 0.01)
        throw Stop{
            Exit::wrong_call,
            fmt::format("{}x{} labels of {:g}x{:g} mm take {:g}x{:g} mm, and the sheet has {:g}x{:g} mm", grid.columns,
                        grid.rows, grid.width_mm, grid.height_mm, right, bottom, sheet.width_mm, sheet.height_mm)};
    return grid;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// `2x500ml` is twice `500ml`.
struct Bottles {
    int count = 1;
    std::string volume;
};
std::vector<Bottles> bottles_of(const Call& call) {
    std::vector<Bottles> all;
    for (const std::string& text : call.values("--bottles")) {
        const std::size_t x = text.find('x');
        Bottles some{1, text};
        if (x != std::string::npos && std::ranges::all_of(text.substr(0, x), is_digit)) {
            if (!reads_as(text.substr(0, x), 1, most_bottles, some.count)) throw wrong("--bottles");
            some.volume = text.substr(x + 1);
        }
        all.push_back(std::move(some));
    }
    return all;
}

Asked asked_bottles(const std::vector<Bottles>& bottles) {
    Asked asked;
    for (const Bottles& some : bottles) asked.measure("--bottles", some.volume);
    return asked;
}

/// The volume of each bottle; one without a volume where none was said.
std::vector<std::optional<check::Exact>> volumes(const driver::Loaded& loaded, const std::vector<Bottles>& bottles) {
    std::vector<std::optional<check::Exact>> all;
    if (bottles.empty()) return {std::nullopt};
    const auto additions = asked_additions(loaded, "--bottles");
    for (std::size_t i = 0; i < bottles.size(); ++i) {
        if (additions[i]->by != check::Addition::By::volume) throw wrong("--bottles");
        all.insert(all.end(), static_cast<std::size_t>(bottles[i].count), additions[i]->shares.front());
    }
    return all;
}

/// Two, three or four below one another: the smallest that all of them fit on, where the call does not say how large.
constexpr double usual_heights_mm[] = {68, 95, 142};

using Drawn = std::variant<std::string, paper::Misfit>;

Drawn drawn(const std::vector<plan::Label>& labels, const Call& call, const paper::Printing& printing) {
    paper::LabelGrid grid = grid_of(call, printing.sheet);
    Drawn made = drawing().labels_to_paper(labels, grid, printing);
    if (call.has("--label")) return made;
    for (const double height : usual_heights_mm) {
        if (std::holds_alternative<std::string>(made)) break;
        grid.height_mm = height;
        if (!call.has("--grid")) fill_sheet(grid, printing.sheet);
        made = drawing().labels_to_paper(labels, grid, printing);
    }
    return made;
}

std::string printed(const std::vector<plan::Label>& labels, const Call& call, const paper::Printing& printing) {
    auto made = drawn(labels, call, printing);
    if (const auto* misfit = std::get_if<paper::Misfit>(&made)) {
        const std::string width = call.value("--label").value_or("98x");
        const double height = std::ceil(misfit->height_mm);
        throw Stop{Exit::wrong_call,
                   fmt::format("the label of {} is too small for what stands on it; `--label {}x{:.0f}` would do",
                               misfit->name, width.substr(0, width.find('x')), height)};
    }
    return std::move(std::get<std::string>(made));
}

std::string written(As as, const std::vector<plan::Label>& labels) {
    switch (as) {
        case As::text:
            return emit::labels_text(labels, {width_of(Stream::out)});
        case As::html:
            return emit::labels_html(labels);
        case As::json:
            return emit::labels_json(labels);
    }
    return {};
}

}  // namespace

Outcome labels_job(const Call& call) {
    const auto printing = asked_printing(call);
    const As as = printing ? As::text : call.as();
    const auto bottles = bottles_of(call);
    const driver::Loaded& loaded = open_for_the_bench(call, asked_bottles(bottles));
    const check::Model& model = loaded.checked.model;
    const Meant meant = find_solution(loaded, call.name());
    plan::LabelRequest request{.section = check::none,
                               .variant = asked_variant(call, model.recipes[meant.recipe]),
                               .ml = {},
                               .mixed_on = mixed_on(call),
                               .batch = call.value("--batch").value_or(""),
                               .digest = driver::digest_of(loaded, meant.recipe)};
    std::vector<plan::Label> labels;
    for (const check::Id section : meant.sections)
        for (const auto& ml : volumes(loaded, bottles)) {
            request.section = section;
            request.ml = ml;
            labels.push_back(plan::label_of(model, request));
        }
    return {Exit::fine, printing ? printed(labels, call, *printing) : written(as, labels), {}};
}

}  // namespace scruple::cli
