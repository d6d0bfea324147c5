#!/usr/bin/env bash
# The laws over random set-ups in bulk: a million set-ups in chunks of their own seeds on every core, niced, then two
# thousand small jobs and a hundred whole ones permuted. Ends with what was drawn and judged, and 1 for any law broken.
#   tests/laws.sh [SET_UPS] [JOBS] [WHOLE_JOBS]
set -uo pipefail
cd "$(dirname "$0")/.."
setups=${1:-1000000}
jobs=${2:-2000}
whole=${3:-100}
chunk=50000
folder=${LEVERAGE_LAWS_FOLDER:-$PWD/artifacts/laws}
program=${LEVERAGE_HOSTILE_PROGRAM:-$PWD/tests/Leverage.Hostile.Tests/bin/Release/net10.0/Leverage.Hostile.Tests}
[ -x "$program" ] || dotnet build -c Release tests/Leverage.Hostile.Tests || exit 1
rm -rf "$folder"
mkdir -p "$folder"
export folder program chunk

run() { # NAME TEST: what the test says it drew, or that a law is broken
  nice -n 10 "$program" -diagnostics -method "Leverage.Hostile.Tests.Laws.$2" >"$folder/$1.log" 2>&1 || { echo "BROKEN: $folder/$1.log"; return 1; }
  grep -oE 'seed [0-9]+, .*' "$folder/$1.log" | sed 's/\x1b\[[0-9;]*m//g'
}
some() { LEVERAGE_LAWS_COUNT=$chunk LEVERAGE_LAWS_SEED=$1 run "$1" SetupLaws.Limits_hands_units_and_schema_hold_to_their_laws_for_any_set_up; }
export -f run some

seq 1 $(((setups + chunk - 1) / chunk)) | xargs -P "$(nproc)" -I{} bash -c 'some {}' | tee "$folder/setups.txt"
LEVERAGE_JOBS_COUNT=$jobs run jobs 'JobLaws.Permuting_the_fasteners_of_a_job_changes_nothing_but_the_order_among_equals' | tee "$folder/jobs.txt"
LEVERAGE_WHOLE_JOBS_COUNT=$whole run whole 'JobLaws.Permuting_a_whole_job*' | tee "$folder/whole.txt"
awk -F'[, ]+' '/^seed/ { drawn += $3; judged += $6 } END { printf "%d set-ups drawn, %d judged\n", drawn, judged }' "$folder/setups.txt"
! grep -q BROKEN "$folder"/*.txt
