#!/usr/bin/env bash
# The outcome integral and the Monte Carlo sample against a vectorised NumPy Monte Carlo, in one run.
# Needs Debian's python3-numpy.
set -euo pipefail
cd "$(dirname "$0")"
python=/usr/bin/python3
$python -c 'import numpy' 2>/dev/null || { echo "SKIPPED: NumPy is not installed (Debian: python3-numpy)"; exit 0; }
dotnet build -c Release -v q >/dev/null
ours=$(dotnet run -c Release --no-build -- outcomes)
theirs=$($python outcomes.py)
printf '%s\n%s\n' "$ours" "$theirs"
join <(printf '%s\n' "$ours" | sort) <(printf '%s\n' "$theirs" | sort) | awk '{
  printf "%s: integral %.1f us, NumPy %.1f ms for 1,000,000 samples: 1/%.0f of it; a sample %.2f ns; undone %.3f %% and %.3f %%\n",
    $1, $5, $13, $13 * 1000 / $5, $7, $3, $11 }'
