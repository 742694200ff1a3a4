// SPDX-License-Identifier: MIT
// What must not meet: every row of dangerous_combinations.csv by a recipe in which it does, and by ones in which it
// nearly does.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "support/csv.hpp"
#include "workspace.hpp"

using namespace scruple;
using diagnostics::Kind;

namespace {

struct Case {
    std::string b;        ///< the row's ingredient_b
    std::string meeting;  ///< of the library
    std::string fires;    ///< lines in which it happens
    std::vector<std::string> misses;
};

const std::vector<Case> cases = {
    {"sulfite / bisulfite / metabisulfite",
     "acid on sulfite",
     "water 800 ml\nsodium sulfite (anhydrous) 30 g\ncitric acid (anhydrous) 60 g\nwater to make 1 l",
     {"water 800 ml\nsodium sulfite (anhydrous) 30 g\nsodium acetate (anhydrous) 20 g\nacetic acid (28 % v/v) 10 ml\n"
      "water to make 1 l",
      "water 800 ml\npotassium metabisulfite 25 g\nwater to make 1 l",
      "water 800 ml\nsodium sulfite (anhydrous) 1 g\ncitric acid (anhydrous) 60 g\nwater to make 1 l",
      // The agent's own acid is no match for the sulfite: the way in which developers are usually mixed.
      "water 750 ml at 50 C\nmetol 5 g\nsodium sulfite (anhydrous) 100 g\nwater to make 1 l"}},
    {"hypochlorite",
     "ammonia with chlorine bleach",
     "water 900 ml\nsodium hypochlorite (5 % w/v) 20 ml\nammonia (concentrated) 5 ml\nwater to make 1 l",
     {"water 900 ml\nsodium hypochlorite (5 % w/v) 20 ml\nsodium carbonate (anhydrous) 5 g\nwater to make 1 l",
      "water 900 ml\nammonia (concentrated) 5 ml\nwater to make 1 l"}},
    {"ferricyanide / ferrocyanide",
     "strong acid on ferricyanide",
     "water 900 ml\npotassium ferricyanide 20 g\nsulfuric acid (concentrated) 20 ml\nwater to make 1 l",
     {"water 900 ml at 20 C\npotassium ferricyanide 20 g\nacetic acid (28 % v/v) 20 ml\nwater to make 1 l",
      "water 900 ml\nsulfuric acid (concentrated) 20 ml\nwater to make 1 l"}},
    {"ferricyanide / ferrocyanide",
     "hot acid on ferricyanide",
     "water 900 ml at 60 C\npotassium ferricyanide 20 g\nacetic acid (28 % v/v) 20 ml\nwater to make 1 l",
     {"water 900 ml at 60 C\npotassium ferricyanide 20 g\ncool to 20 C\nacetic acid (28 % v/v) 20 ml\n"
      "water to make 1 l",
      "water 900 ml at 60 C\npotassium ferricyanide 20 g\nwater to make 1 l"}},
    {"sulfide (sepia toner)",
     "acid on sulfide",
     "water 900 ml\nsodium sulfide (nonahydrate) 20 g\ncitric acid (anhydrous) 40 g\nwater to make 1 l",
     {// A spoon of acid, neutralised already: it stays far above pH 9.
      "water 900 ml\nsodium hydroxide 4 g\ncitric acid (anhydrous) 2 g\nsodium sulfide (nonahydrate) 20 g\n"
      "water to make 1 l",
      "water 900 ml\nsodium sulfide (nonahydrate) 20 g\ncitric acid (anhydrous) 2 g\nwater to make 1 l",
      "water 900 ml\ncitric acid (anhydrous) 40 g\nwater to make 1 l"}},
    {"selenite / selenosulfate toner",
     "strong acid on selenite",
     "water 900 ml\nsodium selenite (anhydrous) 5 g\nsulfuric acid (concentrated) 10 ml\nwater to make 1 l",
     {"water 900 ml\nsodium selenite (anhydrous) 5 g\nsodium sulfite (anhydrous) 30 g\nwater to make 1 l"}},
    {"dichromate",
     "hydrochloric acid on dichromate",
     "water 200 ml\nhydrochloric acid (concentrated) 300 ml\npotassium dichromate 20 g\nwater to make 600 ml",
     {"water 900 ml\npotassium dichromate 20 g\nhydrochloric acid (concentrated) 10 ml\nwater to make 1 l",
      "water 200 ml\nhydrochloric acid (concentrated) 300 ml\nwater to make 600 ml"}},
    {"organics, glycols, developing agents, sulfite",
     "oxidiser with what burns",
     "water 900 ml\npotassium permanganate 5 g\nglycerol 20 ml\nwater to make 1 l",
     {"water 900 ml\npotassium permanganate 5 g\nsodium chloride 10 g\nwater to make 1 l",
      "water 900 ml\npotassium permanganate 0.5 g\nglycerol 20 ml\nwater to make 1 l"}},
    {"ethanol + nitric acid; acetylene",
     "silver nitrate with alcohol and nitric acid",
     "water 500 ml\nsilver nitrate 10 g\nethanol 50 ml\nnitric acid (concentrated) 5 ml\nwater to make 1 l",
     {"water 500 ml\nsilver nitrate 10 g\nethanol 50 ml\nwater to make 1 l",
      "water 500 ml\nsilver nitrate 10 g\nnitric acid (concentrated) 5 ml\nwater to make 1 l"}},
    {"ethanol + nitric acid; acetylene",
     "silver nitrate with acetylene",
     "water 500 ml\nsilver nitrate 10 g\nlamp gas 1 g\nwater to make 1 l\nchemical lamp gas\nform gas C2H2",
     {"water 500 ml\nlamp gas 1 g\nwater to make 1 l\nchemical lamp gas\nform gas C2H2"}},
    {"sodium/potassium hydroxide pellets in little or hot water",
     "lye pellets in little water",
     "water 100 ml at 15 C\nsodium hydroxide 45 g\nwater to make 200 ml",
     {"water 500 ml at 15 C\nsodium hydroxide 45 g\nwater to make 1 l",
      "sodium hydroxide (40 % w/v) 100 ml\nwater to make 1 l"}},
    {"carbonate / bicarbonate",
     "acid on carbonate",
     "water 800 ml\nsodium carbonate (anhydrous) 30 g\ncitric acid (anhydrous) 80 g\nwater to make 1 l",
     {"water 800 ml\nsodium carbonate (anhydrous) 30 g\ncitric acid (anhydrous) 2 g\nwater to make 1 l"}},
    {"permanganate / silver / heavy metal salts",
     "peroxide with metal salts",
     "water 800 ml\ncopper sulfate (anhydrous) 10 g\nhydrogen peroxide (3 % w/w) 100 ml\nwater to make 1 l",
     {"water 800 ml\nsodium sulfate (anhydrous) 10 g\nhydrogen peroxide (3 % w/w) 100 ml\nwater to make 1 l"}},
    {"strong oxidiser + acid",
     "iodide with oxidiser and acid",
     "water 800 ml\npotassium iodide 5 g\npotassium persulfate 5 g\nsulfuric acid (concentrated) 5 ml\n"
     "water to make 1 l",
     {"water 800 ml\npotassium iodide 5 g\npotassium persulfate 5 g\nsodium carbonate (anhydrous) 5 g\n"
      "water to make 1 l",
      "water 800 ml\npotassium iodide 5 g\nsulfuric acid (concentrated) 5 ml\nwater to make 1 l"}},
};

bool is_of(const test::Row& row, const Case& it) {
    return row.at("ingredient_b") == it.b;
}

bool is_about(const diagnostics::Diagnostic& diagnostic, const std::string& meeting) {
    const std::set<Kind> kinds = {Kind::lethal_meeting, Kind::harmful_meeting, Kind::lethal_carry_over,
                                  Kind::harmful_carry_over};
    return kinds.contains(diagnostic.kind) &&
           diagnostic.write.find("accept " + meeting + " because") != std::string::npos;
}

class Darkroom {
  public:
    Darkroom() { workspace_.check(); }

