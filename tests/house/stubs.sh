# A small world for the start scripts: a copy of them in $world, and a PATH that holds only stand-ins and a few plain
# tools. To be sourced after expect.sh, with $tree set.
#
#   stub_installed cmake g++           # what dpkg-query says is installed
#   stub_user 1000                     # what `id -u` says
#   in_world bash "$world/app/start.sh"
#   calls apt-get                      # the arguments of each call of a stand-in, one call a line
# shellcheck shell=bash

world=$scratch/world
tools=$scratch/tools
mkdir -p "$world"/{app,tests/benchmarks,resources/build,samples} "$tools"
cp "$tree/app/start.sh" "$world/app/"
cp "$tree/tests/run.sh" "$world/tests/"
cp "$tree"/tests/benchmarks/figures.* "$world/tests/benchmarks/"
cp "$tree/resources/build/packages.sh" "$world/resources/build/"
printf '{}\n' >"$world/samples/mole-light.blinkwright"

for tool in awk bash cat chmod cp cut date dirname env grep head mkdir mktemp mv nproc printf rm sed sort touch tr; do
  ln -s "$(type -P "$tool")" "$tools/$tool"
done

# stub NAME [BODY]: a stand-in that notes its arguments, then does BODY.
stub() {
  printf '#!/usr/bin/env bash\nprintf "%%s\\n" "$*" >>%q\n%s\n' "$scratch/calls.$1" "${2-}" >"$tools/$1"
  chmod +x "$tools/$1"
}
calls() { cat "$scratch/calls.$1" 2>/dev/null; }
forget_calls() { rm -f "$scratch"/calls.*; }
without() { rm -f "$tools/$1"; }

stub_installed() {
  printf '%s\n' "$@" >"$scratch/installed"
  stub dpkg-query "grep -qxF -- \"\${!#}\" $(printf %q "$scratch/installed") || exit 1; printf installed"
}
stub_user() { stub id "printf '%s\n' $1"; }

# A stand-in for a configuration and a build that succeed, and for the program that they make.
stub_build() {
  stub cmake 'while (($#)); do case $1 in -S) source=$2;; -B) folder=$2;; esac; shift; done
mkdir -p "$folder"; printf "CMAKE_HOME_DIRECTORY:INTERNAL=%s\n" "$source" >"$folder/CMakeCache.txt"
touch "$folder/build.ninja"; printf "configuring\n"'
  stub ninja "folder=\$2; mkdir -p \"\$folder/bin\"; cp $(printf %q "$tools/program") \"\$folder/bin/blinkwright\""
  stub program
}

in_world() { run env -i PATH="$tools" HOME="$scratch" "$@"; }
