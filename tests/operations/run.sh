#!/usr/bin/env bash
# Restarts instances behind nginx, one after the other, while requests come, and shows that nothing is lost; then plays clients that
# want to take an instance from others, and shows that they can't (about a quarter of an hour in all).
# Usage: tests/operations/run.sh [--instances <number; 3 if absent>] [--rounds <number; 1 if absent>]
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
cd "$root"

instances=3
rounds=1
while [ $# -gt 0 ]; do
    case $1 in
        --instances) instances=${2:?--instances needs a number}; shift 2 ;;
        --rounds) rounds=${2:?--rounds needs a number}; shift 2 ;;
        *) echo "Unknown option $1. Usage: tests/operations/run.sh [--instances <number>] [--rounds <number>]" >&2; exit 2 ;;
    esac
done

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1 UseSharedCompilation=false
PATH=$PATH:/usr/sbin
work=$(mktemp -d)
# Started by root, nginx works as another user, who keeps large bodies in a folder below.
chmod 711 "$work"
pids=()
nginx=
load=

# Ends what this script started, and nothing else.
stop() {
    for pid in $load $nginx "${pids[@]}"; do
        kill -TERM "$pid" 2>/dev/null || true
    done
    for pid in $load $nginx "${pids[@]}"; do
        wait "$pid" 2>/dev/null || true
    done
    rm -rf "$work"
}
trap stop EXIT
trap 'exit 130' INT TERM

fail() {
    echo "$1" >&2
    exit 1
}

if ! command -v nginx >/dev/null; then
    echo "Install nginx"
    apt-get install -y nginx-light >"$work/apt.log" 2>&1 || { cat "$work/apt.log" >&2; exit 1; }
fi

echo "Build the service"
dotnet build src/CalcService.Api --configuration Release >"$work/build.log" 2>&1 || { cat "$work/build.log" >&2; exit 1; }
service=$(dotnet msbuild src/CalcService.Api -property:Configuration=Release -getProperty:TargetPath)

# All at once, so that no two are the same.
mapfile -t ports < <(node -e '
    const servers = Array.from({ length: Number(process.argv[1]) }, () => require("net").createServer().listen(0, "127.0.0.1"));
    setTimeout(() => servers.forEach(one => { console.log(one.address().port); one.close(); }), 200);' $((instances + 1)))
front=${ports[$instances]}

start() {
    # Without the sender's input: whoever else holds it open would keep the sender going.
    dotnet "$service" --urls "http://127.0.0.1:${ports[$1]}" --Log:Level=Warning >>"$work/instance-$1.log" 2>&1 9>&- &
    pids[$1]=$!
}

await_ready() {
    for _ in $(seq 300); do
        [ "$(curl --silent --max-time 2 --output /dev/null --write-out '%{http_code}' "http://127.0.0.1:${ports[$1]}/health/ready" || true)" = 200 ] && return
        kill -0 "${pids[$1]}" 2>/dev/null || break
        sleep 0.2
    done
    cat "$work/instance-$1.log" >&2
    fail "Instance $1 did not become ready."
}

echo "Start $instances instances and nginx"
for number in $(seq 0 $((instances - 1))); do start "$number"; done
for number in $(seq 0 $((instances - 1))); do await_ready "$number"; done
{
    echo "daemon off; worker_processes 1; pid $work/nginx.pid; events { worker_connections 512; }"
    echo "http { access_log off;"
    for kind in client_body proxy fastcgi uwsgi scgi; do echo "${kind}_temp_path $work/$kind;"; done
    echo "upstream calcservice {"
    for number in $(seq 0 $((instances - 1))); do echo "server 127.0.0.1:${ports[$number]} max_fails=3 fail_timeout=2s;"; done
    echo "keepalive 32; }"
    echo "server { listen 127.0.0.1:$front; include $root/docs/operations/nginx-locations.conf; } }"
} >"$work/nginx.conf"
nginx -e "$work/nginx.log" -c "$work/nginx.conf" &
nginx=$!

# What the locations promise to refuse, and what they must let through.
gives() {
    local expected=$1 what=$2 found
    shift 2
    found=$(curl --silent --max-time 60 --output /dev/null --write-out '%{http_code}' "$@" || true)
    [ "$found" = "$expected" ] || fail "$what gives $found instead of $expected."
}
for _ in $(seq 50); do
    [ "$(curl --silent --output /dev/null --write-out '%{http_code}' "http://127.0.0.1:$front/v1/build" || true)" = 200 ] && break
    sleep 0.2
done
json=(--header "Content-Type: application/json")
lines=(--header "Content-Type: application/x-ndjson")
plans=http://127.0.0.1:$front/v1/pour-plans
for mebibytes in 1 4 8; do
    head --bytes=$((mebibytes << 20)) /dev/zero | tr '\0' '\n' >"$work/$mebibytes"
    { cat "$work/$mebibytes"; echo; } >"$work/above-$mebibytes"
done
printf '{}' | gzip >"$work/packed"
# Blank lines above the limit of lines: the batch is read and answered, which is all that counts here.
gives 200 "A batch of 8 MiB" "${lines[@]}" --data-binary "@$work/8" "$plans/batch"
gives 413 "A batch above 8 MiB" "${lines[@]}" --data-binary "@$work/above-8" "$plans/batch"
gives 413 "A batch above 8 MiB that doesn't say so" "${lines[@]}" --header "Transfer-Encoding: chunked" --data-binary "@$work/above-8" "$plans/batch"
gives 415 "A packed batch" "${lines[@]}" --header "Content-Encoding: gzip" --data-binary "@$work/packed" "$plans/batch"
gives 422 "A packed request" "${json[@]}" --header "Content-Encoding: gzip" --data-binary "@$work/packed" "$plans"
gives 413 "A request above 1 MiB" "${json[@]}" --data-binary "@$work/above-1" "$plans"
gives 400 "A verification of 4 MiB of nothing" "${json[@]}" --data-binary "@$work/4" "http://127.0.0.1:$front/v1/record-verifications"
gives 413 "A verification above 4 MiB" "${json[@]}" --data-binary "@$work/above-4" "http://127.0.0.1:$front/v1/record-verifications"
gives 404 "A probe from outside" "http://127.0.0.1:$front/health/live"
echo "nginx refuses what it should, and nothing else"

# Sends until its standard input ends; its exit code says whether anything was lost.
mkfifo "$work/until"
node "$here/load.mjs" "http://127.0.0.1:$front" docs/openapi/v1.json <"$work/until" &
load=$!
exec 9>"$work/until"
sleep 5
for round in $(seq "$rounds"); do
    for number in $(seq 0 $((instances - 1))); do
        kill -0 "$load" 2>/dev/null || fail "The sender has ended too soon."
        kill -TERM "${pids[$number]}"
        ended=0
        wait "${pids[$number]}" || ended=$?
        [ "$ended" -eq 0 ] || fail "Instance $number ended with $ended."
        start "$number"
        await_ready "$number"
        echo "Round $round: instance $number has restarted"
        sleep 3
    done
done
exec 9>&-
status=0
wait "$load" || status=$?
load=
if [ "$status" -ne 0 ]; then
    tail -n 20 "$work/nginx.log" >&2
    exit "$status"
fi

echo "Attacks: what, how many tries, how many did harm"
node "$here/attacks.mjs" "$service" docs/openapi/v1.json
