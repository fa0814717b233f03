#!/usr/bin/env bash
# The top level holds exactly the allowed names: in a checkout as git knows them, else as they stand in the folder.
tree=$1
. "$(dirname "$0")/expect.sh"

allowed="CMakeLists.txt DEVELOPERS.md LICENSE README.md app core resources samples tests widgets"
run git -C "$tree" ls-files
if [[ "$status" == 0 && -n "$out" && -e "$tree/.git" ]]; then
  names=$(cut -d/ -f1 <<<"$out" | sort -u)
else
  names=$(cd "$tree" && printf '%s\n' * | grep -v '^build' | sort -u)
fi
plain=$(grep -v '^\.' <<<"$names" | tr '\n' ' ')
expect "nothing but the allowed names, and all of them" test "${plain% }" = "$allowed"
for name in .ci .gitignore .clang-format .clang-tidy; do
  expect "$name is there" test -e "$tree/$name"
done
finish
