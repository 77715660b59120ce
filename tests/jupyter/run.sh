#!/usr/bin/env bash
# The kernel against Jupyter's own clients: installs it under a temporary prefix, runs the suites here, counts.
# tests/jupyter/run.sh [SUITE ...]: with every way to start (from the startup snapshot, without it) and to check (the
# compiler in the process, the native one), or those of START=snapshot|small|native.
set -uo pipefail
cd "$(dirname "$0")"
prefix=$(mktemp -d)
trap 'rm -rf "$prefix"' EXIT
node ../../src/launch/reckoner.mjs kernel install --prefix "$prefix" || { echo "0 passed, 1 failed"; exit 1; }
export JUPYTER_PATH="$prefix/share/jupyter"
export PYTHONDONTWRITEBYTECODE=1
passed=0 failed=0
# run NAME [VARIABLE=VALUE ...] -- SUITE ...
run() {
  echo "== kernel $1"
  shift
  local settings=()
  while [ "$1" != -- ]; do
    settings+=("$1")
    shift
  done
  shift
  env "${settings[@]}" /usr/bin/python3 -W ignore run_suites.py "$@" | tee "$prefix/count"
  read -r ok _ bad _ < <(tail -n 1 "$prefix/count" | grep -E '^[0-9]+ passed, [0-9]+ failed$' || echo "0 passed, 1 failed")
  passed=$((passed + ok)) failed=$((failed + bad))
}
starts=${START:-snapshot small native}
suites=("$@")
# Those that a start can make a difference to; installing and the console are tried once.
again=("${suites[@]:-test_conformance test_protocol test_interrupt test_lifecycle test_outputs}")
for start in $starts; do
  case $start in
    snapshot) run "from the startup snapshot" -- "${suites[@]}" ;;
    small) run "without the startup snapshot" RECKONER_SMALL_MEMORY=1 -- ${again[@]} ;;
    native) run "with the native type checker" RECKONER_CHECKER=native -- ${again[@]} ;;
  esac
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
