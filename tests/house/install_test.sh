#!/usr/bin/env bash
# What is installed: the program, its desktop entry, icon, MIME type and AppStream data, each valid; and a Debian
# package that holds the same and says what it needs.
tree=$1 build=$2
. "$(dirname "$0")/expect.sh"

root=$scratch/root
share=$root/usr/share
run cmake --install "$build" --prefix "$root/usr"
expect "it installs" test "$status" = 0
for file in bin/blinkwright share/applications/blinkwright.desktop share/metainfo/blinkwright.metainfo.xml \
  share/mime/packages/blinkwright.xml share/icons/hicolor/scalable/apps/blinkwright.svg \
  share/blinkwright/samples/mole-light.blinkwright share/doc/blinkwright/copyright; do
  expect "$file is installed" test -s "$root/usr/$file"
done
run desktop-file-validate "$share/applications/blinkwright.desktop"
expect "the desktop entry is valid, without a hint" test "$status$out$err" = 0
run appstreamcli validate --no-net "$share/metainfo/blinkwright.metainfo.xml"
expect "the AppStream data is valid" test "$status" = 0

# The MIME type is the one that the desktop entry opens, and a circuit file is of it.
mime=$(sed -n 's/^MimeType=\([^;]*\);.*/\1/p' "$share/applications/blinkwright.desktop")
run update-mime-database "$share/mime"
expect "the MIME type is valid" test "$status" = 0
expect "circuit files are of the type that the desktop entry opens" \
  grep -q "^50:$mime:\*\.blinkwright\$" "$share/mime/globs2"
run "$root/usr/bin/blinkwright" --version
expect "the AppStream data names this version" \
  grep -q "<release version=\"${out#blinkwright }\"" "$share/metainfo/blinkwright.metainfo.xml"

# The list of what a package needs is made from the program's own libraries.
run cpack --config "$build/CPackConfig.cmake" -G DEB -B "$scratch/deb"
expect "a package is made" test "$status" = 0
package=$(printf '%s\n' "$scratch"/deb/*.deb | head -1)
run dpkg-deb -f "$package" Depends
for need in libqt6widgets6 libqcustomplot2.1-qt6 libc6; do
  expect_text "the package says that it needs $need" "$out" "$need"
done
run dpkg-deb -x "$package" "$scratch/unpacked"
unpacked=$scratch/unpacked/usr
run "$unpacked/bin/blinkwright" readings "$unpacked/share/blinkwright/samples/mole-light.blinkwright"
expect_text "the packaged program runs the packaged sample" "$out" '"verdict": "blinks"'
run file -b "$unpacked/bin/blinkwright"
expect_no_text "the packaged program is stripped" "$out" "not stripped"
finish
