// Opens a file for reading, with the reason where it cannot be.
//
//   auto file = openFile(path);
//   if (!file) return file.fault();     // "PATH: there is no such file"
#pragma once

#include "core/base/result.h"

#include <fstream>
#include <string>

namespace blinkwright::io {

Result<std::ifstream> openFile(const std::string& path);

} // namespace blinkwright::io
