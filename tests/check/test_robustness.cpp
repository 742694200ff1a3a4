// SPDX-License-Identifier: MIT
// Bad, large and tangled input: every check ends, soon, and without a crash.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "scruple/check/contents.hpp"
#include "scruple/text/source.hpp"
#include "support/sanitized.hpp"
#include "workspace.hpp"

using namespace scruple;
using diagnostics::Kind;

namespace {

/// Checks text beside the library. What would take the wrong power of its length is stopped by the runner's own limit.
const check::Checked& checked_text(test::Workspace& workspace, std::string text) {
    workspace.clear();
    workspace.add("made.scruple", std::move(text));
    return workspace.check(0);
}

std::size_t count(const check::Checked& checked, Kind kind) {
    return static_cast<std::size_t>(std::ranges::count(checked.diagnostics, kind, &diagnostics::Diagnostic::kind));
}

std::string number(std::size_t n) {
    return std::to_string(n);
}

}  // namespace

namespace {

/// Small changes such as editors, merges and scanners make, over text that stays UTF-8.
class Mutator {
  public:
    explicit Mutator(std::vector<std::string> texts) : texts_(std::move(texts)) {
        for (const auto& text : texts_) {
            for (std::size_t at = 0; at < text.size();) {
                const auto end = std::min(text.find('\n', at), text.size());
                lines_.push_back(text.substr(at, end - at + 1));
                at = end + 1;
            }
        }
    }

    std::string next() {
        std::string text = texts_[below(texts_.size())];
        for (auto changes = 1 + below(6); changes > 0; --changes) change(text);
        return text;
    }

  private:
    std::size_t below(std::size_t n) { return n == 0 ? 0 : random_() % n; }

    void change(std::string& text) {
        const auto at = below(text.size() + 1);
        switch (below(7)) {
            case 0:
                text.erase(at, 1 + below(12));
                break;
            case 1:
                text.insert(at, pieces_[below(pieces_.size())]);
                break;
            case 2:
                text.insert(at, lines_[below(lines_.size())]);
                break;
            case 3:
                insert_line(text, at);
                break;
            case 4:
                erase_line(text, at);
                break;
            case 5:
                text.insert(at, text.substr(below(text.size() + 1), below(80)));
                break;
            case 6:
                if (at < text.size()) text[at] = static_cast<char>(32 + below(95));
                break;
        }
    }

    void insert_line(std::string& text, std::size_t at) {
        const auto end = text.find('\n', at);
        text.insert(end == std::string::npos ? text.size() : end + 1, lines_[below(lines_.size())]);
    }

    static void erase_line(std::string& text, std::size_t at) {
        const auto before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
        const auto begin = before == std::string::npos ? 0 : before + 1;
        const auto end = text.find('\n', begin);
        text.erase(begin, end == std::string::npos ? std::string::npos : end - begin + 1);
    }

    std::vector<std::string> texts_, lines_;
    std::vector<std::string> pieces_ = {"0",         "-",      "1/0",      "99999999999999999999",
                                        ",",         ".",      "%",        "(",
                                        ")",         "\"",     "#",        " to ",
                                        "½",         " g",     " ml",      " at ",
                                        "+",         "?",      " per ",    " to make ",
                                        " the rest", "°C",     "\xc2\xa0", "\t",
                                        "\r",        "→",      "·",        " now",
                                        ":",         " each ", " ppm",     " 0 ml",
                                        " mol",      " drops", " 1e9",     "1000000000000 kg"};
    std::mt19937 random_{20261125};
};

std::vector<std::string> all_texts() {
    std::vector<std::string> texts;
    for (const auto* folder : {"tests/cases/check", "tests/cases/whole", "recipes"}) {
        for (const auto& path : test::recipe_files_in(folder)) texts.push_back(test::read_whole(path));
    }
    return texts;
}

/// What must hold of any result.
void check_sound(const test::Workspace& workspace) {
    for (const auto& diagnostic : workspace.diagnostics()) {
        REQUIRE(diagnostic.file < workspace.sources().size());
        REQUIRE(diagnostic.span.begin <= diagnostic.span.end);
        REQUIRE(diagnostic.span.end <= workspace.sources()[diagnostic.file].bytes.size());
        REQUIRE_FALSE(diagnostic.message.empty());
    }
}

}  // namespace

TEST_CASE("thousands of spoilt recipe files are checked to the end") {
    Mutator mutator(all_texts());
    test::Workspace workspace;
    std::size_t files = 0, faults = 0;
    // Several at a time, since each check reads the library too.
    constexpr int rounds = test::as_many_as_sensible(300);
    for (int i = 0; i < rounds; ++i) {
        workspace.clear();
        while (workspace.added() < 8) {
            auto text = mutator.next();
            // The driver refuses what is not UTF-8 before anything is parsed.
            if (text::first_invalid_byte(text) == std::string::npos) workspace.add("spoilt.scruple", std::move(text));
        }
        workspace.check(1);
        check_sound(workspace);
        for (check::Id id = 0; id < workspace.model().sections.size(); ++id)
            (void)check::contents(workspace.model(), id, 0);
        files += workspace.added();
        faults += workspace.diagnostics().size();
    }
    CHECK(files == 8 * rounds);
    CHECK(faults > files);
}

