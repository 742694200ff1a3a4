// SPDX-License-Identifier: MIT
// Two versions of a solution beside each other: as chemistry, and not as text.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "scruple/check/contents.hpp"
#include "scruple/plan/card.hpp"

namespace scruple::plan {

/// One line of what a solution is: `metol` and `4.2 g/l, 0.0122 mol/l`.
struct Fact {
    enum class Of : std::uint8_t { contents, ph, checks, batch, work, keeping, cautions, notes } of = Of::contents;
    std::string what;
    std::string amount;  ///< of a step, for a litre; else empty
    std::string value;   ///< may be empty
    friend bool operator==(const Fact&, const Fact&) = default;
};

/// Of a card for one litre. The order is that of the card. `batch`: how much the recipe makes as written, empty where
/// it says no volume.
[[nodiscard]] std::vector<Fact> facts_of(const Card& litre, const std::string& batch);

/// One thing that is not as it was. Of a step that has moved, `before` and `after` say what it follows.
struct Difference {
    enum class How : std::uint8_t { changed, moved, gone, come } how = How::changed;
    Fact::Of of = Fact::Of::contents;
    std::string what, before, after;
};

/// In the order of the facts after, what has gone with what it stood by. Steps are paired by what is done, in order;
/// their amounts are left out where the contents tell of the same.
[[nodiscard]] std::vector<Difference> differences(std::span<const Fact> before, std::span<const Fact> after);

/// One solution of two workspaces.
struct ComparedSolution {
    enum class How : std::uint8_t {
        changed,
        written_otherwise,  ///< other text, and nothing differs
        gone,
        come,
        not_compared
    } how = How::changed;
    std::string name;             ///< as it is called after, or was called before it went
    std::string called_before{};  ///< where it had another name
    std::vector<Difference> differences{};
    bool contents_differ = false;
    std::optional<double> percent_apart{};  ///< where it is the same solution although the contents differ
    bool of_the_same_chemicals = false;
    std::string why{};  ///< not_compared
};

struct Compared {
    std::string before, after;  ///< what was asked for, in the caller's words
    std::vector<ComparedSolution>
        solutions{};                     ///< those that differ, as the workspace after has them, then what is gone
    std::size_t same = 0;                ///< how many are as they were
    std::vector<std::string> remarks{};  ///< errors on either side
};

/// One variant of a solution in its workspace.
struct SolutionOf {
    check::KnownContents& known;
    check::Id section = check::none;
    std::size_t variant = 0;
};

/// How many percent two solutions of two workspaces are apart when everything in them has settled; nullopt from
/// most_percent_apart on, or where one holds what the other does not.
[[nodiscard]] std::optional<double> apart(const SolutionOf& before, const SolutionOf& after);
[[nodiscard]] bool of_the_same_chemicals(const SolutionOf& before, const SolutionOf& after);

/// Of the solutions before, pairs of numbers with those after that are the same to within most_percent_apart, each
/// taken once, the nearest first for each of those after; in their order. All of either side are of one workspace.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> alike(const std::vector<SolutionOf>& before,
                                                                     const std::vector<SolutionOf>& after);

}  // namespace scruple::plan
