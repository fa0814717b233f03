#!/usr/bin/env bash
# Each text is filed in the translations under the name that it is asked for by, and each has its translation.
tree=$1 lupdate=$3
. "$(dirname "$0")/expect.sh"

for translation in "$tree"/resources/translations/*.ts; do
  name=${translation##*/} collected=$scratch/${translation##*/}
  cp "$translation" "$collected"
  run bash "$tree/resources/build/collect_texts.sh" "$lupdate" "$collected"
  expect "texts are collected into $name" test "$status" = 0
  expect_text "$name has all texts" "$out" "(0 new"
  expect_no_text "$name has none that are said no more" "$out" "Removed"
  expect_no_text "all texts of $name are finished" "$(<"$translation")" 'type="unfinished"'

  # A text of a class without tr() of its own, or of none, is filed under a name that nobody asks by: it is to be said
  # by Words::tr. Core's are looked up under the names of its namespace.
  strangers=$(grep -o "Class '[^']*' lacks" <<<"$err$out" | grep -v "'blinkwright::wording'")
  expect "no text is outside of the classes that have texts: ${strangers:-none}" test -z "$strangers"
  others=$(grep -o '<name>.*</name>' "$collected" | sed 's/<[^>]*>//g' |
    grep -vxE 'Words|(blinkwright::)?wording|blinkwright::(app|widgets)(::[a-z]+)*::[A-Z][A-Za-z]*')
  expect "no text is filed under another name: ${others:-none}" test -z "$others"
done
expect "there are translations" test -e "$collected"
finish
