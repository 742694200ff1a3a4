# SPDX-License-Identifier: MIT
"""Each limit of docs/limits.md, at the limit and one past it; past it a message says what to do."""
import os
import re
import unittest

from lsp import Client
from support import FAULTS, FINE, ROOT, TERN, TROUBLE, WRONG_CALL, Workspace

MiB = 1 << 20
WATER = "    water   500 ml\n"
END = "    water to make   1 l\n"


class Page(unittest.TestCase):
    def test_the_page_names_each_limit_that_is_tried(self):
        page = (ROOT / "docs/limits.md").read_text(encoding="utf-8")
        for words in ("16 MiB", "4096 characters", "100 000, whatever", "128 MiB, and 4 000 000 lines", "eighteen digits", "1000 bytes, 16 brackets",
                      "100 000 atoms", "64 MiB", "ten years", "100 000 minutes", "1000 steps", "| 24 |", "--vessels", "240 characters",
                      "2953 bytes", "ways by which", "32 767 dots", "25 to 1000 mm"):
            self.assertIn(words, page)


class Limits(Workspace):
    def kinds(self, text, name="a.scruple"):
        self.put(name, text)
        done = self.run_scruple("check", "--as", "json")
        self.assertIn(done.returncode, (FINE, FAULTS), done.stderr)
        return re.findall(r'"kind": "([a-z-]+)"', done.stdout.decode())

    def assert_limit(self, kind, at_it, past_it):
        """The text of a file at a limit has no message, and one past it only this."""
        self.assertEqual(self.kinds(at_it), [])
        self.assertEqual(self.kinds(past_it), [kind])


