# SPDX-License-Identifier: MIT
"""What `check` gives to forges and build servers, over every case file, held to the schemas.

SARIF 2.1.0: the schema of the OASIS committee (2.1.0-rtm.5, JSON Schema draft-07) as the npm package
@microsoft/jest-sarif carries it, put into build/node by tests/run.sh; left out where it is not there. JUnit XML:
tests/reference/junit.rng, by xmllint.
"""
import json
import re
import subprocess
import unittest
import xml.etree.ElementTree as xml

import jsonschema
from support import FAULTS, FINE, ROOT, TERN, Workspace

SCHEMA = ROOT / "build/node/node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json"
CASES = sorted((ROOT / "tests/cases/check").glob("*.scruple"))
OUNCES = TERN.replace("30 g", "30 oz")


class Forges(Workspace):
    def put_cases(self):
        for case in CASES:
            self.put(case.name, case.read_bytes())

    def report(self, form, status=FAULTS):
        return self.scruple("check", "--as", form, status=status)

    @unittest.skipUnless(SCHEMA.is_file(), "the schema is not there")
    def test_sarif_is_as_its_schema_says(self):
        schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
        validator = jsonschema.Draft7Validator(schema)
        self.put_cases()
        log = json.loads(self.report("sarif"))
        self.assertEqual([error.message for error in validator.iter_errors(log)], [])
        self.assertGreater(len(log["runs"][0]["results"]), 300)
        log["runs"][0]["results"][0]["level"] = "advice"
        self.assertFalse(validator.is_valid(log), "the schema can refuse")

    def test_sarif_says_what_the_messages_say(self):
        self.put_cases()
        run = json.loads(self.report("sarif"))["runs"][0]
        messages = json.loads(self.report("json"))
        self.assertEqual(len(run["results"]), len(messages))
        rules = [rule["id"] for rule in run["tool"]["driver"]["rules"]]
        for result, message in zip(run["results"], messages):
            self.assertEqual(result["ruleId"], message["kind"])
            self.assertEqual(rules[result["ruleIndex"]], message["kind"])
            self.assertTrue(result["message"]["text"].startswith(message["message"]))
            region = result["locations"][0]["physicalLocation"]["region"]
            self.assertEqual((region["startLine"], region["startColumn"]), (message["line"], message["column"]))

    def test_sarif_fixes_are_edits(self):
        self.put("a.scruple", OUNCES)
        result = json.loads(self.report("sarif"))["runs"][0]["results"][0]
        edits = [fix["artifactChanges"][0]["replacements"][0] for fix in result["fixes"]]
        self.assertEqual([edit["insertedContent"]["text"] for edit in edits], ["oz av", "oz ap", "fl oz us", "fl oz uk"])
        region = edits[0]["deletedRegion"]
        line = OUNCES.splitlines()[region["startLine"] - 1]
        self.assertEqual(line[region["startColumn"] - 1:region["endColumn"] - 1], "oz")

    def test_paths_are_uris(self):
        self.put("Färöer/a b%c.scruple", OUNCES)
        result = json.loads(self.report("sarif"))["runs"][0]["results"][0]
        uri = result["locations"][0]["physicalLocation"]["artifactLocation"]["uri"]
        self.assertEqual(uri, "F%C3%A4r%C3%B6er/a%20b%25c.scruple")

    def test_junit_is_as_its_schema_says(self):
        self.put_cases()
        self.put("b & <c> \"d\".scruple", TERN)
        self.put("control.scruple", TERN + "    note \x01\x1b\n")
        report = self.put("report.xml", self.report("junit"))
        done = subprocess.run(["xmllint", "--noout", "--relaxng", str(ROOT / "tests/reference/junit.rng"), str(report)],
                              capture_output=True, check=False)
        self.assertEqual(done.returncode, 0, done.stderr.decode()[:2000])
        suites = xml.parse(report).getroot()
        errors = sum(message["severity"] == "error" for message in json.loads(self.report("json")))
        self.assertEqual(len(suites.findall(".//failure")), errors)
        self.assertEqual(int(suites.get("tests")), len(CASES) + 2)
        self.assertEqual(int(suites.get("failures")),
                         sum(case.find("failure") is not None for case in suites.iter("testcase")))

    def test_junit_of_what_is_well(self):
        self.put("a.scruple", TERN)
        report = self.report("junit", status=FINE)
        self.assertIn('tests="1" failures="0"', report)
        self.assertIsNone(re.search("<failure", report))
