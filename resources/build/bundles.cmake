# With BLINKWRIGHT_BUNDLES, the sources of a target that lie in one folder and begin with one letter are compiled as one,
# which reads their headers once; after a small change more is compiled again. What stays together does not change when a
# file is added. Two names alike, each kept to its own file, may collide in a bundle: one of them
# then says more exactly what it is, or both become one. Sources with the property BLINKWRIGHT_ALONE stay by themselves.
#
# A bundle names its sources from the top of the tree, so that it is the same text wherever the tree lies and what a
# compiler cache keeps of one tree serves the next.
function(blinkwright_bundle target)
  if(NOT BLINKWRIGHT_BUNDLES)
    return()
  endif()
  cmake_path(SET tree NORMALIZE ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/../..)
  get_target_property(sources ${target} SOURCES)
  set(names)
  foreach(source ${sources})
    get_source_file_property(alone ${source} BLINKWRIGHT_ALONE)
    cmake_path(IS_PREFIX CMAKE_BINARY_DIR ${source} made)
    if(NOT source MATCHES "\\.cpp$" OR alone OR made)
      continue()
    endif()
    cmake_path(RELATIVE_PATH source BASE_DIRECTORY ${tree} OUTPUT_VARIABLE inside)
    cmake_path(NORMAL_PATH inside)
    cmake_path(GET inside PARENT_PATH folder)
    cmake_path(GET inside STEM stem)
    string(SUBSTRING ${stem} 0 1 letter)
    string(REPLACE "/" "_" name "${folder}_${letter}")
    list(APPEND names ${name})
    string(APPEND text_${name} "#include \"${inside}\"\n")
    set_source_files_properties(${source} PROPERTIES HEADER_FILE_ONLY ON)
  endforeach()
  list(REMOVE_DUPLICATES names)
  foreach(name ${names})
    set(bundle ${CMAKE_CURRENT_BINARY_DIR}/bundles/${target}/${name}.cpp)
    file(CONFIGURE OUTPUT ${bundle} CONTENT "${text_${name}}" @ONLY)
    target_sources(${target} PRIVATE ${bundle})
    set_source_files_properties(${bundle} PROPERTIES SKIP_AUTOMOC ON)
  endforeach()
endfunction()
