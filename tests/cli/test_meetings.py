# SPDX-License-Identifier: MIT
"""What must not meet: nothing is printed for the bench; accepted, it stands on the card."""
import json

import jsonschema
from support import FAULTS, ROOT, Workspace

CHOUGH = """\
recipe Chough
    is a       toner
    water                               900 ml at 20 C
    sodium sulfide (nonahydrate)        20 g
    stir until clear
    citric acid (monohydrate)           30 g
    water to make                       1 l
"""
ACCEPT = '    accept     acid on sulfide because "it is mixed outdoors, from a distance"\n'
ACCEPTED = CHOUGH.replace("    is a       toner\n", "    is a       toner\n" + ACCEPT)
REASON = "it is mixed outdoors, from a distance"

BATHS = """\
recipe Fieldfare
    water                               800 ml at 20 C
    potassium permanganate              40 g
    water to make                       1 l

recipe Redwing
    water                               900 ml at 20 C
    sodium sulfite (anhydrous)          50 g
    water to make                       1 l

process reversal
    Fieldfare   3 min
    Redwing     2 min
"""


class Meetings(Workspace):
    def test_what_can_kill_keeps_the_card_from_being_printed(self):
        self.put("a.scruple", CHOUGH)
        told = self.json("check", status=FAULTS)
        self.assertEqual([("lethal-meeting", "error")], [(it["kind"], it["severity"]) for it in told])
        self.refused("card", "Chough", status=FAULTS)

    def test_accepted_it_is_printed_with_the_reason_and_the_cautions(self):
        self.put("a.scruple", ACCEPTED)
        for form in ("text", "html"):
            with self.subTest(form):
                card = " ".join(self.scruple("card", "Chough", "--as", form).split())
                for words in ("acid on sulfide", REASON, "LETHAL", "H2S gas",
                              "check the safety data sheet, and local rules", "Outdoors or under extraction"):
                    self.assertIn(words, card)

    def test_the_label_says_what_may_meet(self):
        self.put("a.scruple", ACCEPTED)
        (label,) = self.json("labels", "Chough")["labels"]
        self.assertEqual(["acid on sulfide"], [it["meeting"] for it in label["accepted"]])
        schema = json.loads((ROOT / "docs/schemas/labels.json").read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator(schema).validate({"kind": "labels", "labels": [label], "reminder": "x"})
        for form in ("text", "html"):
            said = " ".join(self.scruple("labels", "Chough", "--as", form).split())
            self.assertIn("LETHAL if they meet: acid on sulfide. Read the card.", said)

    def test_the_json_of_the_card_has_it_and_holds_to_its_schema(self):
        self.put("a.scruple", ACCEPTED)
        card = self.json("card", "Chough")
        schema = json.loads((ROOT / "docs/schemas/card.json").read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator(schema).validate(card)
        (accepted,) = card["accepted"]
        self.assertEqual(("acid on sulfide", True, "Chough", REASON),
                         tuple(accepted[key] for key in ("meeting", "lethal", "where", "reason")))

    def test_it_stands_on_the_card_of_what_is_made_of_it_too(self):
        self.put("a.scruple", ACCEPTED + "\nworking\n    dilute stock 1+3\n")
        for words in (["Chough", "stock"], ["Chough", "working"]):
            self.assertEqual(1, len(self.json("card", *words)["accepted"]))

    def test_scaled_and_tidied_text_keep_the_line(self):
        self.put("a.scruple", ACCEPTED)
        self.assertIn(ACCEPT, self.scruple("scaled", "Chough", "--make", "2l"))
        self.put("a.scruple", ACCEPTED.replace("accept     acid", "accept acid  "))
        self.scruple("tidy")
        self.assertIn(ACCEPT, (self.folder / "a.scruple").read_text(encoding="utf-8"))

    def test_what_a_process_carries_over_is_told_on_the_cards_of_both_baths(self):
        self.put("a.scruple", BATHS)
        for bath in ("Fieldfare", "Redwing"):
            self.assertEqual(["harmful-carry-over"], [it["kind"] for it in self.json("card", bath)["warnings"]])
        self.put("a.scruple", BATHS + '    accept oxidiser with what burns because "both are thin"\n')
        for bath in ("Fieldfare", "Redwing"):
            card = self.json("card", bath)
            self.assertEqual([], card["warnings"])
            self.assertEqual(["from Fieldfare into Redwing, in reversal"], [it["where"] for it in card["accepted"]])

    def test_nothing_is_called_safe(self):
        self.put("a.scruple", ACCEPTED)
        for form in ("text", "html", "json"):
            card = self.scruple("card", "Chough", "--as", form).lower()
            self.assertNotIn("harmless", card)
            self.assertNotIn(" safe ", card)
