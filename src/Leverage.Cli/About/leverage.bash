# Completion of leverage for bash: source <(leverage --completion bash)
# The program itself says what may follow; where it knows of nothing, files are offered.
_leverage() {
  local line=${COMP_LINE:0:COMP_POINT} word=$2 name quoted found
  line=${line%"$word"}
  line=${line%[\"\']}
  line=${line#"${COMP_WORDS[0]}"}
  line=${line#"${line%%[![:space:]]*}"}
  COMPREPLY=()
  found=$("$1" "[suggest:${#line}]" "$line" 2>/dev/null) || return
  while IFS= read -r name; do
    printf -v quoted %q "$name"
    if [[ ${COMP_LINE:0:COMP_POINT} == *[\"\']"$word" ]]; then
      [[ $name == "$word"* ]] && COMPREPLY+=("$name")
    elif [[ -n $name && $quoted == "$word"* ]]; then
      COMPREPLY+=("$quoted")
    fi
  done <<<"$found"
}
complete -o default -F _leverage leverage
