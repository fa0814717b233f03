#!/usr/bin/env bash
# Runs clang-tidy with the tree's .clang-tidy over core, widgets and app, two sources at a time:
#
#   bash tests/tidy.sh [FILE...]     all sources, or those named; a folder stands for what is in it
#
# Prints each finding once and ends with 1 if there is any. Builds nothing: build/tidy is only configured, to know how each
# source is compiled.
set -euo pipefail

tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
folder=$tree/build/tidy
. "$tree/resources/build/packages.sh"

blinkwright_need "to run clang-tidy" "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_TIDY_PACKAGES[@]}"

named=()
for name in "$@"; do named+=("$(realpath -e -- "$name")"); done
((${#named[@]})) || named=("$tree/core" "$tree/widgets" "$tree/app")
mapfile -t sources < <(find "${named[@]}" -name '*.cpp' | sort)
if ((!${#sources[@]})); then
  printf 'No sources there: %s\n' "$*" >&2
  exit 1
fi

# With assertions, so that it knows what is promised; without what g++ alone can read.
blinkwright_configure "$tree" "$folder" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON \
  -DBLINKWRIGHT_WINDOW=ON -DBLINKWRIGHT_TESTS=OFF -DBLINKWRIGHT_BENCHMARKS=OFF

# The findings go to standard output, where there are none it stays empty. Why it would not run at all goes to standard
# error, among counts of no use.
tidy() {
  local errors findings status=0
  errors=$(mktemp)
  findings=$(clang-tidy -p "$folder" --quiet --extra-arg=-Wno-unknown-warning-option "$1" 2>"$errors") || status=1
  [[ -z "$findings" ]] || status=1
  ((!status)) || printf '%s\n' "${findings:-$(<"$errors")}"
  rm -f "$errors"
  return $status
}
export -f tidy
export folder

# What is found in a header is found again with each source that includes it.
once='BEGIN { shown = 1 } /^.+:[0-9]+:[0-9]+: (warning|error): / { shown = !seen[$0]++ } shown { print; fflush() }'
if ! printf '%s\0' "${sources[@]}" | xargs -0 -P2 -n1 bash -c 'tidy "$1"' tidy | awk "$once" | sed -u "s|^$tree/||"; then
  exit 1
fi
printf 'Nothing found in %d sources.\n' "${#sources[@]}"
