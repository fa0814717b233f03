// Everything that the program is built with, and under which licence that is.
#pragma once

#include <QString>
#include <vector>

namespace blinkwright::app::help {

struct Library {
    QString name;
    QString package; ///< as CMake finds it
    QString licence; ///< by its SPDX short name
    QString version; ///< that this program was built with; empty where it is no part of the program
    bool testsOnly = false;
};
std::vector<Library> libraries();

} // namespace blinkwright::app::help
