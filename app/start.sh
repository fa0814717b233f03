#!/usr/bin/env bash
# Builds Blinkwright where that is needed, and opens its window:
#
#   bash app/start.sh [FILE]        FILE is samples/mole-light.blinkwright if none is named
#
# On Debian 12 the first start installs the packages that are missing (by name, with apt-get) and builds into
# build/release. A later start only checks that all is up to date. Works from any folder.
set -euo pipefail

caller=$PWD
tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
folder=$tree/build/release
. "$tree/resources/build/packages.sh"

case "${1-}" in
  -h | --help)
    printf 'Usage: bash app/start.sh [FILE]\nInstalls what is missing, builds, and opens the window on FILE.\n'
    exit 0
    ;;
  -*)
    printf 'start.sh knows no option %s. Usage: bash app/start.sh [FILE]\n' "$1" >&2
    exit 2
    ;;
esac
if (($# > 1)); then
  printf 'start.sh opens one file; %d were named. Usage: bash app/start.sh [FILE]\n' $# >&2
  exit 2
fi
file=${1-$tree/samples/mole-light.blinkwright}
[[ "$file" == /* ]] || file=$caller/$file
if [[ ! -f "$file" ]]; then
  printf 'There is no file %s.\n' "$file" >&2
  exit 2
fi

packages=("${BLINKWRIGHT_BUILD_PACKAGES[@]}")
if [[ -z "${DISPLAY-}" && -n "${WAYLAND_DISPLAY-}" ]]; then
  packages+=("${BLINKWRIGHT_WAYLAND_PACKAGES[@]}")
fi
blinkwright_need "to build and open the window" "${packages[@]}"

# Ninja configures again by itself where a CMake file or the list of sources has changed.
if ! blinkwright_configured "$tree" "$folder"; then
  blinkwright_configure "$tree" "$folder" -DCMAKE_BUILD_TYPE=Release \
    -DBLINKWRIGHT_WINDOW=ON -DBLINKWRIGHT_TESTS=OFF -DBLINKWRIGHT_BENCHMARKS=OFF
fi
ninja -C "$folder" blinkwright

program=$folder/bin/blinkwright
if [[ -z "${DISPLAY-}" && -z "${WAYLAND_DISPLAY-}" && -z "${QT_QPA_PLATFORM-}" ]]; then
  {
    printf 'Built, but there is no display to open a window on: neither DISPLAY nor WAYLAND_DISPLAY is set.\n'
    printf 'Start this script again from a desktop session. What needs no display works here:\n'
    printf '  %q readings %q\n' "$program" "$file"
    printf '  %q check %q\n' "$program" "$file"
    printf '  %q export %q curves.png\n' "$program" "$file"
  } >&2
  exit 1
fi
cd "$caller"
exec "$program" "$file"
