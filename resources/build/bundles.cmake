# With BLINKWRIGHT_BUNDLES, the sources of a target that lie in one folder and begin with one letter are compiled as one,
# which reads their headers once; after a small change more is compiled again. What stays together does not change when a
# file is added. Two names alike, each kept to its own file, may collide in a bundle: one of them
# then says more exactly what it is, or both become one.
function(blinkwright_bundle target)
  if(NOT BLINKWRIGHT_BUNDLES)
    return()
  endif()
  get_target_property(sources ${target} SOURCES)
  foreach(source ${sources})
    if(NOT source MATCHES "\\.cpp$")
      continue()
    endif()
    cmake_path(GET source PARENT_PATH folder)
    cmake_path(GET source STEM name)
    string(SUBSTRING ${name} 0 1 letter)
    string(MD5 place "${folder}") # a path is no name for a file
    set_source_files_properties(${source} PROPERTIES UNITY_GROUP "${place}_${letter}")
  endforeach()
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
endfunction()
