#!/usr/bin/env bash
# Planning a job out of the shared chest: the native program as a whole process on lists of 40, 200 and 1000 fasteners, none
# like another. Processor time, best of RUNS, and time a fastener as a ratio to that of the forty. Target: forty under 500 ms,
# and the ratio no more than one.
#   tests/Leverage.Benchmarks/job.sh [NATIVE_PROGRAM]
set -euo pipefail
cd "$(dirname "$0")/../.."
program=${1:-$PWD/artifacts/native/leverage}
[ -x "$program" ] || dotnet publish src/Leverage.Cli -c Release -r linux-x64 -o artifacts/native -v q >artifacts/publish.log
folder=$(mktemp -d)
trap 'rm -r "$folder"' EXIT
cp shared/pickup/chest.toml "$folder/"
for count in 40 200 1000; do
  awk -v count="$count" 'BEGIN {
    print "name;thread;grade;hex;torque;condition;count;stances"
    split("M8 M10 M12 M14x1.5 M24x1.5", thread); split("13 17 19 22 36", hex); split("22 45 85 120 380", torque)
    split("used rusted salted clean", condition); split("lie-push lie-pull|kneel-pull|stand-push stand-pull|", stances, "|")
    for (i = 0; i < count; i++) { k = i % 5 + 1
      printf "nut %d;%s;8.8;%dmm;%.3fNm;%s;%d;%s\n", i, thread[k], hex[k], torque[k] * (1 + i / 5000), condition[i % 4 + 1], i % 4 + 1, stances[i % 3 + 1] }
  }' >"$folder/$count.csv"
  printf 'title = "%s"\nchest = "chest.toml"\nfastener_list = "%s.csv"\n' "$count" "$count" >"$folder/$count.toml"
done
TIMEFORMAT='%U %S'
for count in 40 200 1000; do
  for _ in $(seq "${RUNS:-5}"); do { time "$program" job "$folder/$count.toml" >/dev/null; } 2>&1; done |
    awk -v count="$count" '{ s = $1 + $2; if (NR == 1 || s < best) best = s } END { print count, best }'
done | awk 'NR == 1 { each = $2 / $1 } { printf "%d fasteners: %.0f ms, a fastener %.2f of that of the forty\n", $1, 1000 * $2, $2 / $1 / each }'
