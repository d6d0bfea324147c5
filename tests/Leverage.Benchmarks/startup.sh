#!/usr/bin/env bash
# Whole-process times against named baselines, in one run: an empty native AOT program, an AOT program that draws an
# empty figure, an empty framework-dependent program. Prints medians and ratios. Needs Debian's hyperfine and python3.
set -euo pipefail
cd "$(dirname "$0")"
root=$(cd ../.. && pwd)
out=$root/artifacts/startup
command -v hyperfine >/dev/null || { echo "SKIPPED: hyperfine is not installed (Debian: hyperfine)"; exit 0; }
rm -rf "$out" && mkdir -p "$out"
publish() { dotnet publish "$1" -c Release -v q -o "$out/$2" "${@:3}" >"$out/$2.log" || { cat "$out/$2.log"; exit 1; }; }
publish Baselines/Empty empty-aot -p:PublishAot=true -r linux-x64
publish Baselines/EmptyChart chart-aot -p:PublishAot=true -r linux-x64
publish Baselines/Empty empty-fd -p:PublishAot=false
publish "$root/src/Leverage.Cli" leverage-aot -r linux-x64
publish "$root/src/Leverage.Cli" leverage-fd -p:PublishAot=false -r linux-x64
case='loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm --stance stand-push --body 82kg'
png=$out/window.png
# In rounds, each command beside its baseline: a machine that is busy for a while is so for both.
for round in $(seq "${ROUNDS:-7}"); do
  hyperfine -N --warmup 3 --runs "${RUNS:-20}" --export-csv "$out/times-$round.csv" \
    -n empty-aot "$out/empty-aot/Empty" \
    -n loosen-aot "$out/leverage-aot/leverage $case" \
    -n empty-aot-again "$out/empty-aot/Empty" \
    -n prove-aot "$out/leverage-aot/leverage prove" \
    -n chart-aot "$out/chart-aot/EmptyChart $png" \
    -n loosen-chart-aot "$out/leverage-aot/leverage $case --chart $png --force-write" \
    -n empty-fd "dotnet $out/empty-fd/Empty.dll" \
    -n loosen-fd "dotnet $out/leverage-fd/leverage.dll $case" >/dev/null 2>&1
done
python3 - "$out"/times-*.csv <<'END'
import csv, statistics, sys

rounds = [{row["command"]: 1000 * float(row["median"]) for row in csv.DictReader(open(file))} for file in sys.argv[1:]]
for one in rounds:
    one["empty-aot"] = (one["empty-aot"] + one["empty-aot-again"]) / 2
middle = lambda name: statistics.median(one[name] for one in rounds)
for name, base, most in (("loosen-aot", "empty-aot", 3), ("prove-aot", "empty-aot", 4),
                         ("loosen-chart-aot", "chart-aot", 2), ("loosen-fd", "empty-fd", 4)):
    ratios = sorted(one[name] / one[base] for one in rounds)
    print(f"{name:18} {middle(name):7.1f} ms  {statistics.median(ratios):5.2f} x {base} ({ratios[0]:.2f} to {ratios[-1]:.2f}; target {most} x or less)")
print(f"baselines: empty-aot {middle('empty-aot'):.1f} ms, chart-aot {middle('chart-aot'):.1f} ms, empty-fd {middle('empty-fd'):.1f} ms (medians of {len(rounds)} rounds)")
END
