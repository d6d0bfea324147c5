#!/usr/bin/env bash
# Prints what the page weighs and how long it takes: shares of what is wanted (1 and below is met) and counts (0 is met).
# The times are of this machine as it is now; let nothing else run beside it.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build -c Release -v q -nologo tests/Leverage.Page.Tests
tests/Leverage.Page.Tests/bin/Release/net10.0/Leverage.Page.Tests -explicit only -class Leverage.Page.Tests.Measures >artifacts/page-measures.log ||
  { cat artifacts/page-measures.log; exit 1; }
cat artifacts/page-measures.txt
