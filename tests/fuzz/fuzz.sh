#!/usr/bin/env bash
# Builds the fuzz targets with clang into build/fuzz and runs each for a time:
#
#   bash tests/fuzz/fuzz.sh [SECONDS [TARGET...]]        10 seconds each if nothing is said
#
# Starts from the seeds in tests/fuzz/seeds and the samples. What is found to be new stays in build/fuzz/corpus. No crash,
# no input that takes longer than a second, no more than 1 GiB.
set -euo pipefail

tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd -P)
folder=$tree/build/fuzz
. "$tree/resources/build/packages.sh"
seconds=${1-10}
shift || true
targets=("$@")
((${#targets[@]})) || targets=(circuit record quantity)

# As one of the tests it installs nothing.
if [[ -n "${BLINKWRIGHT_AS_A_TEST-}" ]] && ! command -v clang++ >/dev/null; then exit 77; fi
blinkwright_need "to fuzz" "${BLINKWRIGHT_FUZZ_PACKAGES[@]}"
cmake -S "$tree/tests/fuzz" -B "$folder" -G Ninja -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=None >/dev/null
ninja -C "$folder" -j2 >/dev/null

declare -A longest=([circuit]=65536 [record]=16384 [quantity]=64)
for target in "${targets[@]}"; do
  mkdir -p "$folder/corpus/$target" "$folder/found"
  seeds=("$tree/tests/fuzz/seeds/$target")
  [[ $target == quantity ]] || seeds+=("$tree/samples")
  if ! "$folder/fuzz_$target" -max_total_time="$seconds" -timeout=1 -rss_limit_mb=1024 -max_len="${longest[$target]}" \
    -artifact_prefix="$folder/found/$target-" -print_final_stats=1 \
    "$folder/corpus/$target" "${seeds[@]}" >"$folder/$target.log" 2>&1; then
    tail -60 "$folder/$target.log" >&2
    printf 'fuzz_%s found something; its input is in %s\n' "$target" "$folder/found" >&2
    exit 1
  fi
  printf '%s: %s executions, nothing found\n' "$target" \
    "$(sed -n 's/^stat::number_of_executed_units: *//p' "$folder/$target.log")"
done
