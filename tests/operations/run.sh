#!/usr/bin/env bash
# Runs three instances behind nginx on loopback, sends single requests and batches without a pause while each instance is
# stopped and started again, kills one in mid-batch, and proves that nothing is lost: every request is answered in the end
# with the same digest, every batch that has a summary is whole, and a batch without one is sent again.
# Usage: tests/operations/run.sh [--rounds <rolling restarts, 2 if absent>]. Needs nginx and curl.
set -euo pipefail
cd "$(dirname "$0")/../.."
rounds=2
while [ $# -gt 0 ]; do
    case $1 in
        --rounds) rounds=${2:?--rounds needs a number}; shift 2 ;;
        *) echo "Unknown option $1. Usage: tests/operations/run.sh [--rounds <number>]" >&2; exit 2 ;;
    esac
done
command -v nginx >/dev/null || { echo "nginx is missing: apt-get install nginx-light" >&2; exit 2; }

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
work=$(mktemp -d)
declare -a pids=(0 0 0) ports=()
nginx_pid=
trap 'exit 130' INT TERM

free_port() {
    local port
    while port=$((20000 + RANDOM % 20000)); do
        case " ${ports[*]} " in *" $port "*) continue ;; esac
        (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null || { echo "$port"; return; }
    done
}
for _ in 0 1 2 3; do ports+=("$(free_port)"); done
gateway="http://127.0.0.1:${ports[3]}"

echo "Building."
dotnet publish src/CalcService.Api --configuration Release --output "$work/app" >"$work/build.log" 2>&1 || { cat "$work/build.log"; exit 1; }

start() {
    Log__Level=Warning Shutdown__UnreadySeconds=1 ASPNETCORE_URLS="http://127.0.0.1:${ports[$1]}" dotnet "$work/app/CalcService.Api.dll" >>"$work/instance-$1.log" 2>&1 &
    pids[$1]=$!
    for _ in $(seq 300); do
        curl -fsS -o /dev/null "http://127.0.0.1:${ports[$1]}/health/ready" 2>/dev/null && return
        sleep 0.1
    done
    echo "Instance $1 did not become ready." >&2; exit 1
}
# Only what this script has started is stopped.
stop() {
    touch "$work/over"
    for pid in $nginx_pid "${pids[@]}"; do [ "$pid" = 0 ] || kill "$pid" 2>/dev/null || true; done
    wait 2>/dev/null || true
    rm -rf "$work"
}
trap stop EXIT
for i in 0 1 2; do start $i; done

sed -e "s/127.0.0.1:8081/127.0.0.1:${ports[0]}/; s/127.0.0.1:8082/127.0.0.1:${ports[1]}/; s/127.0.0.1:8083/127.0.0.1:${ports[2]}/; s/127.0.0.1:8080/127.0.0.1:${ports[3]}/" \
    -e "s|^http {|http {\n    client_body_temp_path $work/body; proxy_temp_path $work/proxy; fastcgi_temp_path $work/f; uwsgi_temp_path $work/u; scgi_temp_path $work/s;|" \
    docs/operations/nginx.conf >"$work/nginx.conf"
nginx -p "$work" -c "$work/nginx.conf" -g "daemon off; pid $work/nginx.pid;" >"$work/nginx.log" 2>&1 &
nginx_pid=$!
for _ in $(seq 50); do curl -fsS -o /dev/null "$gateway/health/ready" 2>/dev/null && break; sleep 0.1; done

