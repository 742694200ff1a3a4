// SPDX-License-Identifier: MIT
// Every command and every option, once: what reads them, explains them and lists them starts here.
#pragma once

#include <span>
#include <string_view>

namespace scruple::cli {

struct OptionInfo {
    std::string_view name;     ///< `--films`
    std::string_view takes;    ///< `NUMBER FORMAT`; empty for a switch
    int count;                 ///< how many words it takes
    bool repeats;              ///< may be given several times
    std::string_view example;  ///< `--films 6 135`
    std::string_view says;     ///< one line
};

struct Example {
    std::string_view call;
    std::string_view does;
};

struct CommandInfo {
    std::string_view name;
    std::string_view takes;  ///< `RECIPE [SECTION]`
    std::string_view says;   ///< one sentence, without a full stop
    std::string_view more;   ///< a paragraph or several
    std::span<const std::string_view> options;
    std::span<const Example> examples;
};

[[nodiscard]] std::span<const OptionInfo> all_options();
[[nodiscard]] const OptionInfo& option(std::string_view name);
[[nodiscard]] std::span<const CommandInfo> all_commands();
[[nodiscard]] const CommandInfo* find_command(std::string_view name);

}  // namespace scruple::cli
