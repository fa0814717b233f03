#!/usr/bin/env bash
# Measures the figures that are watched, and prints one line each, `NAME VALUE UNIT`:
#
#   bash tests/benchmarks/figures.sh                    all of them
#   bash tests/benchmarks/figures.sh start_to_curve     the named ones
#   bash tests/benchmarks/figures.sh --list             the names, units and aims; measures nothing
#   bash tests/benchmarks/figures.sh --write [NAME...]  writes them into the table of DEVELOPERS.md as well
#
# Builds (Release, into build/benchmarks) what they need first. Progress goes to standard error. Exits 2 for a name
# that is not known, 1 where a figure could not be measured. Let the machine be idle meanwhile.
set -euo pipefail

tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd -P)
folder=$tree/build/benchmarks
table=$tree/tests/benchmarks/figures.txt
. "$tree/resources/build/packages.sh"

document=
if [[ "${1-}" == --write ]]; then
  document=$tree/DEVELOPERS.md
  shift
fi

declare -A command_of unit_of
names=()
while read -r name unit aim command; do
  [[ -z "$name" || "$name" == \#* ]] && continue
  names+=("$name")
  command_of[$name]=$command
  unit_of[$name]=$unit
  [[ "${1-}" == --list ]] || continue
  case $aim in
    '>='*) printf '%s, %s, aim: at least %s\n' "$name" "$unit" "${aim#>=}" ;;
    *) printf '%s, %s, aim: at most %s\n' "$name" "$unit" "$aim" ;;
  esac
done <"$table"
[[ "${1-}" != --list ]] || exit 0

for name in "$@"; do
  if [[ -z "${command_of[$name]-}" ]]; then
    {
      printf 'There is no figure %s. The names are:\n' "$name"
      printf '  %s\n' "${names[@]}"
    } >&2
    exit 2
  fi
done
(($#)) || set -- "${names[@]}"

commands=()
targets=()
for name in "$@"; do
  command=${command_of[$name]}
  [[ " ${commands[*]/%/;} " == *" $command; "* ]] || commands+=("$command")
  [[ " ${targets[*]} " == *" ${command%% *} "* ]] || targets+=("${command%% *}")
done

blinkwright_need "to build and run the benchmarks" "${BLINKWRIGHT_BUILD_PACKAGES[@]}" \
  "${BLINKWRIGHT_BENCHMARK_PACKAGES[@]}"
blinkwright_configure "$tree" "$folder" -DCMAKE_BUILD_TYPE=Release \
  -DBLINKWRIGHT_WINDOW=ON -DBLINKWRIGHT_TESTS=OFF -DBLINKWRIGHT_BENCHMARKS=ON
ninja -C "$folder" "${targets[@]}" >&2

# Nothing of the user's own settings is read or written.
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export QT_QPA_PLATFORM=offscreen XDG_CONFIG_HOME=$home XDG_DATA_HOME=$home XDG_STATE_HOME=$home XDG_RUNTIME_DIR=$home

measured= written=
for command in "${commands[@]}"; do
  printf 'Measuring: %s\n' "$command" >&2
  read -ra words <<<"$command"
  if ! lines=$("$folder/bin/${words[0]}" "${words[@]:1}"); then
    printf 'Could not be measured: %s\n' "$command" >&2
    exit 1
  fi
  measured+=$lines$'\n'
done
for name in "$@"; do
  if ! line=$(grep -E "^$name [0-9.]+ ${unit_of[$name]}\$" <<<"$measured"); then
    printf '%s gave no figure %s in %s\n' "${command_of[$name]}" "$name" "${unit_of[$name]}" >&2
    exit 1
  fi
  printf '%s\n' "$line"
  [[ -z "$document" ]] || written+=$line$'\n'
done
[[ -n "$document" ]] || exit 0

# The last column of the rows that were measured, with the day, and the machine.
machine="$(sed -n 's/^model name[^:]*: *//p' /proc/cpuinfo | head -1 | tr -s ' '), $(nproc) processors"
draft=$(mktemp "$document.XXXXXX")
awk -v figures="$written" -v machine="$machine" -v day="$(date +%F)" '
  BEGIN {
    count = split(figures, lines, "\n")
    for (k = 1; k <= count; ++k) if (split(lines[k], words, " ") == 3) value[words[1]] = words[2] " " words[3]
  }
  /^<!-- figures -->/ { inside = 1 }
  /^<!-- end of figures -->/ { inside = 0 }
  inside && /^\| `/ {
    name = $0; sub(/^\| `/, "", name); sub(/`.*/, "", name)
    if (name in value) { sub(/\|[^|]*\|$/, "| " value[name] ", " day " |") }
  }
  /^Last written on / { $0 = "Last written on " machine ", " day "." }
  { print }' "$document" >"$draft"
chmod --reference="$document" "$draft"
mv "$draft" "$document"