    /// The kind of diagnostic that the text gives about a meeting; nullopt where it gives none.
    std::optional<Kind> found(const std::string& text, const std::string& meeting) {
        check(text);
        for (const auto& diagnostic : workspace_.diagnostics())
            if (is_about(diagnostic, meeting)) return diagnostic.kind;
        return std::nullopt;
    }
    std::optional<Kind> found_in_lines(const std::string& lines, const std::string& meeting) {
        return found("recipe Knot\n" + lines + "\n", meeting);
    }
    void check(const std::string& text) {
        workspace_.clear();
        workspace_.add("knot.scruple", text);
        workspace_.check();
    }
    [[nodiscard]] const check::Meeting& meeting(const std::string& name) const {
        const auto& names = workspace_.model().meeting_names;
        REQUIRE_MESSAGE(names.contains(name), name);
        return workspace_.model().meetings[names.at(name)];
    }
    [[nodiscard]] const test::Workspace& workspace() const { return workspace_; }

  private:
    test::Workspace workspace_;
};

bool holds(std::string_view text, std::string_view piece) {
    return text.find(piece) != std::string_view::npos;
}

const std::string stop = "recipe Sloe\nwater 900 ml\ncitric acid (anhydrous) 15 g\nwater to make 1 l\n";
const std::string toner = "recipe Medlar\nwater 900 ml\nsodium sulfide (nonahydrate) 20 g\nwater to make 1 l\n";
const std::string bleach = "recipe Damson\nwater 900 ml\nsodium hypochlorite (5 % w/v) 50 ml\nwater to make 1 l\n";

}  // namespace

