#!/usr/bin/env bash
# Mutates one folder of the engine, runs the folder's own tests, and tells which mutants none of them kills.
# Usage: tests/mutation/run.sh <folder> [options of Stryker.NET, such as --mutate '**/Proof/LoadChecks.cs']
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
folder=${1:?a folder of src/CalcService.Engine, such as Proof}
shift

# The tests of a folder: its own, and of those that stand on it as few as hold it. Without random cases and relations:
# what kills a mutant shall kill it every time.
case $folder in
    Findings) tests="Findings Proof Releases" ;;
    Sockets) tests="Sockets Matching Pouring.TakeOff" ;;
    Compounds) tests="Compounds Releases Curing.ObservedGel Curing.CureSchedule Pouring.Lot Pouring.Mix" ;;
    *) tests=$folder ;;
esac
filter=$(printf '|FullyQualifiedName~Tests.%s' $tests)

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
output=$root/.artifacts/mutation
tool=$output/tool
if [ ! -x "$tool/dotnet-stryker" ]; then
    dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tool"
fi

config=$output/$folder.json
sed -e "s/@folder@/$folder/" -e "s/@filter@/(${filter#|})\&FullyQualifiedName!~PropertyTests/" "$here/stryker-config.json" > "$config"

cd "$here"
"$tool/dotnet-stryker" --skip-version-check --config-file "$config" --output "$output/$folder" "$@"
