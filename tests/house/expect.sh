# Shared by the house tests; to be sourced. A test counts its failures and ends with `finish`.
#
#   run bash app/start.sh --help        # fills $status, $out and $err
#   expect "start.sh helps" test "$status" = 0
#   expect_text "it says how" "$out" "Usage:"
#   finish
# shellcheck shell=bash
set -u

failures=0
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# Runs a command without standard input; keeps its exit code, standard output and standard error.
run() {
  "$@" >"$scratch/out" 2>"$scratch/err" </dev/null
  status=$?
  out=$(<"$scratch/out")
  err=$(<"$scratch/err")
}

# expect SENTENCE COMMAND...: the command must succeed.
expect() {
  local sentence=$1
  shift
  if "$@"; then
    printf 'holds: %s\n' "$sentence"
  else
    printf 'FAILS: %s\n       %s\n' "$sentence" "$*"
    printf '  exit %s\n  out: %s\n  err: %s\n' "${status-}" "${out-}" "${err-}"
    failures=$((failures + 1))
  fi
}

# expect_text SENTENCE TEXT PART: the text must hold the part.
expect_text() { expect "$1" contains "$2" "$3"; }
# expect_no_text SENTENCE TEXT PART: the text must not hold the part.
expect_no_text() { expect "$1" lacks "$2" "$3"; }
contains() { [[ "$1" == *"$2"* ]]; }
lacks() { [[ "$1" != *"$2"* ]]; }

finish() {
  if ((failures)); then
    printf '%d of the above fail.\n' "$failures"
    exit 1
  fi
  exit 0
}
