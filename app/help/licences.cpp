#include "app/help/licences.h"

#include <Eigen/Core>
#include <nlohmann/json_fwd.hpp>
#include <qcustomplot.h>

namespace blinkwright::app::help {

namespace {

QString version(int major, int minor, int patch) {
    return QStringLiteral("%1.%2.%3").arg(major).arg(minor).arg(patch);
}

} // namespace

// Licences as /usr/share/doc/PACKAGE/copyright of Debian 12 has them, by the names that SPDX gives them.
std::vector<Library> libraries() {
    return {
        {"Qt", "Qt6", "LGPL-3.0-only", QString::fromLatin1(qVersion())},
        {"QCustomPlot", "QCustomPlotQt6", "GPL-3.0-or-later", QStringLiteral(QCUSTOMPLOT_VERSION_STR)},
        {"Eigen", "Eigen3", "MPL-2.0",
         version(EIGEN_WORLD_VERSION, EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION)},
        {"JSON for Modern C++ (nlohmann/json)", "nlohmann_json", "MIT",
         version(NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH)},
        {"GoogleTest", "GTest", "BSD-3-Clause", {}, true},
        {"SUNDIALS", "SUNDIALS", "BSD-3-Clause", {}, true},
        {"Google Benchmark", "benchmark", "Apache-2.0", {}, true},
    };
}

} // namespace blinkwright::app::help