class Read(Limits):
    def test_bytes_of_a_file(self):
        line = "# " + "x" * 4000 + "\n"
        text = TERN + line * ((16 * MiB - len(TERN)) // len(line))
        text += "#" * (16 * MiB - len(text) - 1) + "\n"
        self.assertEqual(len(text), 16 * MiB)
        self.assert_limit("text-too-large", text, text + "\n")

    def test_lines_of_a_file(self):
        # In characters: the sign has two bytes.
        at_it = 'note   "' + "é" * (4096 - len('note   "') - 1) + '"'
        self.assertEqual(len(at_it), 4096)
        text = TERN.replace("    water", "    LINE\n    water", 1)
        self.assert_limit("line-too-long", text.replace("LINE", at_it), text.replace("LINE", at_it.replace("é", "éé", 1)))

    def test_files_and_folders_of_a_workspace(self):
        self.put("tern.scruple", TERN)
        for i in range(100):
            os.mkdir(self.folder / f"{i}")
        for n in range(100_000 - 101):
            if n % 50_000 == 0:  # a file may not have so many names
                first = self.put(f"{n // 50_000}/first", "")
            else:
                os.link(first, f"{self.folder}/{n // 1000}/{n}")
        self.assertIn("1 recipe in 1 file", self.scruple("check"))
        self.put("one", "")
        self.assertIn("more than 100000 files and folders in it; name the one folder that is meant with `--in`",
                      self.refused("check", status=TROUBLE))

    def test_lines_of_a_workspace(self):
        for end in ("\n", "\r"):
            self.put("a.scruple", TERN.replace("\n", end))
            rest = 4_000_000 - TERN.count("\n")
            self.put("b.scruple", ("#" + end) * rest)
            self.scruple("check")
            self.put("b.scruple", ("#" + end) * (rest + 1))
            self.assertIn("more than 4000000 lines in its recipe files; name the one folder", self.refused("check", status=TROUBLE))

    def test_bytes_of_a_workspace(self):
        line = "#" * 4095 + "\n"
        first = self.put("0.scruple", line * (16 * MiB // len(line)))
        for i in range(1, 8):
            os.link(first, self.folder / f"{i}.scruple")
        self.scruple("check")
        self.put("8.scruple", "\n")
        self.assertIn("more than 134217728 bytes of recipe files; name the one folder", self.refused("check", status=TROUBLE))

    def test_digits_of_a_number(self):
        def with_amount(amount):
            return f"supplier Quay\n    metol   {amount} g   1.00 EUR\n"
        self.assert_limit("unclear-number", with_amount("9" * 18), with_amount("9" * 20))
        self.assert_limit("unclear-number", with_amount("0." + "1" * 9), with_amount("0." + "1" * 11))

    def test_brackets_atoms_and_bytes_of_a_formula(self):
        def salt(formula):
            return f"chemical salt\n    form crystals {formula}\n"
        self.assert_limit("formula-unreadable", salt("(" * 16 + "H" + ")" * 16), salt("(" * 17 + "H" + ")" * 17))
        self.assert_limit("formula-unreadable", salt("C100000"), salt("C100001"))
        self.assert_limit("formula-unreadable", salt("H" * 1000), salt("H" * 1001))

    def test_days(self):
        def log(day):
            return TERN + f"log\n    {day} received   sodium sulfite (anhydrous) 5 g\n"
        for day in ("0000-01-01", "9999-12-31"):
            self.assertEqual(self.kinds(log(day)), [], day)
        self.assertEqual(self.kinds(log("9999-12-32")), ["no-such-day"])
        self.assertNotEqual(self.kinds(log("10000-01-01")), [])

    def test_bytes_of_an_amount_in_a_call(self):
        self.put("a.scruple", TERN)
        amount = "1" + " " * 997 + "l"
        self.assertEqual(len(amount), 999)
        self.scruple("card", "Tern", "--make", amount)
        self.assertIn("`--make` takes", self.refused("card", "Tern", "--make", amount.replace("1", "1  ")))

    def test_bytes_of_a_message_of_an_editor(self):
        for more in (0, 1):
            client = Client(self.folder)
            self.addCleanup(client.kill)
            head, tail = b'{"jsonrpc": "2.0", "id": 77, "method": "no/such", "params": ["', b'"]}'
            body = head + b"x" * (64 * MiB - len(head) - len(tail)) + tail + b" " * more
            try:
                client.raw(b"Content-Length: %d\r\n\r\n" % len(body) + body)
            except BrokenPipeError:
                self.assertEqual(more, 1)
            if more:
                self.assertEqual(client.server.wait(timeout=60), 1)
            else:
                self.assertEqual(client.response(77)["error"]["code"], -32601)


class WorkedOut(Limits):
    def plan(self, lines, process="Tern 5 min"):
        return TERN.replace("water                          700", "capacity 10 films 135 per 1 l\n    water                          700") + \
            f"process p\n    {process}\nplan Month\n{lines}"

    def test_years_of_a_line_with_each(self):
        line = "    each Thursday from 2026-01-01 to {}   1 film 135 through p\n"
        self.assert_limit("plan-too-long", self.plan(line.format("2036-01-02")), self.plan(line.format("2036-01-03")))

    def test_minutes_and_steps_of_an_evening(self):
        def evening(step):
            self.put("a.scruple", self.plan("    2026-12-01   1 film 135 through p\n").replace("stir until clear", step))
            return self.run_scruple("evening", "2026-12-01")
        self.assertEqual(evening("wait 100000 min").returncode, FINE)
        done = evening("wait 100001 min")
        self.assertEqual(done.returncode, WRONG_CALL)
        self.assertIn(b"Tern: step 3 of its card takes more than 100000 minutes", done.stderr)
        self.assertIn(b"mix it by its card", done.stderr)
        steps = evening("wait 20 min, stirring every 2 min").stdout.count(b"stir again")
        self.assertEqual(steps, 9)
        self.assertEqual(evening("wait 1900 min, stirring every 2 min").returncode, FINE)
        done = evening("wait 2000 min, stirring every 2 min")
        self.assertEqual(done.returncode, WRONG_CALL)
        self.assertIn(b"more than 1000 steps, and no more are laid out; have it stirred less often", done.stderr)

    def test_a_pace_of_the_bench_longer_than_an_evening(self):
        self.put("a.scruple", self.plan("    2026-12-01   1 film 135 through p\n") + "bench Shed\n    balance 0.1 g up to 500 g\n    pace 100001 min to weigh\n")
        self.assertIn("takes more than 100000 minutes", self.refused("evening", "2026-12-01"))

    def test_a_last_day_of_use(self):
        for keeps in ("2 weeks", "90000 months", "999999999999 years", "999999999999999 days", "999999999999999999 h"):
            self.put("a.scruple", TERN.replace("    water                          700", f"    keeps {keeps}\n    water                          700"))
            label = self.json("labels", "Tern", "--mixed", "9999-12-30")["labels"][0]
            self.assertIn("9999-12-31", str(label["keeps"]), keeps)

    def test_substances_of_a_reaction(self):
        elements = ["H2", "O2", "N2", "F2", "Cl2", "Br2", "I2", "S", "P", "C", "Na", "K", "Li", "Ca", "Mg", "Al", "Zn", "Fe", "Cu", "Ag", "Au", "Hg", "Pb"]
        for count, said in ((23, "balance"), (24, "24 substances")):
            names = elements[:22] + (["Sn"] if count == 24 else [])
            done = self.run_scruple("react", " + ".join(names) + " -> " + " + ".join(names[:1]))
            self.assertEqual(done.returncode, WRONG_CALL, said)

    def test_vessels(self):
        self.put("a.scruple", self.plan("    2026-12-01   1 film 135 through p\n"))
        self.scruple("evening", "2026-12-01", "--vessels", "1000")
        self.assertIn("`--vessels 1001` is no number of vessels", self.refused("evening", "2026-12-01", "--vessels", "1001"))


class Printed(Limits):
    def test_messages_as_text(self):
        for count, said in ((100, False), (101, True)):
            self.put("a.scruple", "recipe Gull\n" + "".join(f"    unheard {i}   5 g\n" for i in range(count)) + END)
            done = self.run_scruple("check")
            out = done.stdout.decode()
            self.assertEqual(out.count("[unknown-name]"), 100)
            self.assertEqual("100 of 101" in out, said)

    def test_a_name_within_a_message(self):
        for length, whole in ((240, True), (241, False)):
            name = "x" * length
            self.put("a.scruple", f"recipe Gull\n    {name}   5 g\n{END}")
            (fault,) = self.json("check", status=FAULTS)
            self.assertEqual((f"`{name}`" in fault["message"], "…" in fault["message"]), (whole, not whole))

    def test_labels_and_their_sizes(self):
        self.put("a.scruple", TERN)
        self.assertEqual(len(self.json("labels", "Tern", "--bottles", "1000x1ml")["labels"]), 1000)
        self.assertIn("`--bottles` takes", self.refused("labels", "Tern", "--bottles", "1001x1ml"))
        for size, fine in (("25x200", True), ("24.9x200", False), ("210x1001", False)):
            done = self.run_scruple("labels", "Tern", "--label", size, "--as", "pdf")
            self.assertEqual("`--label` takes" in done.stderr.decode(), not fine, size)
        self.assertIn("`--grid` takes", self.refused("labels", "Tern", "--grid", "51x1", "--as", "pdf"))

    def test_the_code_on_a_label(self):
        self.put("a.scruple", TERN)
        rest = len("Tern\nbatch \nrecipe sha256 ") + 64
        whole = self.run_scruple("labels", "Tern", "--batch", "x" * (2953 - rest), "--as", "pdf", "--label", "200x280")
        self.assertNotIn(b"too long for the code", whole.stderr)
        message = self.refused("labels", "Tern", "--batch", "x" * (2954 - rest), "--as", "pdf", "--label", "200x280", status=TROUBLE)
        self.assertIn("too long for the code", message)

    def test_ways_by_which_a_solution_is_in_another(self):
        """Each is in the next by two lines, and so by 2 to the power of their number in the last."""
        for steps, ways, more in ((1, 2, False), (6, 64, False), (7, 100, True), (40, 100, True)):
            text = "recipe Weir 0\n" + WATER + "    metol   5 g\n" + END
            text += "".join(f"recipe Weir {i}\n    Weir {i - 1}   300 ml\n{WATER}    Weir {i - 1}   200 ml\n" for i in range(1, steps + 1))
            self.put("a.scruple", text)
            out = self.scruple("why", f"Weir {steps}", "metol")
            self.assertEqual((out.count("by way of Weir 0"), "by more ways than these" in out), (ways, more), steps)

    def test_how_thin_a_solution_in_a_solution_is(self):
        """A quarter goes on each time: 4**-44 is more than one part in 10**27, 4**-45 is less. The 5 g, 0.03 mol and so 2e22
        molecules, have come to less than one long before."""
        text = "recipe Link 0\n" + WATER + "    metol   5 g\n" + END
        text += "".join(f"recipe Link {i}\n    Link {i - 1}   250 ml\n{END}" for i in range(1, 2000))
        self.put("a.scruple", text)
        self.assertIn("by way of Link 0", self.scruple("why", "Link 44", "metol"))
        for link in (45, 1999):
            self.assertIn("less than a molecule of it", self.refused("why", f"Link {link}", "metol"))
        for command, *more in (("card",), ("contents",), ("labels",), ("scaled", "--make", "5l")):
            self.scruple(command, "Link 1999", *more)

    def test_sheets_of_a_png(self):
        def sheets(lines):
            self.put("a.scruple", "recipe Gull\n" + WATER + '    do "shake"\n' * lines + END)
            return len(re.findall(rb"/Type /Page\b", self.run_scruple("card", "Gull", "--as", "pdf").stdout))
        fewest, most = 100, 1000
        while most - fewest > 1:
            middle = (fewest + most) // 2
            fewest, most = (middle, most) if sheets(middle) <= 18 else (fewest, middle)
        self.assertEqual(sheets(most), 19)
        message = self.refused("card", "Gull", "--as", "png", status=TROUBLE)
        self.assertIn("19 sheets below one another are too high for a PNG", message)
        self.assertIn("`--as pdf` has no such limit", message)
        self.assertEqual(sheets(fewest), 18)
        self.assertEqual(self.run_scruple("card", "Gull", "--as", "png").returncode, FINE)


class NoLimit(Limits):
    def test_solutions_of_solutions(self):
        for count, diluted in ((20_000, ""), (40, END)):
            text = "recipe Link A0\n" + WATER + "    metol   5 g\n" + END
            text += "".join(f"recipe Link A{i}\n    Link A{i - 1}   250 ml\n{diluted}" for i in range(1, count))
            self.put("a.scruple", text)
            self.scruple("check")
            for command, *more in (("card",), ("contents",), ("why", "metol"), ("labels",), ("scaled", "--make", "5l")):
                self.scruple(command, f"Link A{count - 1}", *more)
