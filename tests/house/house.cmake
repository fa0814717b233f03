# Tests of the house itself: layers, top level, scripts, documents. Each is a bash script that is given the tree
# and the build folder.
function(blinkwright_house_test name)
  add_test(NAME House.${name}
    COMMAND bash ${CMAKE_CURRENT_LIST_DIR}/${ARGN} ${CMAKE_SOURCE_DIR} ${CMAKE_BINARY_DIR})
  set_tests_properties(House.${name} PROPERTIES TIMEOUT 120)
endfunction()

blinkwright_house_test(IncludesGoOneWay layers_test.sh)
blinkwright_house_test(ReferenceSharesOnlyTheBoard reference_test.sh)
blinkwright_house_test(TopLevelHoldsExactlyTheAllowedNames top_level_test.sh)
blinkwright_house_test(ScriptsAreValidBash scripts_are_valid_test.sh)
blinkwright_house_test(StartInstallsOnlyWhatIsMissing start_packages_test.sh)
blinkwright_house_test(StartBuildsOnceAndOpensTheFile start_window_test.sh)
blinkwright_house_test(TestRunEndsWithTheSummaryOfCtest run_test.sh)
blinkwright_house_test(FiguresHaveNamesAndRefuseOthers figures_test.sh)
blinkwright_house_test(SanitizersWatchTheCore sanitizers_test.sh)
blinkwright_house_test(DocumentsNameWhatIsThere documents_test.sh)
if(BLINKWRIGHT_WINDOW)
  add_test(NAME House.TextsAreFiledWhereTheyAreAskedFor COMMAND bash ${CMAKE_CURRENT_LIST_DIR}/texts_test.sh
    ${CMAKE_SOURCE_DIR} ${CMAKE_BINARY_DIR} $<TARGET_FILE:Qt6::lupdate>)
  blinkwright_house_test(InstallsAndPackages install_test.sh)
endif()
