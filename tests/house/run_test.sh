#!/usr/bin/env bash
# run.sh builds everything with tests on, and ends with what ctest says and returns.
tree=$1
. "$(dirname "$0")/expect.sh"
. "$(dirname "$0")/stubs.sh"
. "$tree/resources/build/packages.sh"

stub_installed "${BLINKWRIGHT_BUILD_PACKAGES[@]}" "${BLINKWRIGHT_TEST_PACKAGES[@]}" "${BLINKWRIGHT_FUZZ_PACKAGES[@]}"
stub_user 1000
stub_build
stub localedef
stub ctest 'printf "locales %s\n" "$LOCPATH"; printf "platform %s\n100%% tests passed, 0 tests failed out of 7\n" "$QT_QPA_PLATFORM"; exit 8'

in_world bash "$world/tests/run.sh"
expect_text "tests are switched on" "$(calls cmake)" "-DBLINKWRIGHT_TESTS=ON"
expect_text "sources are bundled" "$(calls cmake)" "-DBLINKWRIGHT_BUNDLES=ON"
expect "everything is built on two cores" test "$(calls ninja)" = "-C $world/build/check -j2"
expect_text "failures are shown" "$(calls ctest)" "--output-on-failure"
expect "ctest has the last word" test "${out##*$'\n'}" = "100% tests passed, 0 tests failed out of 7"
expect_text "no display is needed" "$out" "platform offscreen"
expect_text "a locale with a decimal comma is made" "$(calls localedef)" "de_DE.UTF-8"
expect_text "and the tests find it" "$out" "locales $world/build/check/locales"
expect "ctest's exit code is the script's" test "$status" = 8

forget_calls
in_world bash "$world/tests/run.sh" -R Quantity
expect_text "options reach ctest" "$(calls ctest)" "-R Quantity"

forget_calls
stub ninja 'exit 3'
in_world bash "$world/tests/run.sh"
expect "a failed build fails the run" test "$status" = 3
expect "and no test is run" test -z "$(calls ctest)"

# What continuous integration calls.
stub_build
mkdir -p "$world/.ci"
cp "$tree/.ci/run" "$world/.ci/"
forget_calls
cd "$world" || exit 1
in_world bash "$world/tests/run.sh"
expect_text "the sanitizers are asked for by name only" "$(calls cmake)" "-DBLINKWRIGHT_SANITIZED_CORE=OFF"
forget_calls
in_world CI=true bash .ci/run
expect_text ".ci/run builds the core under the sanitizers too" "$(calls cmake)" "-DBLINKWRIGHT_SANITIZED_CORE=ON"
expect "in one build" test "$(calls ninja)" = "-C $world/build/check -j2"
expect "its tests are part of the test run, which has the last word" test "$status" = 8
stub ctest
in_world CI=true bash .ci/run
expect "it passes when the test run passes" test "$status" = 0
finish
