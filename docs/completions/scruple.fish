# SPDX-License-Identifier: MIT
# Completion of scruple for fish: copy it to ~/.config/fish/completions.

function __scruple_names --argument-names kind
    set --local words (commandline --tokenize --cut-at-cursor)
    set --local in
    for i in (seq (count $words))
        test "$words[$i]" = --in; and set in --in $words[(math $i + 1)]
    end
    # A name that begins with a hyphen would be taken for an option.
    command $words[1] help names $kind $in 2>/dev/null | string match --invert -- '-*'
end

function __scruple_command
    __fish_seen_subcommand_from $argv
end

complete -c scruple -f
complete -c scruple -n __fish_use_subcommand -a check -d 'say what is wrong with the recipes'
complete -c scruple -n __fish_use_subcommand -a card -d 'print a mixing card'
complete -c scruple -n __fish_use_subcommand -a binder -d 'write the cards of all recipes into a folder'
complete -c scruple -n __fish_use_subcommand -a scaled -d 'print a recipe for another volume'
complete -c scruple -n __fish_use_subcommand -a shopping -d 'say what to mix and buy for a plan'
complete -c scruple -n __fish_use_subcommand -a calendar -d 'say on which days to mix what'
complete -c scruple -n __fish_use_subcommand -a evening -d 'lay out a day of mixing by the clock'
complete -c scruple -n __fish_use_subcommand -a shelf -d 'say what is on the shelf by the log'
complete -c scruple -n __fish_use_subcommand -a mixed -d 'write into the log what was mixed'
complete -c scruple -n __fish_use_subcommand -a enter -d 'write another line into the log'
complete -c scruple -n __fish_use_subcommand -a tidy -d 'lay out recipe files'
complete -c scruple -n __fish_use_subcommand -a chemical -d 'show what is known of a chemical'
complete -c scruple -n __fish_use_subcommand -a weigh -d 'one form in place of another'
complete -c scruple -n __fish_use_subcommand -a react -d 'balance and work out a reaction'
complete -c scruple -n __fish_use_subcommand -a labels -d 'bottle labels'
complete -c scruple -n __fish_use_subcommand -a contents -d 'what a solution holds'
complete -c scruple -n __fish_use_subcommand -a compare -d 'what has changed between two versions'
complete -c scruple -n __fish_use_subcommand -a settle -d 'what a printed page means'
complete -c scruple -n __fish_use_subcommand -a why -d 'where an amount comes from'
complete -c scruple -n __fish_use_subcommand -a language-server -d 'answer an editor'
complete -c scruple -n __fish_use_subcommand -a help -d 'explain a command, a block or a fault'
complete -c scruple -n __fish_use_subcommand -l version -d 'which version this is'

complete -c scruple -l help -d 'show how it is called'
set --local all check card labels scaled shopping calendar evening shelf mixed enter tidy chemical weigh react contents compare settle why help
complete -c scruple -n "__scruple_command binder $all" -l in -r -a '(__fish_complete_directories)' -d 'folder of the recipes'
complete -c scruple -n "__scruple_command $all" -l as -x -a 'text html json' -d 'format'
complete -c scruple -n '__scruple_command check' -l as -x -a 'sarif junit' -d 'format'
complete -c scruple -n '__scruple_command shopping' -l with -x -d 'work besides the plan'
complete -c scruple -n '__scruple_command shopping' -l without -x -d 'a day or process left out'
complete -c scruple -n '__scruple_command shopping' -l against -x -a '(__scruple_names plans)' -d 'another plan'
complete -c scruple -n '__scruple_command shopping' -l as -x -a csv -d 'format'
complete -c scruple -n '__scruple_command settle' -l as -x -a recipe -d 'format'
complete -c scruple -n '__scruple_command settle' -a '(__scruple_names pages)'
complete -c scruple -n '__scruple_command calendar' -l as -x -a ics -d 'format'
complete -c scruple -n '__scruple_command card labels shopping calendar shelf evening' -l as -x -a 'pdf svg png' -d 'format'
complete -c scruple -n "__scruple_command $all" -l out -r -F -d 'file to write'
complete -c scruple -n '__scruple_command binder' -l out -x -a '(__fish_complete_directories)' -d 'folder to write to'

