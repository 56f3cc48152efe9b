#!/usr/bin/env bash
# Generates three clients from the committed OpenAPI document, compiles them, and lets each call the service.
# Usage: tests/clients/run.sh [--port <loopback port; a free one if absent>]
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
cd "$root"

port=
while [ $# -gt 0 ]; do
    case $1 in
        --port) port=${2:?--port needs a number}; shift 2 ;;
        *) echo "Unknown option $1. Usage: tests/clients/run.sh [--port <number>]" >&2; exit 2 ;;
    esac
done

# Compiler servers would outlive this script; the tools need not look for updates or report.
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1 UseSharedCompilation=false
export KIOTA_OFFLINE_ENABLED=true KIOTA_CLI_TELEMETRY_OPTOUT=1
document=docs/openapi/v1.json
log=$(mktemp)
service=

stop() {
    if [ -n "$service" ] && kill -TERM "$service" 2>/dev/null; then
        for _ in $(seq 100); do
            kill -0 "$service" 2>/dev/null || break
            sleep 0.1
        done
        kill -KILL "$service" 2>/dev/null || true
        wait "$service" 2>/dev/null || true
    fi
    rm -f "$log"
}
trap stop EXIT
trap 'exit 130' INT TERM

# A step is quiet unless it fails, and never hangs.
step() {
    echo "$1"
    shift
    timeout --kill-after=10 600 "$@" >"$log" 2>&1 || { cat "$log" >&2; exit 1; }
}

step "Restore the generators" dotnet tool restore
step "Restore the packages of the TypeScript client" npm ci --prefix "$here/typescript"

step "Generate with Kiota" dotnet kiota generate --openapi "$document" --output "$here/kiota/generated" --clean-output \
    --language CSharp --namespace-name CalcService.Client.Kiota --class-name CalcClient --exclude-backward-compatible --log-level Warning \
    --serializer Microsoft.Kiota.Serialization.Json.JsonSerializationWriterFactory \
    --deserializer Microsoft.Kiota.Serialization.Json.JsonParseNodeFactory
# Newtonsoft.Json, because NSwag's System.Text.Json writes the C# names of enums, not their words.
step "Generate with NSwag" dotnet nswag openapi2csclient "/input:$document" "/output:$here/nswag/generated/CalcClient.cs" \
    /namespace:CalcService.Client.NSwag /classname:CalcClient /JsonLibrary:NewtonsoftJson /DateType:System.DateOnly /UseBaseUrl:false \
    /GenerateNullableReferenceTypes:true /GenerateOptionalPropertiesAsNullable:true /GenerateOptionalParameters:true
step "Generate with openapi-typescript" "$here/typescript/node_modules/.bin/openapi-typescript" "$document" --output "$here/typescript/generated/v1.ts"

step "Compile the Kiota client" dotnet build "$here/kiota" --configuration Release
step "Compile the NSwag client" dotnet build "$here/nswag" --configuration Release
step "Compile the TypeScript client" "$here/typescript/node_modules/.bin/tsc" --project "$here/typescript"
step "Build the service" dotnet build src/CalcService.Api --configuration Release

target() { dotnet msbuild "$1" -property:Configuration=Release -getProperty:TargetPath; }
if [ -z "$port" ]; then
    port=$(node -e 'const s = require("net").createServer().listen(0, "127.0.0.1", () => { console.log(s.address().port); s.close(); })')
fi
address=http://127.0.0.1:$port
if (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null; then
    echo "Port $port is taken." >&2
    exit 1
fi
echo "Start the service at $address"
dotnet "$(target src/CalcService.Api)" --urls "$address" >"$log" 2>&1 &
service=$!
for _ in $(seq 150); do
    ready=$(curl --silent --max-time 2 --output /dev/null --write-out '%{http_code}' "$address/health/ready" || true)
    [ "$ready" = 200 ] && break
    kill -0 "$service" 2>/dev/null || break
    sleep 0.2
done
if [ "$ready" != 200 ]; then
    cat "$log" >&2
    echo "The service did not become ready." >&2
    exit 1
fi

status=0
timeout 120 dotnet "$(target "$here/kiota")" "$address" "$document" || status=1
timeout 120 dotnet "$(target "$here/nswag")" "$address" "$document" || status=1
timeout 120 node "$here/typescript/generated/js/src/main.js" "$address" "$document" || status=1
exit "$status"
