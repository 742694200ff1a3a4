# SPDX-License-Identifier: MIT
"""The cheapest packs of whole lists, against GLPK, which solves the same as a mixed-integer program. Prices are invented."""
import random
import re
import subprocess

from support import Workspace

POSTAGE, SIZES = 5.90, {"50 g": (50, 100, 300), "100 g": (100, 200, 500), "1 kg": (1000, 1500, 3000)}


class Packs(Workspace):
    def offers_of(self, seed, wants, shops):
        """(price in cents, grams) of each pack by want, shop and size; and what is needed of each, in grams."""
        one_of = random.Random(seed)
        needed = [one_of.randint(1, 90) for _ in range(wants)]
        sold = {(want, shop, size): (one_of.randint(low, high), grams) for shop in range(shops) for want in range(wants)
                for size, (grams, low, high) in SIZES.items() if one_of.random() < 0.8 or shop == 0}
        return needed, sold

    def list_of(self, needed, sold, shops, free):
        chemicals = [f"chemical reed salt {i}\n    form      dry    NaCl\n" for i in range(len(needed))]
        lines = [f"    reed salt {i} (dry)   {grams} g" for i, grams in enumerate(needed)]
        self.put("all.scruple", "\n".join([
            *chemicals, "recipe Reed\n    is a   film developer\n    capacity   one-shot, 1 l per film 135", "    water   800 ml", *lines,
            "    water to make   1 l\n", "process p\n    Reed   10 min at 20 C\n", "plan Winter\n    2027-01-01   1 film 135 through p\n",
            *(f"supplier Kiln {shop}\n    postage   {POSTAGE:.2f} EUR, none over {free} EUR\n" + "".join(
                f"    reed salt {want}   {size}   {cents / 100:.2f} EUR\n" for (want, its, size), (cents, _) in sold.items() if its == shop)
              for shop in range(shops))]))
        return self.json("shopping", "Winter")

    def least_by_glpk(self, needed, sold, shops, free):
        packs = {key: f"x{i}" for i, key in enumerate(sold)}
        goods = [" ".join(f"+ {cents / 100:.2f} {packs[key]}" for key, (cents, _) in sold.items() if key[1] == shop) for shop in range(shops)]
        program = ["Minimize", f"cost: {' '.join(goods)} {' '.join(f'+ {POSTAGE} paid{shop}' for shop in range(shops))}", "Subject To"]
        for want, grams in enumerate(needed):
            program.append(" ".join(f"+ {holds} {packs[key]}" for key, (_, holds) in sold.items() if key[0] == want) + f" >= {grams}")
        for shop in range(shops):
            program.append(f"{goods[shop]} - {free} free{shop} >= 0")
            program.append(" ".join(f"+ {packs[key]}" for key in sold if key[1] == shop) + f" - 1000 free{shop} - 1000 paid{shop} <= 0")
        program += ["Generals", " ".join(packs.values()), "Binaries", " ".join(f"free{shop} paid{shop}" for shop in range(shops)), "End"]
        self.put("packs.lp", "\n".join(program))
        answer = self.folder / "answer.txt"
        subprocess.run(["glpsol", "--lp", self.folder / "packs.lp", "--cuts", "--output", answer], check=True, capture_output=True, timeout=300)
        text = answer.read_text()
        self.assertIn("INTEGER OPTIMAL", text)
        return float(re.search(r"Objective: +cost = ([\d.]+)", text).group(1))

    def test_none_is_cheaper(self):
        for seed, wants, shops, free in ((1, 6, 2, 20), (2, 6, 3, 25), (3, 8, 2, 30), (4, 8, 3, 30), (5, 8, 4, 30), (6, 10, 2, 30), (7, 12, 2, 30),
                                         (8, 12, 3, 40), (9, 10, 4, 20), (10, 14, 2, 40), (11, 10, 3, 30)):
            with self.subTest(seed=seed):
                needed, sold = self.offers_of(seed, wants, shops)
                found = self.list_of(needed, sold, shops, free)
                self.assertEqual(found["warnings"], [])
                (total,) = found["totals"]
                self.assertAlmostEqual(total["value"], self.least_by_glpk(needed, sold, shops, free), places=4)
                for need in found["chemicals"]:
                    self.assertGreaterEqual(need["buy"]["next_best"]["more"]["value"], 0)