TEST_CASE("dangerous_combinations.csv: every row is a meeting that is told, and not where it nearly comes about") {
    Darkroom darkroom;
    const auto rows = test::reference_rows("dangerous_combinations.csv");
    CHECK(rows.size() == 12);
    std::size_t told = 0;
    for (const auto& it : cases) {
        CAPTURE(it.meeting);
        const auto kind = darkroom.found_in_lines(it.fires, it.meeting);
        REQUIRE_MESSAGE(kind.has_value(), described(darkroom.workspace()));
        const bool lethal = darkroom.meeting(it.meeting).danger == check::Danger::lethal;
        CHECK(*kind == (lethal ? Kind::lethal_meeting : Kind::harmful_meeting));
        for (const auto& miss : it.misses) {
            CAPTURE(miss);
            CHECK_MESSAGE(!darkroom.found_in_lines(miss, it.meeting), described(darkroom.workspace()));
        }
        ++told;
    }
    CHECK(told == cases.size());
    for (const auto& row : rows) {
        CAPTURE(row.at("ingredient_b"));
        CHECK(std::ranges::any_of(cases, [&](const Case& it) { return is_of(row, it); }));
    }
}

TEST_CASE("dangerous_combinations.csv: hydroxide in hot water is told by the order of work") {
    Darkroom darkroom;
    const auto told = [&](const std::string& lines) {
        darkroom.check("recipe Knot\n" + lines + "\n");
        return std::ranges::any_of(darkroom.workspace().diagnostics(),
                                   [](const auto& one) { return one.kind == Kind::caustic_into_warm_water; });
    };
    CHECK(told("water 800 ml at 60 C\nsodium hydroxide 20 g\nwater to make 1 l"));
    CHECK_FALSE(told("water 800 ml at 60 C\ncool to 20 C\nsodium hydroxide 20 g\nwater to make 1 l"));
    CHECK_FALSE(told("water 400 ml at 50 C\nwater 800 ml at 10 C\nsodium hydroxide 20 g\nwater to make 1500 ml"));
}

TEST_CASE("dangerous_combinations.csv: the library says what the rows say, and where it is recalled") {
    Darkroom darkroom;
    for (const auto& row : test::reference_rows("dangerous_combinations.csv")) {
        for (const auto& it : cases) {
            if (!is_of(row, it)) continue;
            CAPTURE(it.meeting);
            const auto& meeting = darkroom.meeting(it.meeting);
            // `silver fulminate / acetylide` are two meetings.
            const auto& danger = row.at("danger");
            const auto slash = danger.find(" / ");
            CHECK((holds(meeting.comes, danger) ||
                   (slash != std::string::npos && (holds(meeting.comes, danger.substr(0, slash)) ||
                                                   holds(meeting.comes, danger.substr(slash + 3))))));
            if (holds(row.at("when"), "lethal")) CHECK(meeting.danger == check::Danger::lethal);
            CHECK(!meeting.cautions.empty());
            const auto recalled = [](std::string_view source) { return holds(source, "recalled"); };
            CHECK(std::ranges::any_of(meeting.sources, recalled) == (row.at("from_memory") == "yes"));
        }
    }
}