TEST_CASE("a solution outside any recipe may say what only a recipe can hold") {
    test::Workspace workspace;
    for (const auto* heading : {"part A", "bath A", "working", "replenisher"}) {
        for (const auto* line :
             {"replenish 20 ml per film 135", "capacity 20 ml stock per film 135", "dilute stock 1+1",
              "metol 1 g soft, 2 g normal", "expect metol 1 g/l", "pour in lye", "keeps 2 days"}) {
            CAPTURE(line);
            CHECK(count(checked_text(workspace, heading + std::string("\n") + line + "\n"), Kind::line_out_of_place) >
                  0);
        }
    }
}

TEST_CASE("ten thousand faults are all found") {
    test::Workspace workspace;
    std::string text = "recipe Trial\n";
    for (std::size_t i = 0; i < 10'000; ++i) text += "    sodium carbonaat " + number(i) + "   5 g\n";
    CHECK(count(checked_text(workspace, text), Kind::unknown_name) == 10'000);
    text = "recipe Trial\n";
    for (std::size_t i = 0; i < 10'000; ++i) text += "    metol   " + number(i) + ",5 oz\n";
    CHECK(count(checked_text(workspace, text), Kind::decimal_comma) == 10'000);
    text.clear();
    for (std::size_t i = 0; i < 10'000; ++i) text += "recipe Same\n    water   1 l\n";
    CHECK(count(checked_text(workspace, text), Kind::defined_twice) == 9'999);
}

namespace {

/// Recipes in a row, each of which takes `times` lines of the one before; the last takes `of_last`.
std::string chain(std::size_t length, std::size_t times, const std::string& first_line, bool expecting) {
    std::string text;
    for (std::size_t i = 0; i < length; ++i) {
        text += "recipe Link " + std::string(1, 'A') + number(i) + "\n    water   100 ml\n";
        for (std::size_t n = 0; n < times; ++n)
            text += "    " + (i == 0 ? first_line : "Link A" + number(i - 1) + "   250 ml") + "\n";
        text += "    water to make   1 l\n";
        if (expecting || i + 1 == length) text += "    expect metol 0 to 100 g/l\n";
    }
    return text;
}

}  // namespace

TEST_CASE("a chain of five thousand recipes, each made of the one before") {
    test::Workspace workspace;
    const auto& checked = checked_text(workspace, chain(5000, 1, "metol   5 g", false));
    CHECK_MESSAGE(checked.diagnostics.empty(), checked.diagnostics.front().message);
    CHECK(check::contents(checked.model, test::section_called(checked.model, "link a4999"), 0).size() == 1);
}

TEST_CASE("a chain in which every link states an expectation") {
    test::Workspace workspace;
    const auto& checked = checked_text(workspace, chain(2000, 1, "metol   5 g", true));
    CHECK_MESSAGE(checked.diagnostics.empty(), checked.diagnostics.front().message);
}

TEST_CASE("a circle of five thousand recipes is told once") {
    test::Workspace workspace;
    const auto& checked = checked_text(workspace, chain(5000, 1, "Link A4999   100 ml", false));
    CHECK(checked.diagnostics.size() == 1);
    CHECK(count(checked, Kind::contains_itself) == 1);
}

TEST_CASE("two circles with a long way between them") {
    test::Workspace workspace;
    auto text = chain(5000, 1, "Link A1   100 ml", false);
    text += "recipe Far End\n    Link A4999   100 ml\n    Other End   100 ml\n    water to make   1 l\n";
    text += "recipe Other End\n    Far End   100 ml\n    water to make   1 l\n";
    CHECK(count(checked_text(workspace, text), Kind::contains_itself) == 2);
}

TEST_CASE("a solution that takes the one before twice, sixty times over") {
    test::Workspace workspace;
    const auto& checked = checked_text(workspace, chain(60, 2, "metol   2 g", false));
    CHECK_MESSAGE(checked.diagnostics.empty(), checked.diagnostics.front().message);
    const auto contents = check::contents(checked.model, test::section_called(checked.model, "link a59"), 0);
    REQUIRE(contents.size() == 1);
    // 4 g in the first litre; each link then holds half of the one before it.
    CHECK(contents.front().g_per_l == doctest::Approx(4 / 0x1p59).epsilon(1e-9));
}

TEST_CASE("a recipe of ten thousand parts, and one of ten thousand ingredients") {
    test::Workspace workspace;
    std::string text = "recipe Trial\n";
    for (std::size_t i = 0; i < 10'000; ++i)
        text += "part P" + number(i) + "\n    water   500 ml\n    metol   1 g\n    water to make   1 l\n";
    text += "working\n    use within   1 h\n    part P9999   100 ml\n    water to make   1 l\n";
    CHECK(checked_text(workspace, text).diagnostics.empty());
    text = "recipe Trial\n    water   1000 l\n";
    for (std::size_t i = 0; i < 10'000; ++i)
        text += "    sodium chloride   1 g, 0.5 g now\n    sodium chloride   the rest\n";
    text += "    water to make   2000 l\n    expect sodium chloride 5 g/l\n";
    CHECK_MESSAGE(checked_text(workspace, text).diagnostics.empty(), described(workspace));
}

TEST_CASE("empty text, a mark of byte order, other line ends") {
    test::Workspace workspace;
    for (const auto* text : {"", "\n", "# nothing\n", "\xEF\xBB\xBF", "\r", "   \t  "})
        CHECK_MESSAGE(checked_text(workspace, text).diagnostics.empty(), text);
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const auto& checked = checked_text(workspace, "\xEF\xBB\xBFrecipe Trial" + end + "    water   500 ml" + end +
                                                          "    metol   2 g" + end + "    water to make   1 l" + end);
        CHECK_MESSAGE(checked.diagnostics.empty(), described(workspace));
        CHECK(checked.model.recipes.size() == 1);
    }
}
