// Helpers of these tests: small circuits without a file, and waiting for something to become true.
#pragma once

#include "core/circuit/circuit.h"
#include "places.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QString>

#include <string>

namespace blinkwright::test {

inline QString sample(const char* name) {
    return QStringLiteral(BLINKWRIGHT_SAMPLES "/") + QLatin1String(name) + QStringLiteral(".blinkwright");
}

inline QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void writeFile(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) file.write(bytes);
}

/// Lets events happen until `isTrue()`; says whether it came true within the time.
template <class Condition>
bool waitFor(Condition isTrue, int longest_ms = 10000) {
    QElapsedTimer time;
    time.start();
    while (!isTrue() && time.elapsed() < longest_ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    return isTrue();
}

inline double stated(const circuit::Circuit& circuit, const char* ref, const char* key) {
    const circuit::Part* part = circuit.findRef(ref);
    if (!part) return 0;
    const auto value = circuit.value(circuit::PartSet::A, part->id, key);
    const double* number = value ? std::get_if<double>(&*value) : nullptr;
    return number ? *number : 0;
}

} // namespace blinkwright::test
