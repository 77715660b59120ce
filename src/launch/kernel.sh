#!/bin/sh
# Starts the kernel for Jupyter: kernel.sh NODE FOLDER-OF-THE-BUILT-KERNEL CONNECTION-FILE [NODE'S OPTIONS ...]
# From the startup snapshot if this very Node made it under these options (its inode and size say so), else without it;
# with RECKONER_SMALL_MEMORY set always without it, and in as little
# memory as V8 can. The shell is gone once Node runs, so the process keeps its number.
node=$1 folder=$2 connection=$3
shift 3
made_by() {
  set -- $(ls -Lin "$node" 2>/dev/null)
  echo "$1 $6"
}
if [ -z "$NODE_OPTIONS$RECKONER_SMALL_MEMORY" ] && [ -f "$folder/snapshot.blob" ] && [ "$(made_by) $*" = "$(cat "$folder/snapshot.key" 2>/dev/null)" ]; then
  exec "$node" "$@" --snapshot-blob "$folder/snapshot.blob" "$folder/main.js" --connection "$connection"
fi
exec "$node" "$@" ${RECKONER_SMALL_MEMORY:+--optimize-for-size} "$folder/main.js" --connection "$connection"
