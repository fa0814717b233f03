#!/usr/bin/env bash
# Builds the tests with the address and undefined-behaviour sanitizers into build/sanitize and runs them:
#
#   bash tests/sanitize.sh [CTEST OPTION...]             the core: engine, studies, readers
#   bash tests/sanitize.sh --window [CTEST OPTION...]    widgets and window as well, which takes several times as long
#
# What the reference solver and the real display show, the usual run shows; they are left out here. So are the tests
# that run thousands of circuits or boards, but for a share of them.
set -euo pipefail

tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
folder=$tree/build/sanitize
. "$tree/resources/build/packages.sh"
window=OFF
targets=(core_tests)
if [[ "${1-}" == --window ]]; then
  shift
  window=ON
  targets+=(widgets_tests app_tests blinkwright crash_child)
fi

blinkwright_need "to build and run the tests" "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_TEST_PACKAGES[@]}"
blinkwright_configure "$tree" "$folder" -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-O1" \
  -DBLINKWRIGHT_SANITIZE=address,undefined -DBLINKWRIGHT_BUNDLES=ON \
  -DBLINKWRIGHT_WINDOW=$window -DBLINKWRIGHT_TESTS=ON -DBLINKWRIGHT_BENCHMARKS=OFF
ninja -C "$folder" -j2 "${targets[@]}"

export LOCPATH=$folder/locales
if [[ ! -d "$LOCPATH/de_DE.UTF-8" ]]; then
  mkdir -p "$LOCPATH"
  localedef -i de_DE -f UTF-8 "$LOCPATH/de_DE.UTF-8"
fi

export QT_QPA_PLATFORM=offscreen
# Leaks are looked for in the core. What Qt and the font library keep for good is not ours; the test of long use watches
# what the window keeps.
leaks=1
[[ $window == OFF ]] || leaks=0
export ASAN_OPTIONS=detect_leaks=$leaks:strict_string_checks=1 UBSAN_OPTIONS=print_stacktrace=1
export BLINKWRIGHT_CIRCUITS=${BLINKWRIGHT_CIRCUITS-200}
exec ctest --test-dir "$folder" --output-on-failure -j2 --timeout 600 \
  -E '^(House|Display|Fuzz|Scaled|reference_tests)|TheWorstCase|PlantedFaults|EditSequences' "$@"
