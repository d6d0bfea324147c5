#!/usr/bin/env bash
# Picking out of a chest of 20 bars and 10 tubes at 10 overlaps in 9 stances: nanoseconds a set-up, and the native
# program as a whole process, judging all of them and answering. Target: under 500 ms.
set -euo pipefail
cd "$(dirname "$0")"
root=$(cd ../.. && pwd)
out=$root/artifacts/pick
mkdir -p "$out"
dotnet build Leverage.Benchmarks.csproj -c Release -v q >"$out/build.log" || { cat "$out/build.log"; exit 1; }
bench=bin/Release/net10.0/Leverage.Benchmarks
"$bench" pick
"$bench" big-chest >"$out/big-chest.toml"
dotnet publish "$root/src/Leverage.Cli" -c Release -r linux-x64 -o "$out/native" -v q >"$out/publish.log" || { cat "$out/publish.log"; exit 1; }
case=(pick 460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest "$out/big-chest.toml")
TIMEFORMAT='%R %U'
for _ in $(seq "${RUNS:-15}"); do { time "$out/native/leverage" "${case[@]}" >/dev/null; } 2>&1; done \
  | sort -n | awk '{ wall[NR] = $1; user[NR] = $2 } END { m = int((NR + 1) / 2); printf "whole process: median %.0f ms, best %.0f ms (target 500 ms or less)\n", 1000 * wall[m], 1000 * wall[1] }'
