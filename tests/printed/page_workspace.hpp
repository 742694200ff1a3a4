// SPDX-License-Identifier: MIT
// A printed page, settled beside the built-in library.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "../check/workspace.hpp"
#include "scruple/printed/settle.hpp"

namespace scruple::test {

class PrintedPage {
  public:
    /// `lines`: those of the block, `book` and `reading` lines among them.
    explicit PrintedPage(const std::string& lines) {
        workspace_.add("page.scruple", "printed Bittern\n" + lines);
        workspace_.check();
        REQUIRE_MESSAGE(workspace_.diagnostics().empty(), described(workspace_));
        settled = printed::settle(workspace_.model(), workspace_.model().printed.front());
    }

    [[nodiscard]] const printed::LineRead& line(const std::string& name) const {
        const auto found = std::ranges::find(settled.lines, name, &printed::LineRead::name);
        REQUIRE_MESSAGE(found != settled.lines.end(), "no line ", name);
        return *found;
    }
    /// g/l, of a liquid ml/l
    [[nodiscard]] double per_litre(const std::string& name) const { return line(name).per_litre.value_or(0); }

    [[nodiscard]] const printed::SolutionRead& solution(std::size_t index = 0) const {
        REQUIRE(index < settled.solutions.size());
        return settled.solutions[index];
    }

    [[nodiscard]] const printed::Question& question(const std::string& about) const {
        const auto found = std::ranges::find(settled.questions, about, &printed::Question::about);
        REQUIRE_MESSAGE(found != settled.questions.end(), "no question ", about);
        return *found;
    }
    [[nodiscard]] bool asks(const std::string& about) const {
        return std::ranges::find(settled.questions, about, &printed::Question::about) != settled.questions.end();
    }
    [[nodiscard]] std::string taken(const std::string& about) const { return question(about).options.front().words; }

    [[nodiscard]] const check::Model& model() const { return workspace_.model(); }

    printed::Settlement settled;

  private:
    Workspace workspace_;
};

/// To the last figure that is given.
inline doctest::Approx to_figures(double value) {
    return doctest::Approx(value).epsilon(0.0015);
}

}  // namespace scruple::test
