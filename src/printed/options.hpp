// SPDX-License-Identifier: MIT
// One reading beside the best: what it costs, what it would change, and what speaks against it.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "acidity.hpp"
#include "judge.hpp"
#include "scruple/printed/settle.hpp"
#include "search.hpp"

namespace scruple::printed {

class Options {
  public:
    Options(const Layout& layout, const Judge& judge, const Acidity& acidity, const Found& best)
        : layout_(layout), judge_(judge), acidity_(acidity), best_(best) {}

    [[nodiscard]] const Found& best() const { return best_; }
    /// `of_line`: what it changes is told of that line alone.
    [[nodiscard]] Option option(std::string words, const Found& found, std::size_t of_line = every_line);
    static constexpr std::size_t every_line = static_cast<std::size_t>(-1);

  private:
    /// Each line's weights under one shared reading, in the ways of the reading that asked first.
    struct Under {
        std::vector<std::size_t> ways;
        std::vector<Weights> lines;
        Weights sum;
    };

    /// Most readings are an earlier one with another way in one line, so that only that line is weighed again.
    [[nodiscard]] Weights weights(const Found& found);
    [[nodiscard]] Weights weights_of(std::size_t line, const Found& found) const;
    [[nodiscard]] std::vector<std::string> told(const Weights& against) const;
    [[nodiscard]] std::string difference(std::size_t line, const Found& other) const;

    const Layout& layout_;
    const Judge& judge_;
    const Acidity& acidity_;
    const Found& best_;
    std::map<std::size_t, Under> under_{};
};

/// The chemical's name, or what is printed.
[[nodiscard]] std::string name_of(const Known& known);

}  // namespace scruple::printed
