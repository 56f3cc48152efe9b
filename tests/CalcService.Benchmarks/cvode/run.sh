#!/bin/sh
# The slice by CVODE: on the nodes and at the tolerance of the engine's slice, at a tolerance that brings it as near, and finely. Needs gcc and Debian's libsundials-dev.
set -eu
cd "$(dirname "$0")"
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
gcc -O2 -std=gnu11 -o "$out/slice" slice.c -lsundials_cvode -lsundials_nvecserial -lsundials_sunlinsolband -lsundials_sunmatrixband -lm
echo "as the engine divides it:"
"$out/slice" 24 3 .1 5e-4 200
echo "as near to the truth as the engine comes with that:"
"$out/slice" 24 3 5e-4 5e-6 200
echo "fine:"
"$out/slice" 640 48 1e-5 1e-8 1
