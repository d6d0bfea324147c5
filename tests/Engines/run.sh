#!/usr/bin/env bash
# Runs the other engines again and holds what they give against the rows committed in shared/checks
# and, the drawn set-ups, beside the test that reads them.
# Usage: tests/Engines/run.sh [units|chances|drawn|moves|screws|shown|statics|tube|dent|corner …]; all without a name. The solids take an hour.
# Engines: Debian units, python3-scipy, calculix-ccx. One that is not installed is skipped, loudly.
set -uo pipefail
cd "$(dirname "$0")"
python=${PYTHON:-/usr/bin/python3}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0

skip() {
  printf '\n*** SKIPPED %s: %s is not installed (apt-get install %s); its committed rows are still tested.\n' "$1" "$2" "$3" >&2
}

engine() {
  case $1 in
    units) command -v units >/dev/null || { skip "$1" units units; return 1; } ;;
    chances | drawn | moves | screws | shown | statics) "$python" -c 'import scipy' 2>/dev/null || { skip "$1" SciPy python3-scipy; return 1; } ;;
    tube | dent | corner)
      command -v ccx >/dev/null || { skip "$1" CalculiX calculix-ccx; return 1; }
      "$python" -c 'import numpy, scipy' 2>/dev/null || { skip "$1" SciPy python3-scipy; return 1; }
      ;;
    *) printf 'no engine script %s\n' "$1" >&2; failed=1; return 1 ;;
  esac
}

[ $# -gt 0 ] || set -- units chances drawn moves screws shown statics tube dent corner
for name in "$@"; do
  engine "$name" || continue
  printf '== %s\n' "$name"
  "$python" "$name.py" "$work/$name.csv" && "$python" compare.py "$work/$name.csv" || failed=1
done
exit $failed
