#!/usr/bin/env bash
# A tree under sanitizers, one or several, configures; all of the core is watched then but the vector code.
tree=$1
. "$(dirname "$0")/expect.sh"

flags_of() { grep -oE '"command": .*'"$1"'"' "$scratch/$sanitizers/compile_commands.json"; }
for sanitizers in address,undefined thread; do
  run cmake -S "$tree" -B "$scratch/$sanitizers" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DBLINKWRIGHT_SANITIZE=$sanitizers \
    -DBLINKWRIGHT_WINDOW=OFF -DBLINKWRIGHT_TESTS=OFF -DBLINKWRIGHT_BENCHMARKS=OFF
  expect "it configures under $sanitizers" test "$status" = 0
  expect_text "the core is watched" "$(flags_of core/study/study.cpp)" "-fsanitize=$sanitizers"
  expect_no_text "all of it" "$(flags_of core/study/study.cpp)" "-fno-sanitize=all"
  expect_text "the vector code is not" "$(flags_of core/engine/lanes_avx2.cpp)" "-fno-sanitize=all"
done
finish