TEST_CASE("lethal: hydrogen sulfide, cyanide, chlorine and the like keep everything from being printed") {
    Darkroom darkroom;
    for (const auto& it : cases) {
        const auto comes = darkroom.meeting(it.meeting).comes;
        const bool kills = holds(comes, "H2S gas") || holds(comes, "HCN") || holds(comes, "Cl2 gas");
        if (kills) CHECK(darkroom.meeting(it.meeting).danger == check::Danger::lethal);
    }
}

// Household bleach and acid give chlorine: common knowledge, as the labels of the bottles say.
TEST_CASE("acid on chlorine bleach gives chlorine, in a solution and after an acid bath") {
    Darkroom darkroom;
    const std::string meeting = "acid on chlorine bleach";
    CHECK(darkroom.found_in_lines("water 900 ml\nsodium hypochlorite (5 % w/v) 50 ml\nacetic acid (28 % v/v) 50 ml\n"
                                  "water to make 1 l",
                                  meeting) == Kind::lethal_meeting);
    CHECK_FALSE(
        darkroom.found_in_lines("water 900 ml\nsodium hypochlorite (5 % w/v) 50 ml\nsodium hydroxide 2 g\n"
                                "water to make 1 l",
                                meeting));
    const std::string line = "process print line\nSloe 30 s\n";
    CHECK(darkroom.found(stop + bleach + line + "Damson 1 min\n", meeting) == Kind::lethal_carry_over);
    CHECK_FALSE(darkroom.found(stop + bleach + line + "wash 5 min\nDamson 1 min\n", meeting));
}

TEST_CASE("an acid stop bath is carried into a sulfide toner, unless a wash stands between") {
    Darkroom darkroom;
    const std::string meeting = "acid on sulfide";
    const auto in_process = [&](const std::string& lines) {
        return darkroom.found(stop + toner + "process brown prints\n" + lines, meeting);
    };
    CHECK(in_process("Sloe 30 s\nMedlar 2 min\n") == Kind::lethal_carry_over);
    CHECK(in_process("Medlar 2 min\nSloe 30 s\n") == Kind::lethal_carry_over);
    CHECK_FALSE(in_process("Sloe 30 s\nwash 5 min\nMedlar 2 min\n"));
    CHECK_FALSE(in_process("Sloe 30 s\nrinse 1 min\nMedlar 2 min\n"));
    // An alkaline bath before it is no acid.
    CHECK_FALSE(darkroom.found("recipe Rowan\nwater 900 ml\nsodium carbonate (anhydrous) 40 g\nwater to make 1 l\n" +
                                   toner + "process brown prints\nRowan 2 min\nMedlar 2 min\n",
                               meeting));
}

TEST_CASE("the usual way from developer through stop bath to fixer says nothing") {
    Darkroom darkroom;
    darkroom.check(
        "recipe Rowan\nwater 750 ml at 50 C\nmetol 3 g\nsodium sulfite (anhydrous) 100 g\n"
        "hydroquinone 5 g\nborax (decahydrate) 2 g\nwater to make 1 l\n" +
        stop +
        "recipe Alder\nwater 800 ml\nsodium thiosulfate (pentahydrate) 250 g\n"
        "sodium sulfite (anhydrous) 15 g\nsodium acetate (anhydrous) 20 g\nacetic acid (28 % v/v) 30 ml\n"
        "water to make 1 l\nprocess roll film\nRowan 8 min\nSloe 30 s\nAlder 5 min\nwash 10 min\n");
    CHECK_MESSAGE(darkroom.workspace().diagnostics().empty(), described(darkroom.workspace()));
}

TEST_CASE("sulfide into an acid beaker is told although the bath ends alkaline") {
    Darkroom darkroom;
    const std::string meeting = "acid on sulfide";
    const std::string acid = "citric acid (anhydrous) 5 g\n";
    const std::string lye = "sodium hydroxide 10 g\n";
    const std::string sulfide = "sodium sulfide (nonahydrate) 20 g\n";
    CHECK(darkroom.found_in_lines("water 900 ml\n" + acid + sulfide + lye, meeting) == Kind::lethal_meeting);
    CHECK_FALSE(darkroom.found_in_lines("water 900 ml\n" + acid + lye + sulfide, meeting));
    CHECK_FALSE(darkroom.found_in_lines("water 900 ml\n" + sulfide + acid + lye, meeting));
}

