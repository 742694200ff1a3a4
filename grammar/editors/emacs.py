# SPDX-License-Identifier: MIT
"""The major mode for Emacs."""
import peg


class Emacs(peg.Dialect):
    gap, blanks, edge, either, opened, closed = "[ \t]+", "[ \t]*", "", "\\|", "\\(?:", "\\)"

    def literal(self, text):
        return self.gap.join("".join("\\" + c if c in "\\.*+?[]^$" else c for c in word) for word in text.split(" "))


def lisp(text):
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\t", "\\t") + '"'


def words(those):
    return "\\|".join(Emacs().literal(word) for word in sorted(those, key=len, reverse=True))


def rule(pattern, *faces):
    return "    (" + lisp(pattern) + " " + " ".join(f"({group} {face})" for group, face in faces) + ")\n"


def mode():
    end = "\\(?:[ \t,)#]\\|$\\)"
    number = "[-+−]?\\(?:[½¼¾⅓⅔⅛⅜⅝⅞]\\|[0-9]+\\(?:[½¼¾⅓⅔⅛⅜⅝⅞]\\|\\.[0-9]+\\|[/⁄][0-9]+\\|[ \t]+[0-9]+[/⁄][0-9]+\\)?\\)"
    rules = rule(f"^\\({words(peg.block_words())}\\)\\(?:[ \t]+\\([^#\n]*\\)\\)?{end}",
                 (1, "font-lock-keyword-face"), ("2", "font-lock-type-face nil t"))
    rules += rule(f"^[ \t]+\\({words(peg.fact_words())}\\){end}", (1, "font-lock-builtin-face"))
    rules += rule(f"^[ \t]+\\({words(peg.step_words())}\\){end}", (1, "font-lock-function-name-face"))
    rules += rule(f"\\(?:^\\|[ \t(]\\)\\({number}\\)[ \t]*\\({peg.units(Emacs())}\\){end}",
                  (1, "font-lock-constant-face"), (2, "font-lock-type-face"))
    rules += rule("(\\([^()\n]*\\))", (1, "font-lock-variable-name-face"))
    rules += rule(f"[ \t]\\({words(peg.other_words())}\\|{words(peg.weekdays())}\\){end}", (1, "font-lock-preprocessor-face"))
    return f""";;; scruple-mode.el --- Recipe text of Scruple  -*- lexical-binding: t; -*-
;; SPDX-License-Identifier: MIT
;; Package-Requires: ((emacs "26.1"))

;;; Commentary:
;; Colours, comments, and the language server by way of Eglot.
;; Made from grammar/scruple.peg by grammar/editors/generate.py.

;;; Code:

(defvar scruple-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?\\n ">" table)
    (modify-syntax-entry ?\\" "\\"" table)
    table))

(defvar scruple-mode-font-lock-keywords
  (quote (
{rules}  )))

;;;###autoload
(define-derived-mode scruple-mode text-mode "Scruple"
  "Recipes for photographic solutions."
  (setq-local comment-start "# ")
  (setq-local comment-start-skip "#+ *")
  (setq-local indent-tabs-mode nil)
  (setq-local tab-width 4)
  (setq-local font-lock-defaults (list scruple-mode-font-lock-keywords)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\\\.scruple\\\\'" . scruple-mode))

(with-eval-after-load 'eglot
  (defvar eglot-server-programs)
  (add-to-list 'eglot-server-programs '(scruple-mode . ("scruple" "language-server"))))

(provide 'scruple-mode)
;;; scruple-mode.el ends here
"""
