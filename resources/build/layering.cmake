# The configure-time check of the layers, core <- widgets <- app: an include that goes another way stops the
# configuration with the file and the include named.
#
#   include(resources/build/layering.cmake)
#   blinkwright_check_layering(${CMAKE_SOURCE_DIR})
#
# By hand: cmake -DROOT=. -P resources/build/layering.cmake

# A folder, and the folders whose headers it may include. Every source of the project lies in one of these folders.
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

# The folders that must see no header of Qt or QCustomPlot.
set(BLINKWRIGHT_QT_FREE "^core/")

# Folders of the tree that an include can name at all.
set(BLINKWRIGHT_OWN_FOLDERS "^(core|widgets|app|tests|resources|samples)/")

# Adds to `faults` (in the caller) what is wrong with the includes of one source.
function(blinkwright_check_source root source folder allowed)
  file(RELATIVE_PATH shown ${root} ${source})
  # One match an include line; nothing of it can hold a bracket or a semicolon, which would upset a CMake list.
  file(READ ${source} content)
  string(REGEX MATCHALL "\n[ \t]*#[ \t]*(include|import)[a-z_]*[ \t]*[^ \t\n;]?[^]>\"\n;[]*" lines "\n${content}")
  foreach(line IN LISTS lines)
    if(NOT line MATCHES "[ \t]*#[ \t]*[a-z_]+[ \t]*[<\"](.+)$")
      string(STRIP "${line}" line)
      list(APPEND faults "${shown}: ${line}: name the header itself")
      continue()
    endif()
    set(target "${CMAKE_MATCH_1}")
    if(target MATCHES "(^|/)\\.\\.?/")
      list(APPEND faults "${shown} includes ${target}: write includes from the top of the tree")
    elseif(target MATCHES "${BLINKWRIGHT_OWN_FOLDERS}")
      set(fine FALSE)
      foreach(prefix IN LISTS allowed)
        if(target MATCHES "^${prefix}/")
          set(fine TRUE)
        endif()
      endforeach()
      if(NOT fine)
        list(JOIN allowed ", " names)
        list(APPEND faults "${shown} includes ${target}: ${folder} may only use ${names}")
      endif()
    elseif(shown MATCHES "${BLINKWRIGHT_QT_FREE}" AND target MATCHES "^(Q[A-Z]|q[a-z0-9_]+\\.h|Qt)")
      list(APPEND faults "${shown} includes ${target}: core is free of Qt")
    endif()
  endforeach()
  set(faults "${faults}" PARENT_SCOPE)
endfunction()

function(blinkwright_check_layering root)
  set(faults "")
  set(checked 0)
  foreach(top core widgets app)
    file(GLOB_RECURSE sources ${root}/${top}/*)
    list(FILTER sources INCLUDE REGEX "\\.(h|hh|hpp|hxx|inl|ipp|tpp|c|cc|cpp|cxx)$")
    foreach(source IN LISTS sources)
      file(RELATIVE_PATH shown ${root} ${source})
      set(row "")
      foreach(candidate IN LISTS BLINKWRIGHT_LAYERS)
        string(REGEX MATCH "^[^|]+" folder "${candidate}")
        if(shown MATCHES "^${folder}/")
          set(row "${candidate}")
          break()
        endif()
      endforeach()
      if(NOT row)
        list(APPEND faults "${shown}: its folder has no row in resources/build/layering.cmake")
        continue()
      endif()
      string(REGEX REPLACE "^[^|]+\\|" "" allowed "${row}")
      string(REPLACE " " ";" allowed "${allowed}")
      blinkwright_check_source(${root} ${source} ${folder} "${allowed}")
      math(EXPR checked "${checked} + 1")
    endforeach()
  endforeach()
  if(faults)
    list(JOIN faults "\n  " text)
    message(FATAL_ERROR "Includes against the layers core <- widgets <- app:\n  ${text}")
  endif()
  if(checked EQUAL 0)
    message(FATAL_ERROR "No sources under ${root}: the layers cannot be checked")
  endif()
  message(STATUS "Layers: the includes of ${checked} sources go the allowed way")
endfunction()

if(CMAKE_SCRIPT_MODE_FILE AND DEFINED ROOT)
  get_filename_component(ROOT ${ROOT} ABSOLUTE)
  blinkwright_check_layering(${ROOT})
endif()
