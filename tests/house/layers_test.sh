#!/usr/bin/env bash
# Plants includes that go against core <- widgets <- app, and sees each of them rejected.
tree=$1
. "$(dirname "$0")/expect.sh"

check() { run cmake "-DROOT=$1" -P "$tree/resources/build/layering.cmake"; }

# A small tree in which everything is as it should be.
fresh() {
  rm -rf "$scratch/small"
  mkdir -p "$scratch"/small/{core/{units,engine},widgets/curves,app}
  printf '#include "core/units/unit.h"\n#include <vector> // not "widgets/curves/view.h"\n' \
    >"$scratch/small/core/engine/engine.cpp"
  printf '#pragma once\n#include <string>\n' >"$scratch/small/core/units/unit.h"
  printf '#include "core/units/unit.h"\n#include <QWidget>\n' >"$scratch/small/widgets/curves/view.h"
  printf '#include "core/units/unit.h"\n#include "widgets/curves/view.h"\n' >"$scratch/small/app/main.cpp"
}

# rejects SENTENCE FILE LINE NAMED: with LINE added to FILE, the check fails and names NAMED.
rejects() {
  fresh
  mkdir -p "$(dirname "$scratch/small/$2")"
  printf '%s\n' "$3" >>"$scratch/small/$2"
  check "$scratch/small"
  expect "$1 is rejected" test "$status" != 0
  expect_text "$1: the file is named" "$err" "$2"
  expect_text "$1: the reason is named" "$err" "$4"
}

fresh
check "$scratch/small"
expect "a tree that keeps to the layers passes" test "$status" = 0

rejects "core using widgets" core/units/unit.h '#include "widgets/curves/view.h"' "widgets/curves/view.h"
rejects "core using app" core/engine/engine.cpp '#include "app/window.h"' "app/window.h"
rejects "widgets using app" widgets/curves/view.h '#include "app/window.h"' "app/window.h"
rejects "units using the engine" core/units/unit.h '#include "core/engine/engine.h"' "core/engine/engine.h"
rejects "an include in angle brackets" core/units/unit.h '#include <widgets/curves/view.h>' "widgets/curves/view.h"
rejects "an indented include" core/units/unit.h '  #  include "app/window.h"' "app/window.h"
rejects "Qt in the core" core/units/unit.h '#include <QString>' "core is free of Qt"
rejects "a Qt module in the core" core/units/unit.h '#include <QtCore/QString>' "core is free of Qt"
rejects "quoted Qt in the core" core/units/unit.h '#include "qglobal.h"' "core is free of Qt"
rejects "a way round by .." core/engine/engine.cpp '#include "../../widgets/curves/view.h"' "from the top"
rejects "a way round in the middle" core/engine/engine.cpp '#include "core/../widgets/curves/view.h"' "from the top"
rejects "a header by macro" core/units/unit.h '#include SOME_HEADER' "name the header"
rejects "a header of the tests" app/main.cpp '#include "tests/app/stub.h"' "tests/app/stub.h"
rejects "another ending" core/units/unit.hpp '#include "app/window.h"' "app/window.h"
rejects "a folder without a row" core/attic/old.h '#pragma once' "no row"

mkdir "$scratch/empty"
check "$scratch/empty"
expect "a tree without sources does not pass unseen" test "$status" != 0

check "$tree"
expect "the real tree passes" test "$status" = 0

# The same by the real configuration of the real tree, in a copy.
mkdir "$scratch/copy"
cp -r "$tree"/{CMakeLists.txt,app,core,widgets,resources,samples,tests} "$scratch/copy/"
configure() { run cmake -S "$scratch/copy" -B "$scratch/build" -G Ninja -DBLINKWRIGHT_WINDOW=OFF; }
passed="Layers: the includes of"
configure
expect_text "the configuration checks the layers of the copy" "$out" "$passed"
printf '#pragma once\n#include "widgets/theme/theme.h"\n' >"$scratch/copy/core/units/planted.h"
configure
expect "a violation stops the configuration" test "$status" != 0
expect_no_text "before it is done" "$out" "Configuring done"
expect_text "and its file is named" "$err" "core/units/planted.h includes widgets/theme/theme.h"
rm "$scratch/copy/core/units/planted.h"
configure
expect_text "without it the check passes again" "$out" "$passed"
finish
