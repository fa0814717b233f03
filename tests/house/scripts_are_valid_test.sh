#!/usr/bin/env bash
# Every script parses.
tree=$1
. "$(dirname "$0")/expect.sh"

scripts=("$tree/app/start.sh" "$tree/.ci/run")
while IFS= read -r script; do
  scripts+=("$script")
done < <(find "$tree/tests" "$tree/resources" -name '*.sh' | sort)
expect "start, test run, packages, figures and these tests are found" test "${#scripts[@]}" -ge 12
for script in "${scripts[@]}"; do
  run bash -n "$script"
  expect "${script#"$tree"/} parses" test "$status" = 0
done
# A sign that `bash -n` does refuse something.
printf 'if true; then\n' >"$scratch/broken.sh"
run bash -n "$scratch/broken.sh"
expect "a broken script is refused" test "$status" != 0
finish
