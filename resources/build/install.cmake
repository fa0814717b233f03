# What `cmake --install` puts where, and the Debian package that CPack makes of it.
#
#   cmake --install build/release --prefix /usr/local
#   cpack --config build/release/CPackConfig.cmake -G DEB
include(GNUInstallDirs)

set(desktop ${CMAKE_SOURCE_DIR}/resources/desktop)
install(TARGETS blinkwright RUNTIME)
install(FILES ${desktop}/blinkwright.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${desktop}/blinkwright.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${desktop}/blinkwright-mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME blinkwright.xml)
install(FILES ${CMAKE_SOURCE_DIR}/resources/icons/blinkwright.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(DIRECTORY ${CMAKE_SOURCE_DIR}/samples/ DESTINATION ${CMAKE_INSTALL_DATADIR}/blinkwright/samples)
install(FILES ${CMAKE_SOURCE_DIR}/README.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
# Debian wants it by this name.
install(FILES ${desktop}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME blinkwright)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_CONTACT "The Blinkwright developers <blinkwright@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY ${PROJECT_DESCRIPTION})
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION electronics)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# The toolkit's own words in other languages.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS qt6-translations-l10n)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
    "workshop for lamp blinkers with the 555 timer
 Draw the pins and parts of a blinker, drag a value and see the waveform
 follow; choose parts for the flashes that are wished; compare two sets of
 values; see what tolerances do; account for what the real board does
 otherwise, and write it up.")
# Debian's own triggers bring icons, MIME types and desktop entries up to date.
include(CPack)