# A request of the documentation; what it is answered is known before anything is stopped.
curl -fsS "$gateway/openapi/v1.json" >"$work/contract.json"
python3 - "$work" <<'PY'
import json, sys
work = sys.argv[1]
contract = json.load(open(work + "/contract.json"))
body = next(iter(contract["paths"]["/v1/pour-plans"]["post"]["requestBody"]["content"]["application/json"]["examples"].values()))["value"]
line = json.dumps(body)
open(work + "/single.json", "w").write(line)
open(work + "/batch.ndjson", "w").write((line + "\n") * 2000)
PY
digest_of() { grep -o '"resultDigest":"[^"]*"' "$1" | head -n 1; }
post() { curl -sS --max-time 120 -o "$3" -w '%{http_code}' -H 'content-type: '"$4" --data-binary "@$2" "$gateway$1" 2>>"$work/curl.log" || true; }
[ "$(post /v1/pour-plans "$work/single.json" "$work/expected.json" application/json)" = 200 ] || { echo "The first request was refused." >&2; cat "$work/expected.json" >&2; exit 1; }
expected=$(digest_of "$work/expected.json")
input="sha256:$(sha256sum "$work/batch.ndjson" | cut -d' ' -f1)"

# Each sender goes on until it is told that it is over; what it doesn't get at once it sends again.
singles() {
    local sent=0 again=0 lost=0
    while [ ! -e "$work/over" ]; do
        sent=$((sent + 1))
        local tries=0 status
        while status=$(post /v1/pour-plans "$work/single.json" "$work/single-$1.out" application/json); [ "$status" != 200 ]; do
            tries=$((tries + 1)); again=$((again + 1))
            [ $tries -lt 20 ] || { lost=$((lost + 1)); break; }
            sleep 0.2
        done
        [ "$status" != 200 ] || [ "$(digest_of "$work/single-$1.out")" = "$expected" ] || lost=$((lost + 1))
    done
    echo "$sent $again $lost" >"$work/singles-$1.count"
}
batches() {
    local sent=0 again=0 lost=0
    while [ ! -e "$work/over" ]; do
        sent=$((sent + 1))
        local tries=0
        while :; do
            : >"$work/batch-$1.out"
            post /v1/pour-plans/batch "$work/batch.ndjson" "$work/batch-$1.out" application/x-ndjson >/dev/null
            if tail -n 1 "$work/batch-$1.out" | grep -q '^{"summary":'; then
                # A summary is a promise: all lines, all answered, of exactly these bytes, each with the answer that is known.
                local end; end=$(tail -n 1 "$work/batch-$1.out")
                case $end in *'"lines":2000,"answered":2000,"rejected":0,"inputDigest":"'"$input"'"'*) ;; *) lost=$((lost + 1)); echo "false summary: $end" >>"$work/lost.log" ;; esac
                [ "$(grep -c "$expected" "$work/batch-$1.out")" = 2000 ] || { lost=$((lost + 1)); echo "lines differ" >>"$work/lost.log"; }
                break
            fi
            tries=$((tries + 1)); again=$((again + 1))
            [ $tries -lt 20 ] || { lost=$((lost + 1)); echo "batch never ended" >>"$work/lost.log"; break; }
            sleep 0.2
        done
    done
    echo "$sent $again $lost" >"$work/batches-$1.count"
}
singles 1 & senders=($!)
singles 2 & senders+=($!)
batches 1 & senders+=($!)

for round in $(seq "$rounds"); do
    for i in 0 1 2; do
        echo "Round $round: stopping instance $i and starting it again."
        kill -TERM "${pids[$i]}"; wait "${pids[$i]}" || true
        start $i
    done
done
echo "Killing an instance in the middle of what it does."
for i in 0 1 2; do kill -KILL "${pids[$i]}"; wait "${pids[$i]}" 2>/dev/null || true; sleep 1; start $i; done
sleep 2
touch "$work/over"
wait "${senders[@]}"

read -r sent again lost < <(cat "$work"/singles-*.count | awk '{ s += $1; a += $2; l += $3 } END { print s, a, l }')
read -r batch_sent batch_again batch_lost <"$work/batches-1.count"
cat "$work/lost.log" 2>/dev/null || true
echo "single requests: $sent sent, $again sent again by the client, $lost lost"
echo "batches of 2000 lines: $batch_sent sent, $batch_again without a summary and sent again, $batch_lost lost"
[ "$sent" -gt 0 ] && [ "$batch_sent" -gt 0 ] && [ "$lost" -eq 0 ] && [ "$batch_lost" -eq 0 ]
