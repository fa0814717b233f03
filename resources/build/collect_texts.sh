#!/usr/bin/env bash
# Collects the texts of all sources into translations: collect_texts.sh LUPDATE FILE.ts...
# Core says its texts by wording::inWords and wording::marked, all else by tr.
here=$(dirname "$(readlink -f "$0")")
cd "$here/../.." || exit
exec "$1" core widgets app -I . -tr-function-alias tr+=inWords,tr+=marked -locations none -no-obsolete \
  -source-language en -ts "${@:2}"
