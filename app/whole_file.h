// Writes a file whole or not at all: into a new file beside it, which then takes its place.
//
//   if (Result<void> done = writeWhole(path, bytes); !done) tell(done.fault());   // the old file is as it
//   was
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

namespace blinkwright::app {

/// @return a fault that names the file and says why.
Result<void> writeWhole(const QString& path, const QByteArray& bytes);

/// "PATH: cannot be written: WHY"
Fault notWritten(const QString& path, const QString& why);

} // namespace blinkwright::app
