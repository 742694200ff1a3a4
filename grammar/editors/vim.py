# SPDX-License-Identifier: MIT
"""The syntax file for Vim and Neovim."""
import peg


class Vim(peg.Dialect):
    """`very magic`, between single quotes."""
    gap, blanks, edge, opened = r"[ \t]+", r"[ \t]*", r"%([ \t,)#]|$)@=", "%("

    def literal(self, text):
        return self.gap.join("".join(c if c.isalnum() or ord(c) > 127 else "\\" + c for c in word) for word in text.split(" "))


def words(those):
    return "|".join(Vim().literal(word) for word in sorted(those, key=len, reverse=True))


def match(group, pattern, more=""):
    return f"syntax match {group} '\\v{pattern}'{' ' + more if more else ''}\n"


def syntax():
    number = r"[-+−]?%([½¼¾⅓⅔⅛⅜⅝⅞]|\d+%([½¼¾⅓⅔⅛⅜⅝⅞]|\.\d+|[/⁄]\d+|[ \t]+\d+[/⁄]\d+)?)"
    before = r"[0-9A-Za-z_.,/:]@1<!"
    text = ('" SPDX-License-Identifier: MIT\n" Recipe text of Scruple. Made from grammar/scruple.peg by grammar/editors/generate.py.\n'
            "if exists('b:current_syntax')\n  finish\nendif\nlet s:cpo_save = &cpo\nset cpo&vim\nsyntax case match\n\n")
    text += match("scrupleHeading", rf"^%({words(peg.block_words())})%([ \t].*)?$", "contains=scrupleBlock,scrupleString,scrupleComment")
    text += match("scrupleBlock", rf"^%({words(peg.block_words())})>", "contained")
    text += match("scrupleFact", rf"^[ \t]+\zs%({words(peg.fact_words())})%([ \t#]|$)@=")
    text += match("scrupleStep", rf"^[ \t]+\zs%({words(peg.step_words())})%([ \t#]|$)@=")
    text += match("scrupleJoining", rf"[ \t]@1<=%({words(peg.other_words())}|{words(peg.weekdays())})%([ \t,#]|$)@=")
    text += match("scrupleNumber", rf"{before}{number}%([0-9A-Za-z_.])@!")
    text += match("scrupleUnit", rf"%({peg.units(Vim())})", "contained")
    text += match("scrupleNumber", rf"{before}{number}%([ \t]*%({peg.units(Vim())}))@=", "nextgroup=scrupleUnit skipwhite")
    text += match("scrupleDate", rf"{before}\d\d\d\d-\d\d-\d\d%([ \t,)#]|$)@=")
    text += match("scrupleForm", r"\([^()]*\)", "contains=scrupleNumber,scrupleUnit")
    text += match("scrupleString", r'"[^"]*"')
    text += match("scrupleComment", r"%(^|[ \t]@1<=)#.*$", "contains=@Spell")
    text += "\n"
    for group, link in [("Heading", "Title"), ("Block", "Structure"), ("Fact", "Keyword"), ("Step", "Statement"),
                        ("Joining", "Operator"), ("Number", "Number"), ("Unit", "Type"), ("Date", "Constant"),
                        ("Form", "Identifier"), ("String", "String"), ("Comment", "Comment")]:
        text += f"highlight default link scruple{group} {link}\n"
    return text + "\nlet b:current_syntax = 'scruple'\nlet &cpo = s:cpo_save\nunlet s:cpo_save\n"
