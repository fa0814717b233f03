#!/usr/bin/env bash
# What start.sh and run.sh do about packages: nothing when all are there; only what is missing when some are not; and
# a plain word on standard error, with exit 1, where they cannot install.
tree=$1
. "$(dirname "$0")/expect.sh"
. "$(dirname "$0")/stubs.sh"
. "$tree/resources/build/packages.sh"

build=("${BLINKWRIGHT_BUILD_PACKAGES[@]}")
all=("${build[@]}" "${BLINKWRIGHT_TEST_PACKAGES[@]}")
stub apt-get
stub_build
stub ctest

# Neither root nor sudo.
stub_user 1000
for script in app/start.sh tests/run.sh; do
  [[ $script == app/* ]] && needed=("${build[@]}") || needed=("${all[@]}")
  stub_installed g++ cmake
  forget_calls
  in_world bash "$world/$script"
  expect "$script exits 1 without root and sudo" test "$status" = 1
  for package in "${needed[@]}"; do
    case $package in
      g++ | cmake) expect_no_text "$script does not ask for $package, which is there" "$err" "  $package"$'\n' ;;
      *) expect_text "$script names $package" "$err" "  $package"$'\n' ;;
    esac
  done
  expect_text "$script says why it did not install" "$err" "not root, and there is no sudo"
  expect_text "$script gives the command" "$err" "apt-get install --no-install-recommends "
  expect "$script installs nothing" test -z "$(calls apt-get)"
  expect "$script does not go on to build" test -z "$(calls cmake)$(calls ninja)"
  expect "$script keeps standard output clean" test -z "$out"
done

# Root.
stub_user 0
mapfile -t installed < <(printf '%s\n' "${build[@]}" | grep -vxE 'qt6-svg-dev|libeigen3-dev')
stub_installed "${installed[@]}"
forget_calls
in_world bash "$world/app/start.sh"
expect "root installs just what is missing" \
  test "$(calls apt-get)" = "update"$'\n'"install -y --no-install-recommends qt6-svg-dev libeigen3-dev"
expect "and goes on to build" test -n "$(calls ninja)"

# Root, but the installation fails.
stub apt-get '[[ $1 == update ]] && exit 0; printf "E: no such package\n" >&2; exit 100'
forget_calls
in_world bash "$world/app/start.sh"
expect "a failed installation exits 1" test "$status" = 1
expect_text "the missing packages are named" "$err" "  libeigen3-dev"
expect "a failed installation does not go on to build" test -z "$(calls ninja)"

# Sudo.
stub apt-get
stub_user 1000
stub sudo '"$@"'
forget_calls
in_world bash "$world/app/start.sh"
expect_text "sudo runs the installation" "$(calls sudo)" \
  "env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends qt6-svg-dev libeigen3-dev"
expect "sudo is asked for nothing else" test "$(calls sudo | grep -vc apt-get)" = 0

# All there: nobody is asked for anything.
stub_installed "${all[@]}"
forget_calls
in_world bash "$world/app/start.sh"
expect "nothing missing: no sudo" test -z "$(calls sudo)"
expect "nothing missing: no apt-get" test -z "$(calls apt-get)"

# Wayland alone needs one package more.
forget_calls
in_world WAYLAND_DISPLAY=wayland-0 bash "$world/app/start.sh"
expect_text "Wayland without X11 asks for its plug-in" "$(calls apt-get)" "qt6-wayland"
finish
