// SPDX-License-Identifier: MIT
// One call of the program: what was typed, read into words and options.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scruple::cli {

/// What the program says to whoever called it. The manual page documents these.
enum class Exit : int {
    fine = 0,        ///< done; warnings may have been shown
    faults = 1,      ///< errors in the recipes
    wrong_call = 2,  ///< nothing like that can be asked
    trouble = 3      ///< something could not be read or written
};

/// Thrown where a call cannot go on; caught in one place, which prints the message and ends.
struct Stop {
    Exit status = Exit::wrong_call;
    std::string message;
};

enum class As { text, html, json };

struct Call {
    std::string command;
    std::vector<std::string> words;  ///< what is no option
    std::map<std::string_view, std::vector<std::string>> given;

    [[nodiscard]] bool has(std::string_view option) const { return !values(option).empty(); }
    [[nodiscard]] const std::vector<std::string>& values(std::string_view option) const;
    [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
    [[nodiscard]] std::string name() const;  ///< the words, as one name
    [[nodiscard]] As as() const;             ///< --as
};

/// Reads the arguments (without the program's name): a command first. `card --help` becomes `help card`.
/// Throws Stop for what cannot be called. No word has a line end or anything else in it that does not show, but for
/// names of files.
[[nodiscard]] Call read_call(std::vector<std::string> arguments);

/// Joins what belongs together and was typed apart: `--make 500 ml`, `--make 1 1/2 fl oz us`, `--sheets 24 8x10 in`.
[[nodiscard]] std::vector<std::string> with_measures_joined(const std::vector<std::string>& arguments);

}  // namespace scruple::cli
