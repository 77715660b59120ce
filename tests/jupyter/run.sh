#!/usr/bin/env bash
# The kernel against Jupyter's own clients: installs it under a temporary prefix, runs every suite here, counts.
# Takes the names of suites to run fewer of them: tests/jupyter/run.sh test_interrupt
set -uo pipefail
cd "$(dirname "$0")"
prefix=$(mktemp -d)
trap 'rm -rf "$prefix"' EXIT
node ../../src/launch/reckoner.mjs kernel install --prefix "$prefix" || { echo "0 passed, 1 failed"; exit 1; }
export JUPYTER_PATH="$prefix/share/jupyter"
export PYTHONDONTWRITEBYTECODE=1
/usr/bin/python3 -W ignore run_suites.py "$@"
