#include "app/page_file.h"

#include "app/whole_file.h"

#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>

namespace blinkwright::app {

Result<void> writePage(const QString& path, const std::function<void(QPrinter&)>& print) {
    // Drawn into a folder of its own first: a page that fails half way must not take the place of an older
    // one.
    QTemporaryDir folder;
    if (!folder.isValid()) return notWritten(path, folder.errorString());
    QFile draft(folder.filePath(QStringLiteral("page.pdf")));
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(draft.fileName());
        print(printer);
    }
    if (!draft.open(QIODevice::ReadOnly)) return notWritten(path, draft.errorString());
    return writeWhole(path, draft.readAll());
}

} // namespace blinkwright::app
