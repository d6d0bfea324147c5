#!/usr/bin/env bash
# Makes folders to hand out, one for each kind of machine, under artifacts/publish, and prints their sizes:
#   src/publish.sh [linux-x64] [win-x64] [osx-arm64]        all three when none is named
# Compiled ahead to native code where the SDK can do it from this machine; for another system than this one it cannot,
# so there each program is one file with the trimmed runtime inside. Nothing need be installed to run any of them.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
version=$(sed -n 's|.*<Version>\(.*\)</Version>.*|\1|p' Directory.Build.props)
[ $# -gt 0 ] || set -- linux-x64 win-x64 osx-arm64

# The page: a folder to put on any web server, and the single file that opens from anywhere.
page() {
  dotnet build src/Leverage.Page.Server -c Release -v q -nologo >artifacts/publish/page.log || { cat artifacts/publish/page.log; exit 1; }
  rm -rf artifacts/publish/page artifacts/publish/leverage.html
  cp -r artifacts/page artifacts/leverage.html artifacts/publish/
  echo "artifacts/publish/page: a folder to upload, $(du -sm artifacts/publish/page | cut -f1) MB with its compressed forms"
  echo "artifacts/publish/leverage.html: $(wc -c <artifacts/publish/leverage.html | awk '{ printf "%.1f", $1 / 1e6 }') MB"
}

native() { [ "$1" = linux-x64 ] && [ "$(uname -sm)" = 'Linux x86_64' ]; }

programs() {
  local how=(-p:PublishAot=false -p:SelfContained=true -p:PublishSingleFile=true -p:PublishTrimmed=true -p:PublishReadyToRun=true)
  native "$1" && how=(-p:PublishAot=true)
  for project in Leverage.Cli Leverage.Page.Server; do
    dotnet publish "src/$project" -c Release -r "$1" -v q -o "$2" "${how[@]}" \
      >"artifacts/publish/$1.log" || { cat "artifacts/publish/$1.log"; exit 1; }
  done
  rm -f "$2"/*.pdb "$2"/*.xml "$2"/*.dbg "$2"/*.deps.json "$2"/web.config "$2"/*.staticwebassets.endpoints.json
}

papers() {
  cp -r artifacts/publish/page artifacts/publish/leverage.html "$1"
  cp LICENSE NOTICE CHANGELOG.md SECURITY.md README.md "$1"
  mkdir -p "$1/notices" "$1/completion"
  cp src/Leverage.Package/notices/* "$1/notices"
  cp src/Leverage.Charts/Fonts/LICENSE.txt "$1/notices/fonts.txt"
  cp src/Leverage.Cli/About/leverage.{bash,zsh,fish,ps1} "$1/completion"
  dotnet run -c Release --project src/Leverage.Cli -- --man >"$1/leverage.1"
}

# A folder made for this very machine has to answer and to draw before it is called done.
try() {
  native "$1" || { echo "  not run here: made for another machine"; return; }
  local picture
  picture=$(mktemp --suffix .png)
  "$2/leverage" loosen 400Nm --bar 1200mm --chart "$picture" --force-write | grep -q 'Nut takes'
  [ -s "$picture" ] && rm "$picture"
  "$2/leverage-page" --help | grep -q -i page
}

mkdir -p artifacts/publish
page
for machine in "$@"; do
  folder=artifacts/publish/leverage-$version-$machine
  rm -rf "$folder" && mkdir -p "$folder"
  programs "$machine" "$folder"
  papers "$folder"
  echo "$folder: $(du -sm "$folder" | cut -f1) MB, as .tar.gz $(tar -C artifacts/publish -czf - "${folder##*/}" | wc -c | awk '{ printf "%.0f", $1 / 1e6 }') MB"
  (cd "$folder" && ls -l | awk 'NR > 1 && $5 > 1e6 { printf "  %-24s %6.1f MB\n", $NF, $5 / 1e6 }')
  try "$machine" "$folder"
done
