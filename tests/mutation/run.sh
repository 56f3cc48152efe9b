#!/usr/bin/env bash
# Mutates the rules' code of the engine and tells which mutants no test kills.
# Usage: tests/mutation/run.sh [options of Stryker.NET, such as --mutate '**/Proof/*.cs']
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
tool=$root/.artifacts/mutation/tool
if [ ! -x "$tool/dotnet-stryker" ]; then
    dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tool"
fi

cd "$here"
"$tool/dotnet-stryker" --skip-version-check --output "$root/.artifacts/mutation" "$@"
