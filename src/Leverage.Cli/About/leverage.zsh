#compdef leverage
# Completion of leverage for zsh: source <(leverage --completion zsh), or a file _leverage in $fpath.
# The program itself says what may follow; where it knows of nothing, files are offered.
_leverage() {
  local before="${(j: :)words[2,CURRENT-1]}"
  [[ -z $before ]] || before+=' '
  local -a found
  found=(${(f)"$($words[1] "[suggest:${#before}]" "$before" 2>/dev/null)"})
  if (( $#found )); then
    compadd -- $found
  else
    _files
  fi
}
if [[ $funcstack[1] == _leverage ]]; then
  _leverage "$@"
else
  (( $+functions[compdef] )) || { autoload -Uz compinit && compinit }
  compdef _leverage leverage
fi
