#!/usr/bin/env bash
# Generated input in bulk: ten million inputs unless told otherwise, in chunks of their own seeds, on every core, niced.
# What is done is kept in artifacts/hostile/done.txt: run it again to go on. Ends with what was run, and 1 for any finding.
#   tests/hostile.sh [INPUTS] [FIRST_SEED]                             through every door
#   LEVERAGE_HOSTILE_KIND=JOB_KEYS tests/hostile.sh 1000000 201        jobs and lists with any key they can have
set -uo pipefail
cd "$(dirname "$0")/.."
total=${1:-10000000}
first=${2:-1}
chunk=${LEVERAGE_HOSTILE_CHUNK:-100000}
folder=${LEVERAGE_HOSTILE_FOLDER:-$PWD/artifacts/hostile}
program=${LEVERAGE_HOSTILE_PROGRAM:-$PWD/tests/Leverage.Hostile.Tests/bin/Release/net10.0/Leverage.Hostile.Tests}
kind=${LEVERAGE_HOSTILE_KIND:-HOSTILE}
case $kind in
  HOSTILE) test=Any_input_is_answered_or_refused_in_one_line_and_leaves_nothing_behind ;;
  JOB_KEYS) test=Any_key_of_a_job_is_read_and_planned_or_refused_in_one_line ;;
esac
test=Leverage.Hostile.Tests.GeneratedInputTests.$test
mkdir -p "$folder"
touch "$folder/done.txt"
[ -x "$program" ] || dotnet build -c Release tests/Leverage.Hostile.Tests || exit 1

one() {
  local seed=$1
  grep -q "seed $seed," "$folder/done.txt" && return 0
  rm -f "$folder/$seed.finding"
  if env "LEVERAGE_${kind}_COUNT=$chunk" "LEVERAGE_${kind}_SEED=$seed" nice -n 10 "$program" -diagnostics -method "$test" >"$folder/$seed.log" 2>&1; then
    grep -oE "seed $seed, .*" "$folder/$seed.log" | sed 's/\x1b\[[0-9;]*m//g' | tee -a "$folder/done.txt"
    rm "$folder/$seed.log"
  else
    mv "$folder/$seed.log" "$folder/$seed.finding"
    printf 'FINDING with seed %s: %s\n' "$seed" "$folder/$seed.finding"
  fi
}
export -f one
export folder program test chunk kind
seq "$first" $((first + total / chunk - 1)) | xargs -P "$(nproc)" -I{} bash -c 'one {}'

done=$(awk -F'[, ]+' '{ sum += $3 } END { print sum + 0 }' "$folder/done.txt")
findings=$(find "$folder" -name '*.finding' | wc -l)
printf '%s inputs done, %s chunks with a finding\n' "$done" "$findings"
[ "$findings" -eq 0 ]
