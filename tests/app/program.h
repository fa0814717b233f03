// The program itself, started headless.
#pragma once

#include <QCoreApplication>
#include <QProcess>

namespace blinkwright::test {

/// What `readings` prints of a file.
inline QByteArray headlessReadings(const QString& file) {
    QProcess program;
    program.start(QCoreApplication::applicationDirPath() + QStringLiteral("/blinkwright"),
                  {QStringLiteral("readings"), file});
    program.waitForFinished();
    return program.readAllStandardOutput();
}

} // namespace blinkwright::test
