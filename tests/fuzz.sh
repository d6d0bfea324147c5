#!/usr/bin/env bash
# Coverage-guided fuzzing of the readers: SharpFuzz instruments our libraries and the TOML and CSV libraries, AFL++ drives.
# Wants afl++ (Debian: afl++). Ends with executions and crashes of each reader, and 1 for any crash.
#   tests/fuzz.sh [SECONDS] [READER...]      (60 seconds each; quantity thread chest job list)
set -uo pipefail
cd "$(dirname "$0")/.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
export AFL_SKIP_BIN_CHECK=1 AFL_SKIP_CPUFREQ=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1 AFL_NO_AFFINITY=1 AFL_NO_UI=1 AFL_AUTORESUME=1
seconds=${1:-60}
shift || true
readers=("$@")
[ ${#readers[@]} -gt 0 ] || readers=(quantity thread chest job list)
folder=$PWD/artifacts/fuzz
command -v afl-fuzz >/dev/null || { echo "afl-fuzz is not installed: apt-get install afl++"; exit 2; }
mkdir -p "$folder/out"
[ -x "$folder/tool/sharpfuzz" ] || dotnet tool install SharpFuzz.CommandLine --version 2.3.0 --tool-path "$folder/tool" || exit 2
rm -rf "$folder/bin"
dotnet build -c Release tests/Leverage.Fuzz -o "$folder/bin" -v q || exit 2
for library in Leverage.Core Leverage.Workshop Tomlyn Sep; do
  "$folder/tool/sharpfuzz" "$folder/bin/$library.dll" || exit 2
done

# What each begins with: what the shared examples and the README hold.
begin() {
  mkdir -p "$folder/in/$1"
  case $1 in
    quantity) i=0; for text in '0460Nm' '8340 ft-lb' '1600mm' '115/16in' '91-1/2in' '2450N' '382kg' '4640MPa' '5150K' '675%' '733.7x3.2x1200mm' '7jack:1100mm'; do printf %s "$text" >"$folder/in/$1/$((i++))"; done ;;
    thread) i=0; for text in M24x1.5 M12 1/2-20 1/2-13UNC 7/16-14; do printf %s "$text" >"$folder/in/$1/$((i++))"; done ;;
    chest) awk -v folder="$folder/in/chest" 'BEGIN { RS = "" } { f = folder "/" NR; print > f; close(f) }' shared/pickup/chest.toml ;;
    job) printf 'title = "x"\n\n[[fasteners]]\nname = "a"\ntorque = "85Nm"\nthread = "M12"\n\n[[tasks]]\nname = "b"\nneeds = ["c"]\ntakes_off = ["a"]\n' >"$folder/in/$1/0" ;;
    list) head -n 4 shared/pickup/fasteners.csv >"$folder/in/$1/0" ;;
  esac
}

found=0
for reader in "${readers[@]}"; do
  begin "$reader"
  nice -n 10 afl-fuzz -i "$folder/in/$reader" -o "$folder/out/$reader" -t 10000 -m none -V "$seconds" \
    dotnet "$folder/bin/Leverage.Fuzz.dll" "$reader" >"$folder/$reader.log" 2>&1
  stats=$folder/out/$reader/default/fuzzer_stats
  [ -f "$stats" ] || { echo "$reader: did not run: $(grep -a 'PROGRAM ABORT' -A2 "$folder/$reader.log" | head -n 3)"; found=1; continue; }
  of() { sed -n "s/^$1 *: //p" "$stats"; }
  printf '%s: %s executions, %s paths, %s crashes, %s hangs\n' "$reader" "$(of execs_done)" "$(of corpus_count)" "$(of saved_crashes)" "$(of saved_hangs)"
  [ "$(of saved_crashes)" = 0 ] || found=1
done
exit "$found"
