#!/usr/bin/env bash
# Changes one operator, comparison, function, constant or table cell at a time in the core and shows which tests notice.
# Usage: tests/mutate.sh [folder …] [--cells N] [--again LOG]; without a folder all of them and 60 cells. About an hour on two cores.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
dotnet build -c Release -v q tests/Leverage.Core.Tests
dotnet build -c Release -v q tests/Leverage.Mutation
if [ $# -eq 0 ]; then
  set -- Threads Grades Friction Preload Stiffness Corners BreakLoose Levers Tubes LoadPath Holding Outcomes Assessments --cells 60
fi
exec nice -n 10 dotnet tests/Leverage.Mutation/bin/Release/net10.0/Leverage.Mutation.dll \
  "$PWD" "$PWD/tests/Leverage.Core.Tests/bin/Release/net10.0" "$@"
