#!/bin/sh
# Draws the gallery anew, every picture as PNG and as SVG. The same code gives the same bytes: after a change,
# 'git diff --stat plots' names the pictures that changed.
set -eu
cd "$(dirname "$0")"
dotnet build ../src/Leverage.Cli -c Release -v q -nologo
leverage="dotnet ../src/Leverage.Cli/bin/Release/net10.0/leverage.dll"
axle_nut="460Nm --thread M24x1.5 --hex 36mm --body 82kg"
tube="--bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm"

for ending in png svg; do
  draw() { "$@" --force-write > /dev/null; }
  draw $leverage loosen $axle_nut --condition rusted --drive 1/2 --bar 600mm --chart window.$ending
  draw $leverage loosen $axle_nut --condition used --drive 3/4 --bar 1200mm --bar-diameter 24mm --chart window-works.$ending
  draw $leverage loosen $axle_nut --condition rusted --drive 1/2 $tube --chart window-tube.$ending --sketch side-view.$ending
  draw $leverage slip $tube --chart slip.$ending
  draw $leverage loosen $axle_nut --condition used --drive 3/4 $tube --stance lift-legs --sketch side-view-lift.$ending
  draw $leverage slip $tube --surface greasy --sketch side-view-slides.$ending
  draw $leverage tighten --thread M12x1.25 --grade 10.9 --chart tighten.$ending
  draw $leverage tighten --torque "60Nm + 90deg" --thread M12x1.25 --grade 10.9 --grip 45mm --chart tighten-turn.$ending
done
dotnet run Gallery.cs -- .
dotnet run Icon.cs -- ../src/Leverage.Package/icon.png
