# The Debian 12 packages that the project needs, and the one way in which its scripts get them. To be sourced:
#
#   . resources/build/packages.sh
#   blinkwright_need "to build and open the window" "${BLINKWRIGHT_BUILD_PACKAGES[@]}"
#   blinkwright_configure "$tree" "$tree/build/release" -DCMAKE_BUILD_TYPE=Release
#
# shellcheck shell=bash

# To build and open the window. The X11 plug-in of Qt comes with libqt6gui6, a font with libfontconfig1.
BLINKWRIGHT_BUILD_PACKAGES=(
  g++ cmake ninja-build
  qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-l10n-tools qt6-translations-l10n
  libqcustomplot-dev libqcustomplot2.1-qt6
  libeigen3-dev nlohmann-json3-dev
)

# Only where a session has Wayland and no X11 beside it.
BLINKWRIGHT_WAYLAND_PACKAGES=(qt6-wayland)

# To build and run the tests, besides the above: test frameworks, the independent solver, a display with a window
# manager for tests that need a real one, a font so that pictures look alike everywhere, readers of exported PDF and of packages, the
# source of a locale with a decimal comma, and what checks desktop files and makes the package.
BLINKWRIGHT_TEST_PACKAGES=(
  libgtest-dev libgmock-dev libsundials-dev libbenchmark-dev
  xvfb xdotool openbox fonts-dejavu-core poppler-utils unzip locales
  desktop-file-utils appstream shared-mime-info dpkg-dev file
)

# To fuzz what reads texts from outside.
BLINKWRIGHT_FUZZ_PACKAGES=(clang libclang-rt-14-dev cmake ninja-build nlohmann-json3-dev)

# To run clang-tidy, besides the build packages. It reads what those compile.
BLINKWRIGHT_TIDY_PACKAGES=(clang-tidy)

# To run the benchmarks, besides the build packages. The engine is measured against the independent solver too.
BLINKWRIGHT_BENCHMARK_PACKAGES=(libbenchmark-dev libsundials-dev fonts-dejavu-core)

# Prints those of the named packages that are not installed, one a line.
blinkwright_missing() {
  local package
  for package in "$@"; do
    [[ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" == installed ]] || printf '%s\n' "$package"
  done
}

# blinkwright_need PURPOSE PACKAGE...: installs what is missing. Asks for root only if something is. Messages go to
# standard error. Where it cannot install, it names the packages and the command, and ends the script with 1.
blinkwright_need() {
  local purpose=$1 missing=() root=()
  shift
  if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    printf 'This is no Debian system, so nothing is installed here. Needed %s (names as in Debian 12):\n  %s\n' \
      "$purpose" "$*" >&2
    return 0
  fi
  mapfile -t missing < <(blinkwright_missing "$@")
  ((${#missing[@]})) || return 0

  if [[ "$(id -u)" != 0 ]]; then
    if ! command -v sudo >/dev/null; then
      blinkwright_cannot_install "$purpose" "you are not root, and there is no sudo" "${missing[@]}"
      exit 1
    fi
    printf 'sudo may ask for your password to install packages.\n' >&2
    root=(sudo)
  fi
  printf 'Installing %s: %s\n' "$purpose" "${missing[*]}" >&2
  if ! "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update >&2; then
    printf 'apt-get update failed; going on with the package lists that are there.\n' >&2
  fi
  if ! "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${missing[@]}" >&2; then
    blinkwright_cannot_install "$purpose" "apt-get could not install them; its message stands above" "${missing[@]}"
    exit 1
  fi
}

# blinkwright_cannot_install PURPOSE REASON PACKAGE...
blinkwright_cannot_install() {
  local purpose=$1 reason=$2
  shift 2
  {
    printf 'These packages are missing %s:\n' "$purpose"
    printf '  %s\n' "$@"
    printf 'They were not installed: %s.\n' "$reason"
    printf 'Have them installed, then start this script again:\n  apt-get install --no-install-recommends %s\n' "$*"
  } >&2
}

# blinkwright_configured TREE FOLDER: whether a build folder is configured for this very tree (and not, in a copied
# checkout, for the tree that it was copied from).
blinkwright_configured() {
  [[ -f "$2/build.ninja" ]] && grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$1" "$2/CMakeCache.txt" 2>/dev/null
}

# blinkwright_configure TREE FOLDER OPTION...: configures a build folder, afresh where it was not for this tree.
blinkwright_configure() {
  local tree=$1 folder=$2 fresh=()
  shift 2
  if [[ -f "$folder/CMakeCache.txt" ]] && ! blinkwright_configured "$tree" "$folder"; then
    fresh=(--fresh)
  fi
  cmake "${fresh[@]}" -S "$tree" -B "$folder" -G Ninja "$@" >&2
}
