#!/usr/bin/env bash
# Runs a program in a display of its own with a window manager, and takes both away again:
#
#   bash tests/display/with_display.sh PROGRAM [ARGUMENT...]
#
# The X server finds a free display number by itself. Ends with the program's exit code; with 77 where the display
# cannot be had, which ctest counts as skipped.
set -uo pipefail

for tool in Xvfb openbox xdotool; do
  command -v "$tool" >/dev/null || { printf 'There is no %s here.\n' "$tool" >&2; exit 77; }
done

scratch=$(mktemp -d)
server='' manager=''
finish() {
  [[ -n "$manager" ]] && kill "$manager" 2>/dev/null && wait "$manager" 2>/dev/null
  [[ -n "$server" ]] && kill "$server" 2>/dev/null && wait "$server" 2>/dev/null
  rm -rf "$scratch"
}
trap finish EXIT
trap 'exit 130' INT TERM

# soon COMMAND...: tries for ten seconds at most.
soon() {
  local tries
  for ((tries = 0; tries < 100; ++tries)); do
    "$@" >/dev/null 2>&1 && return 0
    sleep 0.1
  done
  return 1
}

Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>"$scratch/number" 2>"$scratch/server.log" &
server=$!
soon grep -q . "$scratch/number" || { cat "$scratch/server.log" >&2; exit 77; }
display=:$(<"$scratch/number")
export DISPLAY=$display HOME=$scratch XDG_CONFIG_HOME=$scratch/config XDG_RUNTIME_DIR=$scratch
unset WAYLAND_DISPLAY XAUTHORITY

openbox --sm-disable >"$scratch/manager.log" 2>&1 &
manager=$!
# The window manager is there once the root window names it.
soon xdotool get_desktop || { cat "$scratch/manager.log" >&2; exit 77; }

QT_QPA_PLATFORM=xcb timeout 90 "$@"
