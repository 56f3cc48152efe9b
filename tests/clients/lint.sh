#!/usr/bin/env bash
# Lints the committed OpenAPI document and the Dockerfile. Warnings fail.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
cd "$here/../.."
tools=$here/lint/node_modules/.bin

timeout --kill-after=10 300 npm ci --prefix "$here/lint" --loglevel=error

status=0
timeout --kill-after=10 120 "$tools/spectral" lint docs/openapi/v1.json --ruleset .spectral.yaml --fail-severity warn || status=1
if [ -f Dockerfile ]; then
    # Its exit code is the number of issues.
    timeout --kill-after=10 60 "$tools/dockerfilelint" Dockerfile || status=1
fi
exit "$status"
