#!/usr/bin/env bash
# Installs what the tests need, builds everything into build/check, and runs every test without a display:
#
#   bash tests/run.sh [CTEST OPTION...]        e.g. bash tests/run.sh -R Quantity
#
# Ends with ctest's own summary and its exit code. Window pictures are written to build/pictures. With
# BLINKWRIGHT_SANITIZED_CORE=ON in the environment, the core is built a second time under the address and
# undefined-behaviour sanitizers, and its tests run over that as well.
set -euo pipefail

tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
folder=$tree/build/check
. "$tree/resources/build/packages.sh"

blinkwright_need "to build and run the tests" "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_TEST_PACKAGES[@]}" \
  "${BLINKWRIGHT_FUZZ_PACKAGES[@]}"

# Optimised, but with assertions alive: a broken promise must fail a test.
blinkwright_configure "$tree" "$folder" -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE=-O2 \
  -DBLINKWRIGHT_BUNDLES=ON -DBLINKWRIGHT_SANITIZED_CORE="${BLINKWRIGHT_SANITIZED_CORE-OFF}" \
  -DBLINKWRIGHT_WINDOW=ON -DBLINKWRIGHT_TESTS=ON -DBLINKWRIGHT_BENCHMARKS=ON
ninja -C "$folder" -j2

# A locale with a decimal comma, for this run alone: numbers in files must not follow it.
export LOCPATH=$folder/locales
if [[ ! -d "$LOCPATH/de_DE.UTF-8" ]]; then
  mkdir -p "$LOCPATH"
  localedef -i de_DE -f UTF-8 "$LOCPATH/de_DE.UTF-8"
fi

export QT_QPA_PLATFORM=offscreen
exec ctest --test-dir "$folder" --output-on-failure -j2 "$@"
