#!/usr/bin/env bash
# start.sh configures once, builds each time (which is no work when nothing changed), and opens the right file.
tree=$1
. "$(dirname "$0")/expect.sh"
. "$(dirname "$0")/stubs.sh"
. "$tree/resources/build/packages.sh"

stub_installed "${BLINKWRIGHT_BUILD_PACKAGES[@]}"
stub_user 1000
stub_build
stub apt-get
printf '{}\n' >"$scratch/buoy light.blinkwright"

start() { in_world DISPLAY=:7 bash "$world/app/start.sh" "$@"; }

cd "$scratch" || exit 1
start
expect "the first start succeeds" test "$status" = 0
expect_text "it configures a Release build" "$(calls cmake)" "-B $world/build/release -G Ninja -DCMAKE_BUILD_TYPE=Release"
expect "it opens the mole light" test "$(calls program)" = "$world/samples/mole-light.blinkwright"

forget_calls
start "buoy light.blinkwright"
expect "a second start does not configure" test -z "$(calls cmake)"
expect "it asks ninja for what is to be done" test "$(calls ninja)" = "-C $world/build/release blinkwright"
expect "a relative file is relative to the caller" test "$(calls program)" = "$scratch/buoy light.blinkwright"

forget_calls
start "$scratch/buoy light.blinkwright"
expect "an absolute file stays as it is" test "$(calls program)" = "$scratch/buoy light.blinkwright"

forget_calls
mv "$world" "$scratch/moved"
in_world DISPLAY=:7 bash "$scratch/moved/app/start.sh"
expect_text "a copied checkout is configured afresh" "$(calls cmake)" "--fresh -S $scratch/moved"
mv "$scratch/moved" "$world"

forget_calls
start no-such-file.blinkwright
expect "a file that is not there exits 2" test "$status" = 2
expect_text "and is named" "$err" "There is no file $scratch/no-such-file.blinkwright"
expect "and nothing is built for it" test -z "$(calls ninja)"

start --fast
expect "an unknown option exits 2" test "$status" = 2
start a b
expect "two files exit 2" test "$status" = 2

forget_calls
in_world bash "$world/app/start.sh"
expect "no display exits 1" test "$status" = 1
expect_text "and says so" "$err" "there is no display"
expect_text "and names what works without one" "$err" "$world/build/release/bin/blinkwright readings"
expect "and opens nothing" test -z "$(calls program)"

forget_calls
in_world QT_QPA_PLATFORM=offscreen bash "$world/app/start.sh"
expect "a platform chosen by hand is left to Qt" test -n "$(calls program)"

forget_calls
stub ninja 'printf "a compile error\n"; exit 3'
start
expect "a failed build fails the start" test "$status" = 3
expect "and opens nothing" test -z "$(calls program)"
finish
