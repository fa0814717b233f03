// A page that is printed into a PDF file, whole or not at all.
//
//   writePage(path, [&](QPrinter& printer) { widgets::printBuildPage(printer, circuit, set); });
#pragma once

#include "core/base/result.h"

#include <QString>
#include <functional>

class QPrinter;

namespace blinkwright::app {

Result<void> writePage(const QString& path, const std::function<void(QPrinter&)>& print);

} // namespace blinkwright::app
