#!/usr/bin/env bash
# The integral and the Monte Carlo sample against a vectorised NumPy Monte Carlo of the same outcomes, in one run.
# Target: the integral takes 1/1000 of NumPy's million samples or less. Needs Debian's python3-scipy.
set -euo pipefail
cd "$(dirname "$0")"
python=/usr/bin/python3
$python -c 'import numpy, scipy' 2>/dev/null || { echo "SKIPPED: SciPy is not installed (Debian: python3-scipy)"; exit 0; }
dotnet build -c Release -v q >/dev/null
ours=$(dotnet run -c Release --no-build -- outcomes)
theirs=$($python outcomes.py)
join <(sort <<<"$ours") <(sort <<<"$theirs") | awk '{
  split("comes loose,stays tight,tool gives,stud twists off,corners round,slides off,wheel turns", name, ",")
  printf "%s: integral %.1f us, NumPy %.1f ms for 1,000,000 samples: 1/%.0f of it (target 1/1000 or less); a sample of ours %.1f ns\n", $1, $2, $11, $11 * 1000 / $2, $3
  for (i = 1; i <= 7; i++) if ($(3 + i) > 0) printf "   %-16s %7.3f %% by the integral, %7.3f %% drawn by NumPy\n", name[i], 100 * $(3 + i), 100 * $(11 + i) }'