TEST_CASE("through parts, second vessels and dilutions") {
    Darkroom darkroom;
    const std::string meeting = "acid on sulfide";
    const std::string parts =
        "recipe Knot\npart A\nwater 400 ml\nsodium sulfide (nonahydrate) 40 g\nwater to make 500 ml\n"
        "part B\nwater 400 ml\ncitric acid (anhydrous) 80 g\nwater to make 500 ml\n";
    CHECK_FALSE(darkroom.found(parts, meeting));
    CHECK(darkroom.found(parts + "working\nmix part A + part B + water 1+1+8\n", meeting) == Kind::lethal_meeting);
    CHECK(darkroom.found_in_lines("apart sour\nwater 100 ml\ncitric acid (anhydrous) 40 g\nset aside sour\n"
                                  "water 700 ml\nsodium sulfide (nonahydrate) 20 g\npour in sour\nwater to make 1 l",
                                  meeting) == Kind::lethal_meeting);
    // Told once, where it happens, and not again in what is made of it.
    darkroom.check(
        "recipe Knot\nwater 400 ml\nsodium sulfide (nonahydrate) 40 g\ncitric acid (anhydrous) 80 g\n"
        "water to make 500 ml\nworking\ndilute stock 1+9\n");
    CHECK(std::ranges::count_if(darkroom.workspace().diagnostics(),
                                [&](const auto& it) { return is_about(it, meeting); }) == 1);
}

TEST_CASE("where the pH is not known, what acts as acid decides, and the message says so") {
    Darkroom darkroom;
    const std::string meeting = "acid on sulfide";
    const std::string sulfide = "water 900 ml\nsodium sulfide (nonahydrate) 20 g\n";
    const auto message = [&] {
        for (const auto& it : darkroom.workspace().diagnostics())
            if (is_about(it, meeting)) return it.message;
        return std::string();
    };
    CHECK(darkroom.found_in_lines(sulfide + "potassium alum 20 g", meeting) == Kind::lethal_meeting);
    CHECK(holds(message(), "the pH is not known"));
    CHECK(holds(message(), "Al+3"));
    // Beside what is not known stands an alkali, and nothing that could be an acid.
    CHECK_FALSE(darkroom.found_in_lines(sulfide + "sodium hydroxide 4 g\nsodium hexametaphosphate 1 g", meeting));
}

TEST_CASE("carbonate foams where acid makes carbonic acid of a part of it, and the litres are said") {
    Darkroom darkroom;
    const std::string lines =
        "water 500 ml\nsodium sulfite (anhydrous) 20 g\ncitric acid (anhydrous) 5 g\nsodium bicarbonate 20 g\n"
        "water to make 1 l";
    REQUIRE(darkroom.found_in_lines(lines, "acid on carbonate") == Kind::harmful_meeting);
    const auto& message = darkroom.workspace().diagnostics().front().message;
    // 5 g of the acid have 3 × 5 / 192.12 = 78 mmol of H+. Were all of it to meet carbonate, it would free 1.9 l of gas
    // (24.465 l a mole); the sulfite keeps about half of it. 192.12 g/mol: recalled.
    const auto at = message.find("with about ");
    REQUIRE(at != std::string::npos);
    const double litres = std::stod(message.substr(at + 11));
    CHECK(litres > 0.5);
    CHECK(litres < 3 * 5 / 192.12 * 24.465);
    CHECK(!darkroom.found_in_lines("water 500 ml\nsodium bicarbonate 20 g\nwater to make 1 l", "acid on carbonate"));
    CHECK(!darkroom.found_in_lines("water 500 ml\nsodium carbonate (anhydrous) 20 g\nboric acid 2 g\nwater to make 1 l",
                                   "acid on carbonate"));
}

TEST_CASE("what is accepted near a limit of pH is needed where the range of the pH crosses it") {
    Darkroom darkroom;
    const auto is_idle = [&](const std::string& ml) {
        darkroom.check(
            "recipe Finch\nwater 500 ml\nsodium sulfite (anhydrous) 30 g\nsodium metabisulfite 12 g\n"
            "acetic acid (glacial) " +
            ml +
            " ml\nwater to make 1 l\n"
            "accept acid on sulfite because \"under extraction\"\n");
        return std::ranges::any_of(darkroom.workspace().diagnostics(),
                                   [](const auto& it) { return it.kind == Kind::nothing_to_accept; });
    };
    CHECK(is_idle("10"));   // pH 6.0
    CHECK(!is_idle("28"));  // pH 4.6, which may be 4.45
    CHECK(darkroom.workspace().model().accepted.empty());
}

