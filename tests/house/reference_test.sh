#!/usr/bin/env bash
# The independent solver shares nothing with the engine but the plain numbers of a board: it includes neither the engine
# nor the engine's device laws. phase_charges integrates the engine's own waveform, and the tests compare the two.
tree=$1
. "$(dirname "$0")/expect.sh"

solver=()
for source in "$tree"/tests/reference/*.{h,cpp}; do
  case ${source##*/} in
    phase_charges.* | *_test.cpp) ;;
    *) solver+=("$source") ;;
  esac
done
expect "there is a solver" test "${#solver[@]}" -ge 5
run grep -nE '#include "core/(engine|study|devices/laws\.h)' "${solver[@]}"
expect "it includes no engine and no law of the engine's" test "$status" = 1
run grep -hoE '#include "core/[^"]*"' "${solver[@]}"
expect "all that it takes from the product is the board" test "$(sort -u <<<"$out")" = '#include "core/devices/board.h"'
finish
