#!/usr/bin/env bash
# Whole-process times against named baselines, in one run: an empty native AOT program, an AOT program that draws an
# empty figure, an empty framework-dependent program. Prints medians and ratios. Needs Debian's hyperfine.
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
hyperfine -N --warmup 10 --runs "${RUNS:-60}" --export-csv "$out/times.csv" \
  -n empty-aot "$out/empty-aot/Empty" \
  -n loosen-aot "$out/leverage-aot/leverage $case" \
  -n prove-aot "$out/leverage-aot/leverage prove" \
  -n chart-aot "$out/chart-aot/EmptyChart $png" \
  -n loosen-chart-aot "$out/leverage-aot/leverage $case --chart $png --force-write" \
  -n empty-fd "dotnet $out/empty-fd/Empty.dll" \
  -n loosen-fd "dotnet $out/leverage-fd/leverage.dll $case" >/dev/null
awk -F, 'NR > 1 { t[$1] = 1000 * $4 }
  function row(name, base, most) { printf "%-18s %7.1f ms  %5.2f x %s (target %s x or less)\n", name, t[name], t[name] / t[base], base, most }
  END { row("loosen-aot", "empty-aot", 3); row("prove-aot", "empty-aot", 4); row("loosen-chart-aot", "chart-aot", 2); row("loosen-fd", "empty-fd", 4)
        printf "baselines: empty-aot %.1f ms, chart-aot %.1f ms, empty-fd %.1f ms (medians)\n", t["empty-aot"], t["chart-aot"], t["empty-fd"] }' "$out/times.csv"
