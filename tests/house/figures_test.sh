#!/usr/bin/env bash
# figures.sh prints the named figures, one line each and nothing else on standard output; a name that it does not know
# is refused before anything is built. What the figures are worth is no test's business.
tree=$1
. "$(dirname "$0")/expect.sh"
. "$(dirname "$0")/stubs.sh"
. "$tree/resources/build/packages.sh"

stub_installed "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_BENCHMARK_PACKAGES[@]}"
stub_user 1000
stub_build
figures() { in_world bash "$world/tests/benchmarks/figures.sh" "$@"; }
# Programs that print what the real ones would.
programs() {
  local bin=$world/build/benchmarks/bin
  mkdir -p "$bin"
  printf '#!/usr/bin/env bash\nprintf "slider_to_picture_median 5.25 ms\\nslider_to_picture_p99 9 ms\\n"\n' >"$bin/slider_to_picture"
  # shellcheck disable=SC2016
  printf '#!/usr/bin/env bash\ncase $1 in start) printf "start_to_curve 210.5 ms\\n";; memory) printf "memory_at_rest 70 MiB\\n";; esac\nprintf "noise\\n" >&2\n' >"$bin/whole_program"
  printf '#!/usr/bin/env bash\nprintf "ida_over_ours_one_lamp 51.5 x\\nida_over_ours_two_lamps 20 x\\n"\n' >"$bin/engine_against_ida"
  printf '#!/usr/bin/env bash\nprintf "boards_one_lamp 70000 boards/s\\nboards_two_lamps 30000 boards/s\\n"\n' >"$bin/boards"
  printf '#!/usr/bin/env bash\nprintf "cost_100_timers 3.9 x\\n"\n' >"$bin/hundred_timers"
  printf '#!/usr/bin/env bash\nprintf "wait_over_solve 41 x\\n"\n' >"$bin/settling"
  printf '#!/usr/bin/env bash\nprintf "spread_one_lamp 90 ms\\nspread_two_lamps 400 ms\\ntrend_40 20.5 ms\\nchoose_screen 50 ms\\nchoose_simulate 200 ms\\nsymptoms_200 300 ms\\n"\n' >"$bin/studies"
  printf '#!/usr/bin/env bash\nprintf "import_2m_rows 0.7 s\\n"\n' >"$bin/record_import"
  printf '#!/usr/bin/env bash\nprintf "hookup_drag_60 2.5 ms\\nhookup_drag_500 9 ms\\n"\n' >"$bin/hookup_drag"
  # shellcheck disable=SC2016
  printf '#!/usr/bin/env bash\ncase $1 in memory) printf "hour_growth 3.5 MiB\\n";; stalls) printf "stall_100_timers 20 ms\\nstall_500_parts 15 ms\\n";; esac\n' >"$bin/long_use"
  printf '#!/usr/bin/env bash\nprintf "kept_after_kill 100.0 %%%%\\nlost_by_kill 400 ms\\n"\n' >"$bin/kills"
  printf '#!/usr/bin/env bash\nprintf "least_contrast 4.6 x\\n"\n' >"$bin/contrasts"
  chmod +x "$bin"/*
}
stub ninja "printf 'building\n'"

figures slider_to_picture_median sllder_to_picture
expect "an unknown name exits 2" test "$status" = 2
expect_text "it is named" "$err" "There is no figure sllder_to_picture."
expect_text "the known ones are listed" "$err" "  memory_at_rest"
expect "nothing is printed for it" test -z "$out"
expect "nothing is built for it" test -z "$(calls cmake)$(calls ninja)"

figures --list
expect_text "the list has each name with its aim" "$out" "start_to_curve, ms, aim: at most 400"
expect_text "a lower limit is called one" "$out" "ida_over_ours_two_lamps, x, aim: at least 20"

programs
figures
expect "all figures, one line each, in the order of the table" test "$out" = \
  "slider_to_picture_median 5.25 ms
slider_to_picture_p99 9 ms
start_to_curve 210.5 ms
memory_at_rest 70 MiB
ida_over_ours_one_lamp 51.5 x
ida_over_ours_two_lamps 20 x
boards_one_lamp 70000 boards/s
boards_two_lamps 30000 boards/s
cost_100_timers 3.9 x
wait_over_solve 41 x
spread_one_lamp 90 ms
spread_two_lamps 400 ms
trend_40 20.5 ms
choose_screen 50 ms
choose_simulate 200 ms
symptoms_200 300 ms
import_2m_rows 0.7 s
hookup_drag_60 2.5 ms
hookup_drag_500 9 ms
hour_growth 3.5 MiB
stall_100_timers 20 ms
stall_500_parts 15 ms
kept_after_kill 100.0 %
lost_by_kill 400 ms
least_contrast 4.6 x"
expect "each program is built once" test "$(calls ninja)" = \
  "-C $world/build/benchmarks slider_to_picture whole_program engine_against_ida boards hundred_timers settling studies record_import hookup_drag long_use kills contrasts"

forget_calls
figures memory_at_rest
expect "one figure alone" test "$out" = "memory_at_rest 70 MiB"
expect "and only its program is built" test "$(calls ninja)" = "-C $world/build/benchmarks whole_program"

cat >"$world/DEVELOPERS.md" <<'END'
| `memory_at_rest` | in another table | 1 MiB |
<!-- figures -->
| `memory_at_rest` | with a value | 120 MiB | 1 MiB, 2020-01-01 |
| `lost_by_kill` | without one yet | 1000 ms | |
| `start_to_curve` | not measured now | 400 ms | 300 ms, 2020-01-01 |
<!-- end of figures -->
Last written on a machine, 2020-01-01.
END
figures --write memory_at_rest lost_by_kill
written=$(<"$world/DEVELOPERS.md")
today=$(date +%F)
expect_text "a new value stands in the place of the old one, with the day" "$written" "| 120 MiB | 70 MiB, $today |"
expect_text "a row without a value gets one" "$written" "| 1000 ms | 400 ms, $today |"
expect_text "a row that was not measured stays" "$written" "| 400 ms | 300 ms, 2020-01-01 |"
expect_text "so does another table" "$written" "| in another table | 1 MiB |"
expect_text "the day is said" "$written" ", $today."

printf '#!/usr/bin/env bash\nexit 1\n' >"$world/build/benchmarks/bin/whole_program"
figures start_to_curve
expect "a measurement that fails exits 1" test "$status" = 1
expect "and prints no figure" test -z "$out"

printf '#!/usr/bin/env bash\nprintf "start_to_curve nan ms\\n"\n' >"$world/build/benchmarks/bin/whole_program"
figures start_to_curve
expect "a figure that is no number exits 1" test "$status" = 1
expect "and is not printed" test -z "$out"
finish
