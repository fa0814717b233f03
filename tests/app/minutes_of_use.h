// What somebody does with the window in a minute, compressed in time: a file is opened, a value dragged,
// steps are taken back and done again, the curves are looked at from power-on and settled, and exported.
//
//   app::MainWindow window(settings);
//   test::useForMinutes(window, folder.path(), 10);
//   const auto before = test::heapAtRest_bytes(window, samples);
#pragma once

#include <QString>

#include <cstddef>

namespace blinkwright::app {
class MainWindow;
}

namespace blinkwright::test {

/// @param folder for what is exported. @param samples where the samples lie
void useForMinutes(app::MainWindow& window, const QString& folder, const QString& samples, int minutes);

/// What the program has asked for and not given back (glibc), without what lies unused in its pools.
std::size_t heapInUse_bytes();

/// The same with one sample open, in a window of one size: two of these differ by what was kept, not by what
/// is shown.
std::size_t heapAtRest_bytes(app::MainWindow& window, const QString& samples);

} // namespace blinkwright::test
