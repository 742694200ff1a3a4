// SPDX-License-Identifier: MIT
// Amounts on the command line. They are recipe text like any other: each becomes a source of its
// own beside the workspace, so that the checker reads it and explains what is ambiguous in it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scruple/driver/driver.hpp"

namespace scruple::cli {

class Asked {
  public:
    /// `500ml` of `--make`, `5 g` of a formula; one line, as read_call gives it. Throws Stop where it is too long.
    void measure(std::string_view option, const std::string& amount);
    /// A formula that cannot be read, for the checker to say why.
    void formula(std::string_view option, const std::string& formula);
    /// `metol 43 g` of `--with`
    void ingredient(std::string_view option, const std::string& line);
    /// `24 C` of `--at`
    void temperature(std::string_view option, const std::string& warmth);
    /// `6 films 135`, `0.5 m2`
    void uses(std::string_view option, const std::string& item);

    /// `40 films 135 through roll film`, with or without a day in front
    void work(std::string_view option, const std::string& line);

    /// A line of the log, dated
    void log_line(std::string_view command, const std::string& line);

    [[nodiscard]] const std::vector<text::Source>& sources() const { return sources_; }

  private:
    void add(std::string_view option, const std::string& typed, std::string_view before, std::string_view after);

    std::vector<text::Source> sources_;
};

/// What the checker found wrong with what was asked, as a wrong call; and takes its warnings away.
void settle_asked(driver::Loaded& loaded);

/// The one amount that an option asked for; throws Stop where the option holds something else.
[[nodiscard]] const check::Addition& asked_addition(const driver::Loaded& loaded, std::string_view option);
/// The amounts of an option that was given several times, in that order.
[[nodiscard]] std::vector<const check::Addition*> asked_additions(const driver::Loaded& loaded,
                                                                  std::string_view option);
/// Films, sheets and areas of all options together.
[[nodiscard]] std::vector<check::Use> asked_uses(const driver::Loaded& loaded);

}  // namespace scruple::cli
