#include "app/whole_file.h"

#include "widgets/text/words.h"

#include <QDir>
#include <QSaveFile>

namespace blinkwright::app {

using widgets::Words;

Fault notWritten(const QString& path, const QString& why) {
    return Fault{QDir::toNativeSeparators(path).toStdString(),
                 Words::tr("cannot be written: %1").arg(why).toStdString()};
}

Result<void> writeWhole(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    // Flushed by hand: commit() of Qt 6.4 overlooks a write that fails while its buffer is emptied, and would
    // put a cut-off file in the place of the whole one.
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.flush() ||
        !file.commit())
        return notWritten(path, file.errorString());
    return {};
}

} // namespace blinkwright::app
