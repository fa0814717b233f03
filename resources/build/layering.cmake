# The configure-time check of the layers. Rows of the table: a folder and the folders it may include from.
#
#   include(resources/build/layering.cmake)
#   blinkwright_check_layering(${CMAKE_SOURCE_DIR})
#
# By hand: cmake -DROOT=. -P resources/build/layering.cmake

set(BLINKWRIGHT_LAYERS
  "core/base|core/base"
  "core/units|core/base core/units"
  "core/circuit|core/base core/units core/circuit"
  "core/devices|core/base core/units core/circuit core/devices"
  "core/engine|core/base core/units core/circuit core/devices core/engine"
  "core/study|core/base core/units core/circuit core/devices core/engine core/study"
  "core/io|core"
  "widgets|core widgets"
  "app|core widgets app")

# Headers of toolkits that a folder must not see: the whole core is free of Qt.
set(BLINKWRIGHT_QT_FREE core)

function(blinkwright_check_layering root)
  set(faults "")
  foreach(row IN LISTS BLINKWRIGHT_LAYERS)
    string(REPLACE "|" ";" row "${row}")
    list(GET row 0 folder)
    list(GET row 1 allowed)
    string(REPLACE " " ";" allowed "${allowed}")
    file(GLOB_RECURSE sources ${root}/${folder}/*.h ${root}/${folder}/*.cpp)
    foreach(source IN LISTS sources)
      file(STRINGS ${source} includes REGEX "^[ \t]*#[ \t]*include")
      file(RELATIVE_PATH shown ${root} ${source})
      foreach(line IN LISTS includes)
        if(line MATCHES "[<\"]((core|widgets|app)/[^>\"]*)[>\"]")
          set(target ${CMAKE_MATCH_1})
          set(fine FALSE)
          foreach(prefix IN LISTS allowed)
            if(target MATCHES "^${prefix}/")
              set(fine TRUE)
            endif()
          endforeach()
          if(NOT fine)
            list(APPEND faults "${shown} includes ${target}: ${folder} may only use ${allowed}")
          endif()
        elseif(line MATCHES "\"\\.\\./")
          list(APPEND faults "${shown}: write includes from the top of the tree, not with ../")
        elseif(folder MATCHES "^${BLINKWRIGHT_QT_FREE}" AND line MATCHES "<(Q[A-Za-z]+|qcustomplot\\.h)")
          list(APPEND faults "${shown} includes ${CMAKE_MATCH_1}: ${BLINKWRIGHT_QT_FREE} is free of Qt")
        endif()
      endforeach()
    endforeach()
  endforeach()
  if(faults)
    list(JOIN faults "\n  " text)
    message(FATAL_ERROR "Includes against the layers core <- widgets <- app:\n  ${text}")
  endif()
endfunction()

if(CMAKE_SCRIPT_MODE_FILE AND DEFINED ROOT)
  get_filename_component(ROOT ${ROOT} ABSOLUTE)
  blinkwright_check_layering(${ROOT})
endif()
