#!/usr/bin/env bash
# Faults on the real program, those that need root, minutes, or tools a test should not: a tmpfs of 64 KB, a thousand kills
# in the middle of writing, 64 MB of memory, a clock that jumps. The quick ones are tests (Leverage.Hostile.Tests/Faults).
# Ends with "N held, N failed, N not tried"; what could not be tried says what stopped it.
#   tests/faults.sh [KILLS]      (1000)
set -uo pipefail
cd "$(dirname "$0")/.."
kills=${1:-1000}
program=${LEVERAGE:-$PWD/artifacts/native/leverage}
[ -x "$program" ] || dotnet publish src/Leverage.Cli -c Release -r linux-x64 -o artifacts/native -v q || exit 1
work=$(mktemp -d)
trap 'mountpoint -q "$work/small" && umount "$work/small"; rm -rf "$work"' EXIT
held=0
failed=0
not_tried=0

holds() { held=$((held + 1)); printf 'held    %s\n' "$1"; }
fails() { failed=$((failed + 1)); printf 'FAILED  %s\n' "$1"; }
stopped() { not_tried=$((not_tried + 1)); printf 'not tried  %s\n' "$1"; }
check() { if eval "$2"; then holds "$1"; else fails "$1"; fi; }
one_line() { [ "$(wc -l <"$1")" -eq 1 ] && grep -q '^leverage: ' "$1"; }

slip=(slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm)

small_disk() {
  mkdir "$work/small"
  mount -t tmpfs -o size=64k tmpfs "$work/small" 2>"$work/mount" || { stopped "a disk of 64 KB: $(cat "$work/mount")"; return; }
  local name="a disk of 64 KB: one line, exit 2, nothing left, the old file kept"
  head -c 40000 /dev/zero >"$work/small/filler"
  printf old >"$work/small/x.svg"
  "$program" "${slip[@]}" --chart "$work/small/x.svg" --force-write >"$work/out" 2>"$work/err"
  local code=$?
  check "$name" '[ $code -eq 2 ] && one_line "$work/err" && [ ! -s "$work/out" ] && [ "$(cat "$work/small/x.svg")" = old ] && [ "$(ls -A "$work/small" | wc -l)" -eq 2 ]'
  head -c 60000 /dev/zero >"$work/small/filler2" 2>/dev/null
  "$program" table loads >"$work/small/answer" 2>"$work/err"
  code=$?
  check "an answer to a full disk: one line, exit 1" '[ $code -eq 1 ] && one_line "$work/err"'
}

# Old and new file are known whole; after each kill the file must be one of them, byte for byte.
killed() {
  local torn=0 old=0 new=0 left=0 i
  mkdir "$work/kill"
  "$program" "${slip[@]}" --chart "$work/kill/new.svg" >/dev/null || { fails "killed while writing: cannot write at all"; return; }
  printf 'the old file' >"$work/old.svg"
  mv "$work/kill/new.svg" "$work/new.svg"
  for ((i = 0; i < kills; i++)); do
    cp "$work/old.svg" "$work/kill/x.svg"
    "$program" "${slip[@]}" --chart "$work/kill/x.svg" --force-write >/dev/null 2>&1 &
    local pid=$!
    sleep "$(awk -v r="$RANDOM" -v span="$span" 'BEGIN { printf "%.4f", r / 32768 * span }')"
    kill -KILL "$pid" 2>/dev/null
    wait "$pid" 2>/dev/null
    if cmp -s "$work/kill/x.svg" "$work/old.svg"; then old=$((old + 1))
    elif cmp -s "$work/kill/x.svg" "$work/new.svg"; then new=$((new + 1))
    else torn=$((torn + 1)); fi
    left=$((left + $(find "$work/kill" -name '.x.svg.*' | wc -l)))
    find "$work/kill" -name '.x.svg.*' -delete
  done
  check "killed $kills times while writing: $old times the old file, $new times the new one, $torn torn ($left killed with the file beside it half written)" \
    '[ "$torn" -eq 0 ] && [ "$old" -gt 0 ] && [ "$new" -gt 0 ]'
}

# How long a run takes, so that kills fall all over it and a little past it.
measure() {
  local start end
  "$program" "${slip[@]}" --chart "$work/warm.svg" >/dev/null
  start=$(date +%s%N)
  "$program" "${slip[@]}" --chart "$work/warm2.svg" >/dev/null
  end=$(date +%s%N)
  span=$(awk -v ns=$((end - start)) 'BEGIN { printf "%.4f", ns / 1e9 * 1.3 }')
}

little_memory() {
  local rows=$1 expect=$2
  {
    echo 'name,torque,thread,count'
    seq "$rows" | awk '{ printf "nut %d,85Nm,M12,1\n", $1 }'
  } >"$work/list.csv"
  printf 'title = "many"\nfastener_list = "list.csv"\n' >"$work/many.toml"
  DOTNET_GCHeapHardLimit=0x4000000 timeout 300 "$program" job "$work/many.toml" --json >"$work/out" 2>"$work/err"
  local code=$?
  check "64 MB for a list of $rows rows: exit $code, $(head -c 120 "$work/err" | head -n 1)" "$expect"
}

clock() {
  command -v faketime >/dev/null || { stopped "a clock that jumps: faketime is not installed"; return; }
  "$program" "${slip[@]}" --chart "$work/now.svg" >"$work/now"
  local name bad=0
  for name in '1970-01-02 00:00:00' '2038-01-19 03:14:08' '2099-12-31 23:59:59'; do
    faketime "$name" "$program" "${slip[@]}" --chart "$work/then.svg" --force-write >"$work/then" 2>"$work/err" || bad=1
    cmp -s "$work/now" "$work/then" && cmp -s "$work/now.svg" "$work/then.svg" || bad=1
  done
  # The clock of the day runs a second on, or back, with every look at it; the machine's own steady clock stays as it is.
  for name in '+0 i1.0' '+0 i-1.0'; do
    FAKETIME_DONT_FAKE_MONOTONIC=1 faketime -f "$name" timeout 60 "$program" "${slip[@]}" --chart "$work/then.svg" --force-write >"$work/then" 2>"$work/err" || bad=1
    cmp -s "$work/now" "$work/then" && cmp -s "$work/now.svg" "$work/then.svg" || bad=1
  done
  check "other dates, and a clock that jumps a second at every look: the same bytes" '[ $bad -eq 0 ]'
}

measure
small_disk
killed
little_memory 10000 '[ $code -eq 0 ] || { [ $code -eq 1 -o $code -eq 2 ] && one_line "$work/err"; }'
little_memory 100000 '[ $code -eq 0 ] || { [ $code -eq 1 -o $code -eq 2 ] && one_line "$work/err"; }'
clock
printf '%s held, %s failed, %s not tried\n' "$held" "$failed" "$not_tried"
[ "$failed" -eq 0 ]
