#!/usr/bin/env bash
# Builds the fuzz targets with clang into build/fuzz and runs each for a time:
#
#   bash tests/fuzz/fuzz.sh [SECONDS [TARGET...]]        10 seconds each if nothing is said
#   BLINKWRIGHT_FUZZ_RUNS=10000000 bash tests/fuzz/fuzz.sh
#
# The second runs each target so many times, however long that takes, on short inputs and with the undefined-behaviour
# checks alone, which is several times as quick; a last pass takes all inputs that were kept through both sanitizers.
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
build() { # CHECKS
  cmake -S "$tree/tests/fuzz" -B "$folder" -G Ninja -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=None \
    -DBLINKWRIGHT_FUZZ_CHECKS="$1" >/dev/null
  ninja -C "$folder" -j2 >/dev/null
}

declare -A longest=([circuit]=65536 [record]=16384 [quantity]=64)
bound=-max_total_time=$seconds
checks=address,undefined
if [[ -n "${BLINKWRIGHT_FUZZ_RUNS-}" ]]; then
  longest=([circuit]=600 [record]=160 [quantity]=40)
  bound=-runs=$BLINKWRIGHT_FUZZ_RUNS
  checks=undefined
fi
build "$checks"
for target in "${targets[@]}"; do
  mkdir -p "$folder/corpus/$target" "$folder/found"
  seeds=("$tree/tests/fuzz/seeds/$target")
  [[ $target == quantity ]] || seeds+=("$tree/samples")
  if ! "$folder/fuzz_$target" "$bound" -timeout=1 -rss_limit_mb=1024 -max_len="${longest[$target]}" \
    -artifact_prefix="$folder/found/$target-" -print_final_stats=1 \
    "$folder/corpus/$target" "${seeds[@]}" >"$folder/$target.log" 2>&1; then
    tail -60 "$folder/$target.log" >&2
    printf 'fuzz_%s found something; its input is in %s\n' "$target" "$folder/found" >&2
    exit 1
  fi
  printf '%s: %s executions, nothing found\n' "$target" \
    "$(sed -n 's/^stat::number_of_executed_units: *//p' "$folder/$target.log")"
done

[[ $checks == undefined ]] || exit 0
build address,undefined
for target in "${targets[@]}"; do
  "$folder/fuzz_$target" -runs=0 -timeout=10 "$folder/corpus/$target" >"$folder/$target-again.log" 2>&1 || {
    tail -60 "$folder/$target-again.log" >&2
    exit 1
  }
  printf '%s: %s kept inputs again under both sanitizers, nothing found\n' "$target" \
    "$(find "$folder/corpus/$target" -type f | wc -l)"
done
