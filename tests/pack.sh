#!/usr/bin/env bash
# Packs the library and the tool into artifacts/packages and tries both as a stranger would, in an empty folder: the
# tool answers the first example of the README and draws; the README's library example compiles against the package
# and prints what the README says. Asks no registry for anything: what the packages need was restored before.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
packages=$PWD/artifacts/packages
version=$(sed -n 's|.*<Version>\(.*\)</Version>.*|\1|p' Directory.Build.props)
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT
die() { echo "pack: $*" >&2; exit 1; }

pack() {
  rm -rf "$packages"
  dotnet pack src/Leverage.Package -c Release -v q -o "$packages"
  dotnet pack src/Leverage.Cli -c Release -v q -o "$packages"
  ls -l "$packages" | awk 'NR > 1 { printf "%s %.1f MB\n", $NF, $5 / 1e6 }'
}

# What stands between a line that begins with $1 and the next fence.
block() { awk -v start="$1" 'found && /^```$/ { exit } found { print } index($0, start) == 1 { found = 1 }' README.md; }

# The tool, installed from the packed file into an empty place.
try_tool() {
  local tool=$place/tools/leverage example
  dotnet tool install Leverage.Tool --version "$version" --source "$packages" --tool-path "$place/tools" >/dev/null
  [ "$("$tool" --version)" = "$version" ] || die "the tool says it is $("$tool" --version), not $version"
  example=$(grep -m1 '^\$ leverage ' README.md)
  (cd "$place" && PATH=$place/tools:$PATH bash -c "${example#\$ }") >"$place/answer"
  block "$example" | diff - "$place/answer" || die "the tool answers otherwise than the README"
  "$tool" slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --chart "$place/slip.png" >/dev/null
  [ -s "$place/slip.png" ] || die "the tool drew nothing"
  local held=$place/tools/.store/leverage.tool/$version/leverage.tool/$version file
  for file in LICENSE NOTICE icon.png tool.md notices/drawing.txt notices/fonts.txt; do
    [ -s "$held/$file" ] || die "the tool's package lacks $file"
  done
}

# The library, used by a project that knows nothing of this repository.
try_library() {
  local project=$place/bar cache=${NUGET_PACKAGES:-$HOME/.nuget/packages} file
  mkdir "$project"
  block '```csharp' >"$project/Program.cs"
  cat >"$project/bar.csproj" <<XML
<Project Sdk="Microsoft.NET.Sdk">
  <PropertyGroup>
    <OutputType>Exe</OutputType>
    <TargetFramework>net10.0</TargetFramework>
    <ImplicitUsings>enable</ImplicitUsings>
    <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
    <RestoreFallbackFolders>$cache</RestoreFallbackFolders>
    <RestoreSources>$packages</RestoreSources>
    <RestorePackagesPath>$place/cache</RestorePackagesPath>
    <NuGetAudit>false</NuGetAudit>
  </PropertyGroup>
  <ItemGroup>
    <PackageReference Include="Leverage" Version="[$version]" />
  </ItemGroup>
</Project>
XML
  dotnet build "$project" -v q -o "$project/out" >"$place/build.log" || { cat "$place/build.log"; die "the library example does not build"; }
  dotnet "$project/out/bar.dll" >"$place/printed"
  block '```text' | diff - "$place/printed" || die "the library example prints otherwise than the README"
  for file in LICENSE icon.png library.md lib/net10.0/Leverage.Core.xml lib/net10.0/Leverage.Workshop.xml; do
    [ -s "$place/cache/leverage/$version/$file" ] || die "the library's package lacks $file"
  done
  cmp "$place/cache/leverage/$version/lib/net10.0/Leverage.Core.dll" src/Leverage.Core/bin/Release/net10.0/Leverage.Core.dll
}

# The library's package must hand on every package its two projects use.
same_dependencies() {
  names() { grep -ho 'PackageReference Include="[^"]*"' "$@" | sort -u; }
  diff <(names src/Leverage.Core/*.csproj src/Leverage.Workshop/*.csproj) <(names src/Leverage.Package/*.csproj) ||
    die "src/Leverage.Package names other packages than Core and Workshop use"
}

same_dependencies
pack
try_tool
try_library
[ "$(ls "$packages" | wc -l)" -eq 3 ] || die "three files were to be packed"
echo "pack: both packages of $version work"
