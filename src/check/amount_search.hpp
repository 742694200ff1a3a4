// SPDX-License-Identifier: MIT
// Finds amounts from what is expected of the solutions that they go into.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reader.hpp"
#include "scruple/check/contents.hpp"

namespace scruple::check {

/// The amounts written `?` of a few sections of one recipe, from what is expected of any of them: by least squares over
/// the logarithms of the amounts, for each variant.
class AmountSearch {
  public:
    AmountSearch(Reader& reader, Model& model, std::vector<Id> sections);

    /// Whether as much is expected as is not known.
    [[nodiscard]] bool can_be_tried() const;
    /// Puts in what is found, or says what comes nearest. To be called only where it can be tried.
    void run();
    /// Says of each amount that it is not known.
    void leave_open();

    static constexpr std::size_t most_unknowns = 4;

  private:
    struct Wanted {
        Id section;
        const Expectation* expectation;
    };

    [[nodiscard]] std::size_t variants() const;
    static void open(Addition& addition);
    [[nodiscard]] std::string name(const Addition& addition) const;
    /// What each expectation finds, with these amounts; nothing where it cannot be known.
    std::optional<std::vector<double>> values(const std::vector<double>& amounts);
    [[nodiscard]] std::optional<double> value_of(const Expectation& expectation,
                                                 const std::vector<Content>& contents) const;
    /// How far each expectation is missed: in units of pH, or as a share of what is wanted.
    std::optional<std::vector<double>> misses(const std::vector<double>& logs);
    /// The amounts that come nearest, from starts over all that could be meant.
    std::optional<std::vector<double>> nearest();
    bool met(const std::vector<double>& amounts);
    void settle(Addition& addition, Few<Exact> amounts);
    void report_nearest(const std::vector<double>& amounts);
    [[nodiscard]] std::string gives(const std::vector<double>& found) const;

    Reader& reader_;
    Model& model_;
    std::vector<Id> sections_;
    std::vector<Addition*> unknowns_;
    std::vector<Wanted> wanted_;
    std::size_t variant_ = 0;
};

}  // namespace scruple::check
