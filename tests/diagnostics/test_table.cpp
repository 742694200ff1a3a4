// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <stdexcept>
#include <string>

#include "scruple/diagnostics/diagnostic.hpp"
#include "scruple/text/source.hpp"

using namespace scruple::diagnostics;

namespace {

const std::initializer_list<std::string_view> many = {"first", "second", "third", "fourth", "fifth", "sixth"};

bool is_name_in_words(std::string_view name) {
    const auto fits = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    return !name.empty() && std::all_of(name.begin(), name.end(), fits) && name.front() != '-' && name.back() != '-' &&
           name.find("--") == std::string_view::npos;
}

}  // namespace

TEST_CASE("every kind is found by its number and by its name") {
    REQUIRE_FALSE(all_kinds().empty());
    std::set<std::string_view> names;
    for (std::size_t n = 0; n < all_kinds().size(); ++n) {
        const KindInfo& about = all_kinds()[n];
        CAPTURE(about.name);
        CHECK(static_cast<std::size_t>(about.kind) == n);
        CHECK(&info(about.kind) == &about);
        CHECK(find_kind(about.name) == &about);
        CHECK(is_name_in_words(about.name));
        CHECK(names.insert(about.name).second);
    }
    CHECK(find_kind("no-such-kind") == nullptr);
    CHECK(find_kind("") == nullptr);
}

TEST_CASE("every kind has a wording in the common voice, and an explanation") {
    for (const KindInfo& about : all_kinds()) {
        CAPTURE(about.name);
        CHECK_FALSE(about.wording.empty());
        CHECK_FALSE(about.explanation.empty());
        CHECK_FALSE(about.wording.ends_with('.'));
        CHECK(about.wording.find('\n') == std::string_view::npos);
        CHECK(std::count(about.wording.begin(), about.wording.end(), '`') % 2 == 0);
    }
}

TEST_CASE("every kind can be made, with all its arguments or with none") {
    for (const KindInfo& about : all_kinds()) {
        CAPTURE(about.name);
        const Diagnostic full = make(about.kind, 3, {5, 9}, many);
        CHECK(full.kind == about.kind);
        CHECK(full.file == 3);
        CHECK(full.span == scruple::text::Span{5, 9});
        CHECK((full.message != about.wording) == (about.wording.find('{') != std::string_view::npos));
        CHECK_NOTHROW((void)make(about.kind, 0, {}));
    }
}

namespace {

// A kind whose wording shows its first argument.
const KindInfo& telling_kind() {
    for (const KindInfo& about : all_kinds()) {
        if (about.wording.find("{0}") != std::string_view::npos) return about;
    }
    throw std::logic_error("no kind shows its first argument");
}

std::string message_about(std::string_view argument) {
    return make(telling_kind().kind, 0, {}, {argument}).message;
}

}  // namespace

TEST_CASE("arguments come from files: they cannot act on a terminal") {
    const std::string message = message_about("\x1B[2J\u202Emetol\n");
    CHECK(message.find('\x1B') == std::string::npos);
    CHECK(message.find('\n') == std::string::npos);
    CHECK(message.find("␛[2J‹U+202E›metol␊") != std::string::npos);
}

TEST_CASE("arguments cannot stand for other arguments") {
    CHECK(message_about("{0}{1}{99}").find("{0}{1}{99}") != std::string::npos);
}

TEST_CASE("a very long argument is shortened") {
    const std::string message = message_about(std::string(1u << 20, 'x'));
    CHECK(message.size() < 300);
    CHECK(message.find("…") != std::string::npos);
}

TEST_CASE("severities have their words") {
    CHECK(name_of(Severity::error) == "error");
    CHECK(name_of(Severity::warning) == "warning");
    CHECK(name_of(Severity::advice) == "advice");
}

TEST_CASE("any_error sees errors and nothing else") {
    for (const KindInfo& about : all_kinds()) {
        CHECK(any_error({make(about.kind, 0, {})}) == (about.severity == Severity::error));
    }
    CHECK_FALSE(any_error({}));
}

TEST_CASE("settling sorts by file, place and kind, and shows each fault once") {
    const Kind low = all_kinds()[0].kind;
    const Kind high = all_kinds()[1].kind;
    std::vector<Diagnostic> faults = {make(high, 1, {4, 5}), make(low, 1, {4, 5}), make(low, 0, {9, 9}),
                                      make(low, 1, {2, 8}),  make(low, 1, {4, 5}), make(low, 1, {2, 3})};
    sort_and_settle(faults);
    REQUIRE(faults.size() == 5);
    CHECK(faults[0].file == 0);
    CHECK(faults[1].span == scruple::text::Span{2, 3});
    CHECK(faults[2].span == scruple::text::Span{2, 8});
    CHECK(faults[3].kind == low);
    CHECK(faults[4].kind == high);
}

TEST_CASE("two faults of one kind at one place stay apart when they say different things") {
    std::vector<Diagnostic> faults = {make(telling_kind().kind, 0, {1, 2}, {"b"}),
                                      make(telling_kind().kind, 0, {1, 2}, {"a"})};
    sort_and_settle(faults);
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].message < faults[1].message);
}