TEST_CASE("what is accepted from bath to bath is needed where only one variant comes near the limit") {
    Darkroom darkroom;
    const auto is_idle = [&](const std::string& hard) {
        darkroom.check(
            "recipe Stint\nwater 900 ml\nsodium chloride 1 g\nwater to make 1 l\n"
            "recipe Finch\nvariants soft, hard\nwater 500 ml\nsodium sulfite (anhydrous) 30 g\n"
            "sodium metabisulfite 12 g\nacetic acid (glacial) 10 ml soft, " +
            hard +
            " ml hard\nwater to make 1 l\n"
            "process Weir\naccept acid on sulfite because \"under extraction\"\nStint 1 min\nFinch 3 min\n");
        return std::ranges::any_of(darkroom.workspace().diagnostics(),
                                   [](const auto& it) { return it.kind == Kind::nothing_to_accept; });
    };
    CHECK(is_idle("10"));
    CHECK(!is_idle("28"));
}

TEST_CASE("of a meeting with one form, another form of the chemical is none") {
    Darkroom darkroom;
    const std::string own =
        "meeting crystals in acid\nharmful \"it spits\"\none of sodium carbonate (decahydrate), at least 1 g/l\n"
        "one of citric acid, at least 1 g/l\n";
    const auto found = [&](const std::string& soda) {
        return darkroom.found(own + "recipe Knot\nwater 900 ml\ncitric acid (anhydrous) 5 g\n" + soda + "\n",
                              "crystals in acid");
    };
    CHECK(found("sodium carbonate (decahydrate) 20 g") == Kind::harmful_meeting);
    CHECK_FALSE(found("sodium carbonate (anhydrous) 20 g"));
}

TEST_CASE("a meeting of the user's own, and one that takes the place of the library's") {
    Darkroom darkroom;
    const std::string own =
        "meeting alkali on ammonium\nharmful \"ammonia, a gas\"\none of NH4+, at least 10 mmol/l\nabove pH 10\n";
    const std::string lines = "recipe Knot\nwater 900 ml\nammonium chloride 10 g\n";
    CHECK(darkroom.found(own + lines + "sodium hydroxide 20 g\n", "alkali on ammonium") == Kind::harmful_meeting);
    CHECK_FALSE(darkroom.found(own + lines + "sodium bicarbonate 5 g\n", "alkali on ammonium"));
    const std::string milder = "meeting acid on sulfide\nharmful \"a smell\"\none of S-2\nbelow pH 9\n";
    CHECK(darkroom.found(
              milder + "recipe Knot\nwater 900 ml\nsodium sulfide (nonahydrate) 20 g\ncitric acid (anhydrous) 40 g\n",
              "acid on sulfide") == Kind::harmful_meeting);
}

TEST_CASE("what is accepted is no fault, and is in the model with its reason") {
    Darkroom darkroom;
    const std::string lines =
        "water 900 ml\nsodium sulfide (nonahydrate) 20 g\ncitric acid (anhydrous) 40 g\nwater to make 1 l\n";
    const std::string accept = "accept acid on sulfide because \"it is done outdoors\"\n";
    const auto accepted = [&] { return darkroom.workspace().model().accepted; };
    for (const auto& text : {"recipe Knot\n" + accept + lines, "recipe Knot\n" + accept + "part A\n" + lines,
                             "recipe Knot\npart A\n" + accept + lines}) {
        darkroom.check(text);
        CHECK_MESSAGE(darkroom.workspace().diagnostics().empty(), described(darkroom.workspace()));
        REQUIRE(accepted().size() == 1);
        CHECK(accepted().front().reason == "it is done outdoors");
        CHECK(holds(accepted().front().what, "citric acid"));
    }
    darkroom.check(stop + toner + "process brown prints\n" + accept + "Sloe 30 s\nMedlar 2 min\n");
    CHECK_MESSAGE(!diagnostics::any_error(darkroom.workspace().diagnostics()), described(darkroom.workspace()));
    REQUIRE(accepted().size() == 1);
    CHECK(accepted().front().process == 0);
}
