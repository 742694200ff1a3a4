" SPDX-License-Identifier: MIT
autocmd BufRead,BufNewFile *.scruple setfiletype scruple
