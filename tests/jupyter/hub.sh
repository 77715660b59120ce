#!/usr/bin/env bash
# The kernel under JupyterHub: two users, each with a server and a kernel, at once. Beside the suites because it installs
# more: JupyterHub from Debian, and its proxy from npm (Debian's does not run on this Node).
set -euo pipefail
cd "$(dirname "$0")"
command -v jupyterhub >/dev/null || {
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends jupyterhub jupyter-notebook python3-ipykernel >/dev/null
}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
npm install --silent --no-audit --no-fund --no-save --prefix "$folder/proxy" configurable-http-proxy@4.6.3
node ../../src/launch/reckoner.mjs kernel install --prefix "$folder/shared"
PYTHONDONTWRITEBYTECODE=1 /usr/bin/python3 -W ignore hub.py "$folder"
