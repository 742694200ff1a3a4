# SPDX-License-Identifier: MIT
# Completion of scruple for bash: source this file, or install it as
# /usr/share/bash-completion/completions/scruple.

_scruple_options() {
    case $1 in
    card) echo --make --films --sheets --area --with --instead --from-shelf --variant --bench --mixed --at --paper --in --as --out --help ;;
    binder) echo --bench --paper --in --out --help ;;
    labels) echo --bottles --mixed --batch --variant --label --grid --first --between --paper --in --as --out --help ;;
    scaled) echo --make --films --sheets --area --with --instead --from-shelf --variant --in --as --out --help ;;
    tidy) echo --check --in --as --out --help ;;
    weigh) echo --as-form --in --as --out --help ;;
    contents) echo --at --instead --from-shelf --variant --in --as --out --help ;;
    compare) echo --lines --git --in --as --out --help ;;
    why) echo --make --films --sheets --area --with --instead --from-shelf --variant --bench --in --as --out --help ;;
    react) echo --with --in --as --out --help ;;
    shopping) echo --with --without --against --paper --in --as --out --help ;;
    calendar) echo --bench --paper --in --as --out --help ;;
    evening) echo --from --vessels --bench --paper --in --as --out --help ;;
    shelf) echo --on --paper --in --as --out --help ;;
    mixed | enter) echo --on --note --log --in --as --out --help ;;
    language-server) echo --help ;;
    check | chemical | settle | help) echo --in --as --out --help ;;
    esac
}

# Offers those of the words that begin with the one at the cursor, spelt so that the shell reads them back as they are:
# what a file or a recipe is called must never be run.
_scruple_offer() {
    local word
    for word; do
        [[ $word == "$current"* ]] && COMPREPLY+=("$(printf %q "$word")")
    done
}

# The same of lines that are read.
_scruple_offer_lines() {
    local line
    while IFS= read -r line; do
        _scruple_offer "$line"
    done
}

# Files are spelt by readline, which knows them.
_scruple_offer_files() {
    compopt -o filenames 2>/dev/null
    local line
    while IFS= read -r line; do
        COMPREPLY+=("$line")
    done < <(compgen "$@" -- "$current")
}

# The names of a kind in the workspace of the line, one a line.
_scruple_names() {
    local in=() i
    for ((i = 2; i < COMP_CWORD; i++)); do
        [[ ${COMP_WORDS[i]} == --in ]] && in=(--in "${COMP_WORDS[i + 1]}")
    done
    # A name that begins with a hyphen would be taken for an option.
    "${COMP_WORDS[0]}" help names "$1" "${in[@]}" 2>/dev/null | grep -v '^-'
}

# Names have several words, and the shell completes one: the next word of each name that
# begins with the words before.
_scruple_next_words() {
    local before="" i name
    for ((i = 2; i < COMP_CWORD; i++)); do
        [[ ${COMP_WORDS[i]} == --* ]] && return
        before+="${COMP_WORDS[i]} "
    done
    while IFS= read -r name; do
        [[ ${name,,} == "${before,,}"* ]] || continue
        name=${name:${#before}}
        _scruple_offer "${name%% *}"
    done < <(_scruple_names "$1")
}

_scruple() {
    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD - 1]} command=${COMP_WORDS[1]}
    COMPREPLY=()
    if ((COMP_CWORD == 1)); then
        _scruple_offer check card binder labels scaled shopping calendar evening shelf mixed enter tidy chemical weigh react contents compare settle why language-server help --help --version
        return
    fi
    case $previous in
    --log) _scruple_offer_files -f -X '!*.scruple' ;;
    --in) _scruple_offer_files -d ;;
    --out) _scruple_offer_files -f ;;
    --as) _scruple_offer text html json ;;
    --instead) _scruple_offer_lines < <(_scruple_names chemicals) ;;
    --bench) _scruple_offer_lines < <(_scruple_names benches) ;;
    --against) _scruple_next_words plans ;;
    --make | --films | --sheets | --area | --with | --without | --variant | --mixed | --on | --from | --vessels | --note | --at | --as-form) ;;
    *)
        if [[ $current == -* ]]; then
            # shellcheck disable=SC2046 # words
            _scruple_offer $(_scruple_options "$command")
            return
        fi
        case $command in
        card | labels | scaled | contents | why | mixed) _scruple_next_words recipes ;;
        shopping | calendar | evening) _scruple_next_words plans ;;
        enter) ((COMP_CWORD == 2)) && _scruple_offer received processed used replenished on discarded ;;
        chemical) _scruple_next_words chemicals ;;
        settle) _scruple_next_words pages ;;
        compare)
            _scruple_offer_files -f
            _scruple_offer_lines < <(git for-each-ref --format='%(refname:short)' 2>/dev/null)
            ;;
        tidy)
            _scruple_offer_files -d
            _scruple_offer_files -f -X '!*.scruple'
            ;;
        help) _scruple_offer check card binder labels scaled shopping calendar evening shelf mixed enter tidy chemical weigh react contents compare settle why language-server names recipe part bath working replenisher \
            conversion bench supplier log process plan meeting printed format ;;
        esac
        ;;
    esac
}

complete -F _scruple scruple
