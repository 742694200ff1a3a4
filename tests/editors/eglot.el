;;; eglot.el --- A file with a fault, opened with Eglot -*- lexical-binding: t -*-
;; SPDX-License-Identifier: MIT
;;; Commentary:
;; Prints what is told of tern.scruple, once the server that the set-up starts has told of anything.
;;; Code:
(require 'package)
(package-initialize)
(require 'eglot)
(find-file "tern.scruple")
(run-hooks 'post-command-hook) ; there is no command loop without a terminal
(let ((end (+ (float-time) 60)))
  (while (and (not (flymake-diagnostics)) (< (float-time) end))
    (accept-process-output nil 0.1))
  (dolist (it (flymake-diagnostics)) (princ (format "%s\n" (flymake-diagnostic-text it)))))
;;; eglot.el ends here
