" SPDX-License-Identifier: MIT
" Recipe text of Scruple. Made from grammar/scruple.peg by grammar/editors/generate.py.
if exists('b:current_syntax')
  finish
endif
let s:cpo_save = &cpo
set cpo&vim
syntax case match

syntax match scrupleHeading '\v^%(conversion[ \t]+of|replenisher|chemical|supplier|process|meeting|printed|working|recipe|format|bench|plan|part|bath|log)%([ \t].*)?$' contains=scrupleBlock,scrupleString,scrupleComment
syntax match scrupleBlock '\v^%(conversion[ \t]+of|replenisher|chemical|supplier|process|meeting|printed|working|recipe|format|bench|plan|part|bath|log)>' contained
syntax match scrupleFact '\v^[ \t]+\zs%(warmer[ \t]+than|use[ \t]+within|replenish|dissolves|bystander|strength|capacity|variants|takes[ \t]+up|in[ \t]+water|reaction|graduate|in[ \t]+doubt|below[ \t]+pH|above[ \t]+pH|caution|acts[ \t]+as|density|escapes|salt[ \t]+of|balance|syringe|dropper|postage|harmful|assumed|reading|source|dilute|expect|hazard|excess|vessel|bottle|one[ \t]+of|lethal|accept|keeps|grade|note|also|form|ions|pair|area|pace|book|mix|cas|jug|is)%([ \t#]|$)@='
syntax match scrupleStep '\v^[ \t]+\zs%(not[ \t]+above|set[ \t]+aside|pour[ \t]+in|filter|stand|apart|stir|wait|cool|warm|do)%([ \t#]|$)@='
syntax match scrupleJoining '\v[ \t]@1<=%(more[ \t]+than[ \t]+it[ \t]+needs|times[ \t]+the[ \t]+volume|stirring[ \t]+every|by[ \t]+conversion|carried[ \t]+over|give[ \t]+or[ \t]+take|replenished|a[ \t]+pinch[ \t]+now|saturated|expect[ \t]+pH|none[ \t]+over|a[ \t]+quarter|processed|discarded|one\-shot|at[ \t]+least|the[ \t]+rest|stirring|received|on[ \t]+shelf|optional|to[ \t]+make|through|at[ \t]+most|measure|make[ \t]+up|because|a[ \t]+third|sheets|reused|longer|in[ \t]+air|slowly|until|films|sheet|up[ \t]+to|drops|weigh|below|above|mixed|about|from|film|with|half|used|each|per|now|for|atm|at|to|up|by|in|of|an|pK|pH|Wednesday|Thursday|Saturday|Tuesday|Monday|Friday|Sunday)%([ \t,#]|$)@='
syntax match scrupleNumber '\v[0-9A-Za-z_.,/:]@1<![-+−]?%([½¼¾⅓⅔⅛⅜⅝⅞]|\d+%([½¼¾⅓⅔⅛⅜⅝⅞]|\.\d+|[/⁄]\d+|[ \t]+\d+[/⁄]\d+)?)%([0-9A-Za-z_.])@!'
syntax match scrupleUnit '\v%(%(kg|mg|grains|grain|g|scruples|scruple)%([ \t,)#]|$)@=|%(drachms|drachm|dr)[ \t]+ap%([ \t,)#]|$)@=|%(drachms|drachm)%([ \t,)#]|$)@=|%(drams|dram|dr)[ \t]+av%([ \t,)#]|$)@=|%(ounces|ounce|oz|pounds|pound|lb)[ \t]+%(av|ap)%([ \t,)#]|$)@=|%(ml|mL|l|L|cc)%([ \t,)#]|$)@=|%(fl[ \t]+oz|fl[ \t]+dr|%(minims|minim|gills|gill|pints|pint|pt|quarts|quart|qt|gallons|gallon|gal))[ \t]+%(us|uk)%([ \t,)#]|$)@=|\%[ \t]*%(w\/v|w\/w|v\/v)%([ \t,)#]|$)@=|%(g\/l|g\/L|mg\/l|mg\/L|mol\/l|mol\/L|mmol\/l|mmol\/L|ppm)%([ \t,)#]|$)@=|%(°C|C|°F|F)%([ \t,)#]|$)@=|%(mol|mmol)%([ \t,)#]|$)@=|%(cm²|cm2|m²|m2|sq[ \t]+in)%([ \t,)#]|$)@=|%(g\/ml|g\/mL|kg\/l|kg\/L)%([ \t,)#]|$)@=|%(drops|drop)%([ \t,)#]|$)@=|%(s|min|h|days|day|weeks|week|months|month|years|year)%([ \t,)#]|$)@=)' contained
syntax match scrupleNumber '\v[0-9A-Za-z_.,/:]@1<![-+−]?%([½¼¾⅓⅔⅛⅜⅝⅞]|\d+%([½¼¾⅓⅔⅛⅜⅝⅞]|\.\d+|[/⁄]\d+|[ \t]+\d+[/⁄]\d+)?)%([ \t]*%(%(kg|mg|grains|grain|g|scruples|scruple)%([ \t,)#]|$)@=|%(drachms|drachm|dr)[ \t]+ap%([ \t,)#]|$)@=|%(drachms|drachm)%([ \t,)#]|$)@=|%(drams|dram|dr)[ \t]+av%([ \t,)#]|$)@=|%(ounces|ounce|oz|pounds|pound|lb)[ \t]+%(av|ap)%([ \t,)#]|$)@=|%(ml|mL|l|L|cc)%([ \t,)#]|$)@=|%(fl[ \t]+oz|fl[ \t]+dr|%(minims|minim|gills|gill|pints|pint|pt|quarts|quart|qt|gallons|gallon|gal))[ \t]+%(us|uk)%([ \t,)#]|$)@=|\%[ \t]*%(w\/v|w\/w|v\/v)%([ \t,)#]|$)@=|%(g\/l|g\/L|mg\/l|mg\/L|mol\/l|mol\/L|mmol\/l|mmol\/L|ppm)%([ \t,)#]|$)@=|%(°C|C|°F|F)%([ \t,)#]|$)@=|%(mol|mmol)%([ \t,)#]|$)@=|%(cm²|cm2|m²|m2|sq[ \t]+in)%([ \t,)#]|$)@=|%(g\/ml|g\/mL|kg\/l|kg\/L)%([ \t,)#]|$)@=|%(drops|drop)%([ \t,)#]|$)@=|%(s|min|h|days|day|weeks|week|months|month|years|year)%([ \t,)#]|$)@=))@=' nextgroup=scrupleUnit skipwhite
syntax match scrupleDate '\v[0-9A-Za-z_.,/:]@1<!\d\d\d\d-\d\d-\d\d%([ \t,)#]|$)@='
syntax match scrupleForm '\v\([^()]*\)' contains=scrupleNumber,scrupleUnit
syntax match scrupleString '\v"[^"]*"'
syntax match scrupleComment '\v%(^|[ \t]@1<=)#.*$' contains=@Spell

highlight default link scrupleHeading Title
highlight default link scrupleBlock Structure
highlight default link scrupleFact Keyword
highlight default link scrupleStep Statement
highlight default link scrupleJoining Operator
highlight default link scrupleNumber Number
highlight default link scrupleUnit Type
highlight default link scrupleDate Constant
highlight default link scrupleForm Identifier
highlight default link scrupleString String
highlight default link scrupleComment Comment

let b:current_syntax = 'scruple'
let &cpo = s:cpo_save
unlet s:cpo_save
