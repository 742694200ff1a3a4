// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <utility>

#include "scruple/diagnostics/show.hpp"

using namespace scruple::diagnostics;
using scruple::text::Source;
using scruple::text::Span;

namespace {

Kind kind_of(Severity severity) {
    for (const KindInfo& about : all_kinds()) {
        if (about.severity == severity) return about.kind;
    }
    throw std::logic_error("no kind of that severity");
}

Diagnostic fault(std::uint32_t file, Span span, std::string write = {}) {
    return {all_kinds()[0].kind, file, span, "the message", std::move(write), {}};
}

// What is shown of one fault in one file: its lines, without the headline and the count.
std::string shown(const std::string& bytes, Span span) {
    const std::vector<Source> sources = {{"a.scruple", bytes}};
    const std::vector<Diagnostic> faults = {fault(0, span)};
    const std::string text = as_text(faults, sources);
    const std::size_t begin = text.find('\n') + 1;
    return text.substr(begin, text.find("\n\n") + 1 - begin);
}

std::string repeated(std::string_view what, std::size_t times) {
    std::string result;
    while (times-- > 0) result += what;
    return result;
}

std::size_t lines_in(const std::string& text) {
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

}  // namespace

TEST_CASE("nothing to show is nothing") {
    CHECK(as_text({}, {}) == "");
    CHECK(as_json({}, {}) == "[]\n");
}

TEST_CASE("a fault is shown with its place, its line, the mark and what to write") {
    const std::vector<Source> sources = {{"bench/a.scruple", "recipe A\n    metol   5 G   # note\n"}};
    const std::vector<Diagnostic> faults = {fault(0, {21, 24}, "metol   5 g")};
    const std::string kind(all_kinds()[0].name);
    const std::string severity(name_of(all_kinds()[0].severity));
    CHECK(as_text(faults, sources) == "bench/a.scruple:2.13: " + severity + ": the message [" + kind +
                                          "]\n"
                                          "    metol   5 G   # note\n"
                                          "            ‾‾‾\n"
                                          "    write  metol   5 g\n"
                                          "\n"
                                          "1 " +
                                          severity + " in 1 file\n");
}

TEST_CASE("related places are shown with their lines") {
    const std::vector<Source> sources = {{"a.scruple", "recipe Dune\n"}, {"b.scruple", "\nrecipe Dune\n"}};
    std::vector<Diagnostic> faults = {fault(1, {8, 12})};
    faults[0].related.push_back({0, {7, 11}, "`Dune` is also here"});
    CHECK(as_text(faults, sources)
              .find("    see    a.scruple:1.8: `Dune` is also here\n"
                    "           recipe Dune\n"
                    "                  ‾‾‾‾\n") != std::string::npos);
}

TEST_CASE("a proposal of several lines is aligned") {
    const std::vector<Source> sources = {{"a.scruple", "x\n"}};
    const std::vector<Diagnostic> faults = {fault(0, {0, 1}, "part A\nwater   1 l")};
    CHECK(as_text(faults, sources).find("    write  part A\n           water   1 l\n") != std::string::npos);
}

TEST_CASE("marks stand under what they mark: wide characters, marks and tabs") {
    CHECK(shown("薬品 5 G", {7, 10}) == "    薬品 5 G\n         ‾‾‾\n");
    CHECK(shown("薬品 5 G", {0, 6}) == "    薬品 5 G\n    ‾‾‾‾\n");
    CHECK(shown("e\xCC\x81 5 G", {4, 7}) == "    e\xCC\x81 5 G\n      ‾‾‾\n");
    CHECK(shown("ab\t5 G", {3, 6}) == "    ab  5 G\n        ‾‾‾\n");
    CHECK(shown("\t\tabcd\t5 G", {7, 10}) == "    abcd    5 G\n            ‾‾‾\n");
}

TEST_CASE("what would act on the terminal is made visible, and the mark still fits") {
    CHECK(shown("\x1B[2J 5 G", {5, 8}) == "    ␛[2J 5 G\n         ‾‾‾\n");
    CHECK(shown("\u202E5 G", {3, 6}) == "    ‹U+202E›5 G\n            ‾‾‾\n");
    CHECK(shown("a\xFF G", {1, 2}) == "    a‹byte FF› G\n     ‾‾‾‾‾‾‾‾‾\n");
}

TEST_CASE("an empty place gets one mark") {
    CHECK(shown("metol", {5, 5}) == "    metol\n         ‾\n");
    CHECK(shown("metol 5 g", {6, 6}) == "    metol 5 g\n          ‾\n");
}

TEST_CASE("a place over several lines is marked on its first line") {
    CHECK(shown("metol\nborax\n", {2, 9}) == "    metol\n      ‾‾‾\n");
    CHECK(shown("metol\r\nborax\r\n", {2, 9}) == "    metol\n      ‾‾‾\n");
}

TEST_CASE("an empty line, an empty file and a place past the end show no line") {
    CHECK(shown("a\n\nb\n", {2, 2}) == "");
    CHECK(shown("", {0, 0}) == "");
    CHECK(shown("abc\n", {90, 99}) == "");
}

TEST_CASE("a line that fits is shown whole, however late the place") {
    const std::string line = std::string(90, 'x') + " 5 G";
    CHECK(shown(line, {91, 94}) == "    " + line + "\n    " + std::string(91, ' ') + "‾‾‾\n");
}

TEST_CASE("a long line is cut around the place") {
    const std::string line = std::string(5000, 'a') + "5 G" + std::string(5000, 'b');
    CHECK(shown(line, {5000, 5003}) ==
          "    …" + std::string(40, 'a') + "5 G" + std::string(56, 'b') + "…\n" + std::string(45, ' ') + "‾‾‾\n");
    CHECK(shown(line, {0, 1}) == "    " + std::string(100, 'a') + "…\n    ‾\n");
    const std::string to_the_end = std::string(200, 'a') + "5 G";
    CHECK(shown(to_the_end, {200, 203}) == "    …" + std::string(40, 'a') + "5 G\n" + std::string(45, ' ') + "‾‾‾\n");
}

TEST_CASE("a place longer than the view is marked up to the cut") {
    const std::string line(300, 'a');
    CHECK(shown(line, {0, 300}) == "    " + std::string(100, 'a') + "…\n    " + repeated("‾", 101) + "\n");
}

TEST_CASE("many places in an enormous line are shown quickly") {
    const std::vector<Source> sources = {{"a.scruple", std::string(10u << 20, 'x')}};
    std::vector<Diagnostic> faults;
    for (std::uint32_t n = 0; n < 10000; ++n) faults.push_back(fault(0, {n * 1000, n * 1000 + 5}));
    const std::string text = as_text(faults, sources, {.colour = false, .limit = 10000});
    CHECK(text.find("a.scruple:1.9999001: ") != std::string::npos);
    CHECK(nlohmann::json::parse(as_json(faults, sources)).size() == 10000);
}

TEST_CASE("colour is there only when asked for, and changes no words") {
    const std::vector<Source> sources = {{"a.scruple", "metol 5 G\n"}};
    const std::vector<Diagnostic> faults = {fault(0, {6, 9}, "metol 5 g")};
    const std::string plain = as_text(faults, sources);
    std::string coloured = as_text(faults, sources, {.colour = true});
    CHECK(plain.find('\x1B') == std::string::npos);
    CHECK(coloured.find('\x1B') != std::string::npos);
    for (auto at = coloured.find('\x1B'); at != std::string::npos; at = coloured.find('\x1B')) {
        coloured.erase(at, coloured.find('m', at) + 1 - at);
    }
    CHECK(coloured == plain);
}

TEST_CASE("past the limit the rest is counted and said") {
    const std::vector<Source> sources = {{"a.scruple", "0123456789\n"}};
    std::vector<Diagnostic> faults;
    for (std::uint32_t n = 0; n < 10; ++n) faults.push_back(fault(0, {n, n + 1}));
    const std::string text = as_text(faults, sources, {.colour = false, .limit = 3});
    CHECK(lines_in(text) == 3 * 4 + 2);
    CHECK(text.find("a.scruple:1.4: ") == std::string::npos);
    CHECK(text.find("\n3 of 10 are shown, errors before the rest\n10 ") != std::string::npos);
    CHECK(as_text(faults, sources, {.colour = false, .limit = 10}).find("are shown") == std::string::npos);
    CHECK(as_text(faults, sources, {.colour = false, .limit = 0}).starts_with("0 of 10 are shown"));
}

TEST_CASE("the limit leaves errors in, and keeps the order of the places") {
    const Kind grave = kind_of(Severity::error);
    const Kind light = kind_of(Severity::warning);
    const std::vector<Source> sources = {{"a.scruple", "0123456789\n"}};
    std::vector<Diagnostic> faults;
    for (std::uint32_t n = 0; n < 6; ++n) {
        faults.push_back({n == 2 || n == 5 ? grave : light, 0, {n, n + 1}, "the message", "", {}});
    }
    const std::string text = as_text(faults, sources, {.colour = false, .limit = 3});
    const auto first = text.find("a.scruple:1.1: warning");
    const auto second = text.find("a.scruple:1.3: error");
    const auto third = text.find("a.scruple:1.6: error");
    REQUIRE(third != std::string::npos);
    CHECK(first < second);
    CHECK(second < third);
    CHECK(text.ends_with("2 errors, 4 warnings in 1 file\n"));
}

TEST_CASE("a fault without a file has no place and counts no file") {
    const std::vector<Diagnostic> faults = {fault(7, {0, 0})};
    CHECK(as_text(faults, {}).starts_with(std::string(name_of(all_kinds()[0].severity)) + ": the message ["));
    CHECK(as_text(faults, {}).find(" in ") == std::string::npos);
    const auto json = nlohmann::json::parse(as_json(faults, {}));
    CHECK(json[0]["file"] == "");
    CHECK(json[0]["line"] == 0);
}

TEST_CASE("JSON has exactly the promised keys, in their order") {
    const std::vector<Source> sources = {{"a.scruple", "\n\tmetol 5 G\n"}};
    const std::vector<Diagnostic> faults = {fault(0, {8, 11}, "5 g")};
    const auto json = nlohmann::ordered_json::parse(as_json(faults, sources));
    REQUIRE(json.size() == 1);
    std::string keys;
    for (const auto& [key, value] : json[0].items()) keys += key + " ";
    CHECK(keys == "file line column severity kind message write ");
    CHECK(json[0]["file"] == "a.scruple");
    CHECK(json[0]["line"] == 2);
    CHECK(json[0]["column"] == 8);
    CHECK(json[0]["severity"] == name_of(all_kinds()[0].severity));
    CHECK(json[0]["kind"] == all_kinds()[0].name);
    CHECK(json[0]["message"] == "the message");
    CHECK(json[0]["write"] == "5 g");
}

TEST_CASE("a path that acts or is not UTF-8 does no harm") {
    const std::vector<Source> sources = {{"a\x1B[2J\xFF", "x\n"}};
    const std::vector<Diagnostic> faults = {fault(0, {0, 1})};
    CHECK(as_text(faults, sources).starts_with("a␛[2J‹byte FF›:1.1: "));
    CHECK(nlohmann::json::accept(as_json(faults, sources)));
}