complete -c scruple -n '__scruple_command card scaled why' -l make -x -d 'volume to make'
complete -c scruple -n '__scruple_command card scaled why' -l films -x -d 'number and format of films'
complete -c scruple -n '__scruple_command card scaled why' -l sheets -x -d 'number and format of sheets'
complete -c scruple -n '__scruple_command card scaled why' -l area -x -d 'area of film or paper'
complete -c scruple -n '__scruple_command card scaled why' -l with -x -d 'as much as this much of a chemical allows'
complete -c scruple -n '__scruple_command card scaled contents why' -l instead -x -a '(__scruple_names chemicals)' -d 'chemical that is not there'
complete -c scruple -n '__scruple_command card scaled contents why' -l from-shelf -d 'meet otherwise what the log lacks'
complete -c scruple -n '__scruple_command card labels scaled contents why' -l variant -x -d 'variant of the recipe'
complete -c scruple -n '__scruple_command card binder why calendar evening' -l bench -x -a '(__scruple_names benches)' -d 'instruments to round to'
complete -c scruple -n '__scruple_command card labels' -l mixed -x -d 'day of mixing'
complete -c scruple -n '__scruple_command shelf mixed enter' -l on -x -d 'the day that is meant'
complete -c scruple -n '__scruple_command mixed enter' -l note -x -d 'a comment behind the line'
complete -c scruple -n '__scruple_command mixed enter' -l log -r -F -d 'file with the log'
complete -c scruple -n '__scruple_command card contents' -l at -x -d 'how warm it is for the pH'
complete -c scruple -n '__scruple_command card binder labels shopping calendar shelf evening' -l paper -x -a 'a4 a5 letter' -d 'sheet to print on'
complete -c scruple -n '__scruple_command evening' -l from -x -d 'when it begins'
complete -c scruple -n '__scruple_command evening' -l vessels -x -d 'how many vessels there are'
complete -c scruple -n '__scruple_command labels' -l bottles -x -d 'number and volume of the bottles'
complete -c scruple -n '__scruple_command labels' -l batch -x -d 'the batch in them'
complete -c scruple -n '__scruple_command labels' -l label -x -d 'size of a label in millimetres'
complete -c scruple -n '__scruple_command labels' -l grid -x -d 'columns and rows of labels'
complete -c scruple -n '__scruple_command labels' -l first -x -d 'millimetres to the first label'
complete -c scruple -n '__scruple_command labels' -l between -x -d 'millimetres between labels'
complete -c scruple -n '__scruple_command weigh' -l as-form -x -d 'the form there is'
complete -c scruple -n '__scruple_command react' -l with -x -d 'amounts that are taken'
complete -c scruple -n '__scruple_command compare' -l lines -d 'of one only: what is compared, a fact a line'
complete -c scruple -n '__scruple_command compare' -l git -d 'called by git'
complete -c scruple -n '__scruple_command tidy' -l check -d 'change nothing, list what would change'

complete -c scruple -n '__scruple_command card labels scaled contents why mixed' -a '(__scruple_names recipes)'
complete -c scruple -n '__scruple_command enter' -a 'received processed used replenished "on shelf" discarded'
complete -c scruple -n '__scruple_command shopping calendar evening' -a '(__scruple_names plans)'
complete -c scruple -n '__scruple_command chemical' -a '(__scruple_names chemicals)'
complete -c scruple -n '__scruple_command tidy compare' -F
complete -c scruple -n '__scruple_command help' -a 'check card binder labels scaled shopping calendar evening shelf mixed enter tidy chemical weigh react contents compare why language-server names recipe part bath working replenisher conversion bench supplier log process plan meeting format'
