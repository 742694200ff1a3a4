// SPDX-License-Identifier: MIT
#include "figures.hpp"

#include <algorithm>
#include <cmath>

namespace scruple::test {

Trial::Trial(const std::string& lines) {
    workspace_.add("trial.scruple", "recipe Trial\n" + lines);
    workspace_.check();
    const auto faulty = [](const auto& diagnostic) { return diagnostic.kind != diagnostics::Kind::volume_not_stated; };
    REQUIRE_MESSAGE(std::ranges::none_of(workspace_.diagnostics(), faulty), described(workspace_));
    section_ = section_called(model(), "trial");
}

check::Content Trial::of(const std::string& chemical) const {
    const auto name = model().chemical_names.find(chemical);
    REQUIRE_MESSAGE(name != model().chemical_names.end(), chemical);
    check::Content sum;
    for (const auto& content : check::contents(model(), section_, 0)) {
        if (content.chemical != name->second.first) continue;
        sum.g_per_l += content.g_per_l;
        sum.mol_per_l += content.mol_per_l;
    }
    return sum;
}

double Trial::g_per_l(const std::string& chemical) const {
    return of(chemical).g_per_l;
}

double Trial::mol_per_l(const std::string& chemical) const {
    return of(chemical).mol_per_l;
}

check::Dose Trial::dose(std::size_t n) const {
    for (const auto& line : model().sections[section_].lines) {
        const auto* addition = std::get_if<check::Addition>(&line);
        if (addition != nullptr && n-- == 0) return check::dose(model(), *addition, 0);
    }
    FAIL("the recipe has fewer ingredients");
    return {};
}

double Trial::makes_ml() const {
    return model().sections[section_].makes_ml.to_double();
}

Row row_with(const std::vector<Row>& rows, const std::string& column, std::string_view words) {
    const auto fits = [&](const Row& row) { return row.at(column).find(words) != std::string::npos; };
    REQUIRE_MESSAGE(std::ranges::count_if(rows, fits) == 1, "rows about ", words);
    return *std::ranges::find_if(rows, fits);
}

double first_number(const std::string& text) {
    const auto begin = text.find_first_of("0123456789");
    REQUIRE_MESSAGE(begin != std::string::npos, text);
    return std::stod(text.substr(begin));
}

bool rounds_to(double value, const std::string& printed) {
    const auto point = printed.find('.');
    const auto digits = point == std::string::npos ? 0 : printed.find_last_of("0123456789") - point;
    // A hair more than half a unit: a value that ends in exactly 5 may go either way.
    return std::abs(value - std::stod(printed)) <= 0.5001 * std::pow(10.0, -static_cast<double>(digits));
}

}  // namespace scruple::test
