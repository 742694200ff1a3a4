;;; scruple-mode.el --- Recipe text of Scruple  -*- lexical-binding: t; -*-
;; SPDX-License-Identifier: MIT
;; Package-Requires: ((emacs "26.1"))

;;; Commentary:
;; Colours, comments, and the language server by way of Eglot.
;; Made from grammar/scruple.peg by grammar/editors/generate.py.

;;; Code:

(defvar scruple-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?\" "\"" table)
    table))

(defvar scruple-mode-font-lock-keywords
  (quote (
    ("^\\(conversion[ \t]+of\\|replenisher\\|chemical\\|supplier\\|process\\|meeting\\|printed\\|working\\|recipe\\|format\\|bench\\|plan\\|part\\|bath\\|log\\)\\(?:[ \t]+\\([^#
]*\\)\\)?\\(?:[ \t,)#]\\|$\\)" (1 font-lock-keyword-face) (2 font-lock-type-face nil t))
    ("^[ \t]+\\(warmer[ \t]+than\\|use[ \t]+within\\|replenish\\|dissolves\\|bystander\\|strength\\|capacity\\|variants\\|takes[ \t]+up\\|in[ \t]+water\\|reaction\\|graduate\\|in[ \t]+doubt\\|below[ \t]+pH\\|above[ \t]+pH\\|caution\\|acts[ \t]+as\\|density\\|escapes\\|salt[ \t]+of\\|balance\\|syringe\\|dropper\\|postage\\|harmful\\|assumed\\|reading\\|source\\|dilute\\|expect\\|hazard\\|excess\\|vessel\\|bottle\\|one[ \t]+of\\|lethal\\|accept\\|keeps\\|grade\\|note\\|also\\|form\\|ions\\|pair\\|area\\|pace\\|book\\|mix\\|cas\\|jug\\|is\\)\\(?:[ \t,)#]\\|$\\)" (1 font-lock-builtin-face))
    ("^[ \t]+\\(not[ \t]+above\\|set[ \t]+aside\\|pour[ \t]+in\\|filter\\|stand\\|apart\\|stir\\|wait\\|cool\\|warm\\|do\\)\\(?:[ \t,)#]\\|$\\)" (1 font-lock-function-name-face))
    ("\\(?:^\\|[ \t(]\\)\\([-+−]?\\(?:[½¼¾⅓⅔⅛⅜⅝⅞]\\|[0-9]+\\(?:[½¼¾⅓⅔⅛⅜⅝⅞]\\|\\.[0-9]+\\|[/⁄][0-9]+\\|[ \t]+[0-9]+[/⁄][0-9]+\\)?\\)\\)[ \t]*\\(\\(?:kg\\|mg\\|grains\\|grain\\|g\\|scruples\\|scruple\\)\\|\\(?:drachms\\|drachm\\|dr\\)[ \t]+ap\\|\\(?:drachms\\|drachm\\)\\|\\(?:drams\\|dram\\|dr\\)[ \t]+av\\|\\(?:ounces\\|ounce\\|oz\\|pounds\\|pound\\|lb\\)[ \t]+\\(?:av\\|ap\\)\\|\\(?:ml\\|mL\\|l\\|L\\|cc\\)\\|\\(?:fl[ \t]+oz\\|fl[ \t]+dr\\|\\(?:minims\\|minim\\|gills\\|gill\\|pints\\|pint\\|pt\\|quarts\\|quart\\|qt\\|gallons\\|gallon\\|gal\\)\\)[ \t]+\\(?:us\\|uk\\)\\|%[ \t]*\\(?:w/v\\|w/w\\|v/v\\)\\|\\(?:g/l\\|g/L\\|mg/l\\|mg/L\\|mol/l\\|mol/L\\|mmol/l\\|mmol/L\\|ppm\\)\\|\\(?:°C\\|C\\|°F\\|F\\)\\|\\(?:mol\\|mmol\\)\\|\\(?:cm²\\|cm2\\|m²\\|m2\\|sq[ \t]+in\\)\\|\\(?:g/ml\\|g/mL\\|kg/l\\|kg/L\\)\\|\\(?:drops\\|drop\\)\\|\\(?:s\\|min\\|h\\|days\\|day\\|weeks\\|week\\|months\\|month\\|years\\|year\\)\\)\\(?:[ \t,)#]\\|$\\)" (1 font-lock-constant-face) (2 font-lock-type-face))
    ("(\\([^()
]*\\))" (1 font-lock-variable-name-face))
    ("[ \t]\\(more[ \t]+than[ \t]+it[ \t]+needs\\|times[ \t]+the[ \t]+volume\\|stirring[ \t]+every\\|by[ \t]+conversion\\|carried[ \t]+over\\|give[ \t]+or[ \t]+take\\|replenished\\|a[ \t]+pinch[ \t]+now\\|saturated\\|expect[ \t]+pH\\|none[ \t]+over\\|a[ \t]+quarter\\|processed\\|discarded\\|one-shot\\|at[ \t]+least\\|the[ \t]+rest\\|stirring\\|received\\|on[ \t]+shelf\\|optional\\|to[ \t]+make\\|through\\|at[ \t]+most\\|measure\\|make[ \t]+up\\|because\\|a[ \t]+third\\|sheets\\|reused\\|longer\\|in[ \t]+air\\|slowly\\|until\\|films\\|sheet\\|up[ \t]+to\\|drops\\|weigh\\|below\\|above\\|mixed\\|about\\|from\\|film\\|with\\|half\\|used\\|each\\|per\\|now\\|for\\|atm\\|at\\|to\\|up\\|by\\|in\\|of\\|an\\|pK\\|pH\\|Wednesday\\|Thursday\\|Saturday\\|Tuesday\\|Monday\\|Friday\\|Sunday\\)\\(?:[ \t,)#]\\|$\\)" (1 font-lock-preprocessor-face))
  )))

;;;###autoload
(define-derived-mode scruple-mode text-mode "Scruple"
  "Recipes for photographic solutions."
  (setq-local comment-start "# ")
  (setq-local comment-start-skip "#+ *")
  (setq-local indent-tabs-mode nil)
  (setq-local tab-width 4)
  (setq-local font-lock-defaults (list scruple-mode-font-lock-keywords)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.scruple\\'" . scruple-mode))

(with-eval-after-load 'eglot
  (defvar eglot-server-programs)
  (add-to-list 'eglot-server-programs '(scruple-mode . ("scruple" "language-server"))))

(provide 'scruple-mode)
;;; scruple-mode.el ends here
