#include "app/exporter.h"

#include "app/whole_file.h"
#include "core/devices/board.h"
#include "core/io/reports.h"
#include "core/units/engineering.h"
#include "widgets/text/words.h"

#include <QDir>
#include <QFileInfo>
#include <QStringList>
#include <QTemporaryDir>

namespace blinkwright::app {

using widgets::Words;

namespace {

Fault faultAt(const QString& path, const QString& why) {
    return Fault{QDir::toNativeSeparators(path).toStdString(), why.toStdString()};
}

/// Draws into a folder of its own first: a drawing that fails half way must not take the place of an older
/// export.
Result<void> writePicture(const widgets::PageCurves& curves, const widgets::CurvesPage& page,
                          widgets::PageFormat format, const QString& path) {
    QTemporaryDir folder;
    if (!folder.isValid()) return notWritten(path, folder.errorString());
    const QString draft = folder.filePath(QStringLiteral("curves.") + QFileInfo(path).suffix().toLower());
    if (Result<void> drawn = widgets::exportCurves(curves, page, format, draft); !drawn)
        return faultAt(path, QString::fromStdString(drawn.fault().text));
    QFile file(draft);
    if (!file.open(QIODevice::ReadOnly)) return notWritten(path, file.errorString());
    return writeWhole(path, file.readAll());
}

/// `R1 10 kΩ`; nothing for a part whose first value is no plain number.
QString valueText(const circuit::Circuit& circuit, circuit::PartSet set, const circuit::Part& part) {
    const circuit::KindInfo& kind = circuit::info(part.kind);
    if (kind.keys.empty()) return {};
    const circuit::KeyInfo& key = kind.keys.front();
    const std::optional<circuit::Value> value = devices::effectiveValue(circuit, set, part.id, key.key);
    if (!value) return {};
    const QString ref = QString::fromStdString(part.ref) + QChar::Nbsp;
    if (const double* number = std::get_if<double>(&*value)) {
        QString text = QString::fromStdString(units::formatQuantity(*number, key.unit));
        return ref + text.replace(u' ', QChar(QChar::Nbsp));
    }
    if (const std::string* word = std::get_if<std::string>(&*value))
        return ref + QString::fromStdString(*word);
    return {};
}

} // namespace

std::optional<ExportKind> exportKind(const QString& path) {
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("png")) return ExportKind::png;
    if (ending == QLatin1String("svg")) return ExportKind::svg;
    if (ending == QLatin1String("pdf")) return ExportKind::pdf;
    if (ending == QLatin1String("csv")) return ExportKind::csv;
    return {};
}

widgets::CurvesPage curvesPage(const circuit::Circuit& circuit, circuit::PartSet set) {
    widgets::CurvesPage page;
    page.title = QString::fromStdString(circuit.title);
    page.values = partValues(circuit, set);
    return page;
}

QString partValues(const circuit::Circuit& circuit, circuit::PartSet set,
                   std::optional<circuit::PartSet> butNotOf) {
    QStringList values;
    for (const circuit::Part& part : circuit.parts()) {
        const QString text = valueText(circuit, set, part);
        if (text.isEmpty() || (butNotOf && text == valueText(circuit, *butNotOf, part))) continue;
        values << text;
    }
    return values.join(QStringLiteral(", "));
}

widgets::PageCurves StudiesToExport::curves() const {
    widgets::PageCurves page{first ? &first->curves : nullptr, second ? &second->curves : nullptr, secondName,
                             secondBrief};
    page.band = band;
    page.records = records;
    return page;
}

bool StudiesToExport::empty() const {
    const auto none = [](const study::Study* study) { return !study || study->curves.time_s.empty(); };
    return none(first) && none(second);
}

Result<void> exportStudy(const study::Study& study, const widgets::CurvesPage& page, const QString& path) {
    return exportStudies({&study, nullptr}, page, path);
}

std::string curvesTable(const StudiesToExport& studies, const std::optional<widgets::Span>& span) {
    const auto curvesOf = [&](const study::Study& study) {
        return span ? engine::within(study.curves, span->begin, span->end) : study.curves;
    };
    if (studies.first && studies.second)
        return io::curvesCsv(curvesOf(*studies.first), curvesOf(*studies.second),
                             studies.secondName.toStdString());
    return io::curvesCsv(curvesOf(studies.first ? *studies.first : *studies.second));
}

Result<void> exportStudies(const StudiesToExport& studies, const widgets::CurvesPage& page,
                           const QString& path, const io::CsvStyle& style) {
    const std::optional<ExportKind> kind = exportKind(path);
    if (!kind) return faultAt(path, Words::tr("the name must end in .png, .svg, .pdf or .csv"));
    if (studies.empty()) return faultAt(path, Words::tr("there are no curves to write"));
    switch (*kind) {
    case ExportKind::png:
        return writePicture(studies.curves(), page, widgets::PageFormat::png, path);
    case ExportKind::svg:
        return writePicture(studies.curves(), page, widgets::PageFormat::svg, path);
    case ExportKind::pdf:
        return writePicture(studies.curves(), page, widgets::PageFormat::pdf, path);
    case ExportKind::csv:
        break;
    }
    return writeWhole(path, QByteArray::fromStdString(io::inStyle(curvesTable(studies, page.span), style)));
}

} // namespace blinkwright::app
