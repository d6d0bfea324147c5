#!/usr/bin/env bash
# Generated input in bulk: ten million inputs unless told otherwise, in chunks of their own seeds, on every core, niced.
# What is done is kept in artifacts/hostile/done.txt: run it again to go on. Ends with what was run, and 1 for any finding.
#   tests/hostile.sh [INPUTS] [FIRST_SEED]
set -uo pipefail
cd "$(dirname "$0")/.."
total=${1:-10000000}
first=${2:-1}
chunk=${LEVERAGE_HOSTILE_CHUNK:-100000}
folder=${LEVERAGE_HOSTILE_FOLDER:-$PWD/artifacts/hostile}
program=${LEVERAGE_HOSTILE_PROGRAM:-$PWD/tests/Leverage.Hostile.Tests/bin/Release/net10.0/Leverage.Hostile.Tests}
test=Leverage.Hostile.Tests.GeneratedInputTests.Any_input_is_answered_or_refused_in_one_line_and_leaves_nothing_behind
mkdir -p "$folder"
touch "$folder/done.txt"
[ -x "$program" ] || dotnet build -c Release tests/Leverage.Hostile.Tests || exit 1

one() {
  local seed=$1
  grep -q "seed $seed," "$folder/done.txt" && return 0
  rm -f "$folder/$seed.finding"
  if LEVERAGE_HOSTILE_COUNT=$chunk LEVERAGE_HOSTILE_SEED=$seed nice -n 10 "$program" -diagnostics -method "$test" >"$folder/$seed.log" 2>&1; then
    grep -oE "seed $seed, .*" "$folder/$seed.log" | sed 's/\x1b\[[0-9;]*m//g' | tee -a "$folder/done.txt"
    rm "$folder/$seed.log"
  else
    mv "$folder/$seed.log" "$folder/$seed.finding"
    printf 'FINDING with seed %s: %s\n' "$seed" "$folder/$seed.finding"
  fi
}
export -f one
export folder program test chunk
seq "$first" $((first + total / chunk - 1)) | xargs -P "$(nproc)" -I{} bash -c 'one {}'

done=$(awk -F'[, ]+' '{ sum += $3 } END { print sum + 0 }' "$folder/done.txt")
findings=$(find "$folder" -name '*.finding' | wc -l)
printf '%s inputs done, %s chunks with a finding\n' "$done" "$findings"
[ "$findings" -eq 0 ]
