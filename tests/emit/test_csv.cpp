// SPDX-License-Identifier: MIT
// A row for a spreadsheet: RFC 4180; what begins a formula there is the list of the OWASP page on CSV injection
// (=, +, -, @, tab, carriage return, and the wide forms of the first four), to which a line feed is added.
#include <doctest/doctest.h>

#include <string>

#include "scruple/emit/emit.hpp"

using namespace scruple;

namespace {

/// The list of one supplier's postage, whose name is `cell`, as a spreadsheet has it: what follows the head and
/// "postage".
std::string row_with(const std::string& cell) {
    plan::ShoppingList list;
    list.postage.push_back({cell, 3, "EUR"});
    const std::string all = emit::shopping_csv(list);
    return all.substr(all.find("\r\n") + 2);
}

std::string expected(const std::string& cell) {
    return "postage,,,,,,," + cell + ",,,3.00,EUR,\r\n";
}

}  // namespace

TEST_CASE("a cell that would be a formula is a text, whatever it begins with") {
    for (const char* cell : {"=1+1", "+1", "-1", "@sum", "\t1+1", "＝1+1", "＋1", "－1", "＠sum"}) {
        CAPTURE(cell);
        CHECK(row_with(cell) == expected("'" + std::string(cell)));
    }
    CHECK(row_with("   =1+1") == expected("   '=1+1"));
    CHECK(row_with("\r=1+1") == expected("\"'\r'=1+1\""));
    CHECK(row_with("\n=1+1") == expected("\"'\n'=1+1\""));
}

TEST_CASE("nor is one that begins where another program parts cells") {
    CHECK(row_with("Quay;=1+1") == expected("Quay;'=1+1"));
    CHECK(row_with("Quay| @sum") == expected("Quay| '@sum"));
    CHECK(row_with("Quay\t＝1+1") == expected("Quay\t'＝1+1"));
}

TEST_CASE("commas, quotes and ends of line stay within their cell") {
    CHECK(row_with("Quay, the") == expected("\"Quay, the\""));
    CHECK(row_with("the \"Quay\"") == expected("\"the \"\"Quay\"\"\""));
    CHECK(row_with("Quay\r\ntotal,,,") == expected("\"Quay\r\ntotal,,,\""));
    CHECK(row_with("1-2 = 3") == expected("1-2 = 3"));
}
