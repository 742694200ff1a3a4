// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "scruple/chemistry/balance.hpp"
#include "support/csv.hpp"

using namespace scruple::chemistry;
using scruple::quantity::Exact;
using scruple::test::reference_rows;
using scruple::test::Row;

namespace {

struct Written {
    std::vector<Formula> left, right;
    Coefficients numbers;
};

/// `2 Na2CO3 + H2O -> …`, blanks between all; what is in parentheses after the last substance is left aside.
Written read(const std::string& text) {
    Written written;
    std::istringstream words(text);
    auto* side = &written.left;
    Exact number = 1;
    for (std::string word; words >> word;) {
        const bool counts = word.find_first_not_of("0123456789") == std::string::npos;
        if (word == "->") side = &written.right;
        if (word == "+" || word == "->" || word.starts_with("(1:")) continue;
        if (counts) {
            number = std::stoi(word);
            continue;
        }
        side->push_back(std::get<Formula>(read_formula(word)));
        written.numbers.push_back(number);
        number = 1;
    }
    return written;
}

Balances balanced(const std::string& text) {
    const Written written = read(text);
    return balances(written.left, written.right);
}

std::string said(const Coefficients& numbers) {
    std::string text;
    for (const Exact& number : numbers) text += (text.empty() ? "" : " ") + number.ratio_text();
    return text;
}

std::string only(const std::string& text) {
    const Balances found = balanced(text);
    return found.only() == nullptr ? "not one" : said(*found.only());
}

}  // namespace

TEST_CASE("worked_examples.csv: reactions are balanced as printed, in the smallest numbers") {
    int seen = 0;
    for (const Row& row : reference_rows("worked_examples.csv")) {
        if (row.at("topic") != "reaction balance") continue;
        const Written written = read(row.at("expected_answer_with_unit"));
        const Balances found = balances(written.left, written.right);
        INFO(row.at("question"));
        // Sulfur and sulfuric acid give sulfur dioxide too, so the atoms alone leave the third reaction open.
        const bool open = row.at("question") == "thiosulfate + acid";
        CHECK(found.ways.size() == (open ? 2 : 1));
        const Coefficients& numbers = open ? found.together : *found.only();
        REQUIRE(numbers.size() == written.numbers.size());
        const Exact times = written.numbers.front() / numbers.front();
        for (std::size_t i = 0; i < numbers.size(); ++i) CHECK(numbers[i] * times == written.numbers[i]);
        ++seen;
    }
    CHECK(seen == 4);
}

TEST_CASE("textbook equations, recalled, their atoms counted by hand") {
    CHECK(only("Na2B4O7·10H2O + NaOH -> NaBO2 + H2O") == "1 2 4 11");
    CHECK(only("C6H8O7 + NaHCO3 -> C6H5Na3O7 + CO2 + H2O") == "1 3 1 3 3");
    CHECK(only("CaSO4·½H2O + H2O -> CaSO4·2H2O") == "2 3 2");
    CHECK(only("MnO4- + Fe+2 + H+ -> Mn+2 + Fe+3 + H2O") == "1 5 8 1 5 4");
    CHECK(only("K4Fe(CN)6 + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O") ==
          "10 122 299 162 5 122 60 60 188");
}

TEST_CASE("two reactions side by side are two ways") {
    // Peroxide falls apart by itself, and permanganate gives oxygen by itself: textbooks have 2, 5, 3 for the mixture.
    const Balances found = balanced("KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2");
    CHECK(found.freedom == 2);
    CHECK(found.only() == nullptr);
    std::vector<std::string> ways;
    for (const Coefficients& way : found.ways) ways.push_back(said(way));
    std::ranges::sort(ways);
    CHECK(ways == std::vector<std::string>{"0 2 0 0 0 2 1", "4 0 6 2 4 6 5"});
    CHECK(said(found.together) == "2 1 3 1 2 4 3");
}

TEST_CASE("what cannot balance where it stands") {
    CHECK(balanced("NaCl -> KCl").ways.empty());
    CHECK(balanced("NaCl -> KCl").freedom == 0);
    CHECK(balanced("H2O -> H2O2").freedom == 0);
    CHECK(balanced("Fe+2 -> Fe+3").freedom == 0);
    const Balances turned = balanced("Na2B4O7 + NaOH + H2O -> NaBO2");
    CHECK(turned.ways.empty());
    CHECK(turned.freedom == 1);
    CHECK(said(turned.turned) == "1 2 -1 4");
    const Balances idle = balanced("NaCl + AgNO3 + H2O -> AgCl + NaNO3");
    REQUIRE(idle.ways.size() == 1);
    CHECK(said(idle.ways.front()) == "1 1 0 1 1");
    CHECK(idle.only() == nullptr);
}

TEST_CASE("no substances, the same on both sides, and more than anybody writes") {
    CHECK(balances({}, {}).ways.empty());
    CHECK(only("H2O -> H2O") == "1 1");
    const std::vector<Formula> many(most_substances, std::get<Formula>(read_formula("H2O")));
    CHECK(balances(many, many).ways.empty());
    // As many ways as there are pairs: the worst that the most substances can come to.
    const std::vector<Formula> half(most_substances / 2, many.front());
    CHECK(balances(half, half).ways.size() == half.size() * half.size());
}
