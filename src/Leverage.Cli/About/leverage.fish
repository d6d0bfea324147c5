# Completion of leverage for fish: leverage --completion fish | source
# The program itself says what may follow; where it knows of nothing, files are offered.
function __leverage_complete
    set -l words (commandline -opc)
    set -l line (string join ' ' -- $words[2..] '')
    set -l found ($words[1] "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null | string match -v '')
    if test (count $found) -gt 0
        printf '%s\n' $found
    else
        __fish_complete_path (commandline -ct)
    end
end
complete -c leverage -f -a '(__leverage_complete)'
