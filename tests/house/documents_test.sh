#!/usr/bin/env bash
# README.md and DEVELOPERS.md name the packages and figures that the scripts have, and files that exist.
tree=$1
. "$(dirname "$0")/expect.sh"
. "$tree/resources/build/packages.sh"

developers=$(<"$tree/DEVELOPERS.md")

# The packages, between two marks in DEVELOPERS.md.
documented=$(sed -n '/<!-- packages -->/,/<!-- end of packages -->/p' <<<"$developers" | grep -oE '`[a-z0-9.+-]+`' | tr -d '`' | sort -u)
listed=$(printf '%s\n' "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_WAYLAND_PACKAGES[@]}" \
  "${BLINKWRIGHT_TEST_PACKAGES[@]}" "${BLINKWRIGHT_FUZZ_PACKAGES[@]}" "${BLINKWRIGHT_TIDY_PACKAGES[@]}" \
  "${BLINKWRIGHT_BENCHMARK_PACKAGES[@]}" | sort -u)
expect "DEVELOPERS.md names the packages of packages.sh, no more and no less" test "$documented" = "$listed"

# The figures: first cells of the table under "Figures".
documented=$(sed -n '/<!-- figures -->/,/<!-- end of figures -->/p' <<<"$developers" | grep -oE '^\| `[a-z0-9_]+`' | tr -d '|` ')
listed=$(grep -oE '^[a-z0-9_]+' "$tree/tests/benchmarks/figures.txt")
expect "DEVELOPERS.md has the figures of figures.txt in their order" test "$documented" = "$listed"

# Links and pictures.
for document in README.md DEVELOPERS.md; do
  while IFS= read -r target; do
    [[ "$target" == *:* || "$target" == \#* ]] && continue
    expect "$document: ${target} exists" test -e "$tree/${target%%#*}"
  done < <(grep -oE '\]\([^) ]+\)' "$tree/$document" | sed 's/^](//; s/)$//')
done

# Paths in backticks that start at a folder of the tree.
for document in README.md DEVELOPERS.md; do
  while IFS= read -r path; do
    expect "$document: ${path} exists" test -e "$tree/$path"
  done < <(grep -oE '`(app|core|widgets|resources|tests|samples|\.ci)/[A-Za-z0-9_./-]*`' "$tree/$document" | tr -d '`' | sort -u)
done
finish
