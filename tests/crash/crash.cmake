# The program that is killed, for the test and the figure of what a crash leaves.
include_guard(GLOBAL)
add_executable(crash_child ${CMAKE_CURRENT_LIST_DIR}/crash_child.cpp)
target_link_libraries(crash_child PRIVATE blinkwright_app)
