// Writes the curves of a study to a file, by its ending: .png, .svg, .pdf or .csv. The window and `export`
// both use it.
//
//   Result<void> done = exportStudy(study, curvesPage(circuit, PartSet::A), "mole.pdf");
//   exportStudies({&a, &b, "Set B", "B"}, page, "both.svg");
#pragma once

#include "core/circuit/circuit.h"
#include "core/io/csv_style.h"
#include "core/study/study.h"
#include "widgets/curves/curves_export.h"

#include <QString>
#include <optional>

namespace blinkwright::app {

enum class ExportKind { png, svg, pdf, csv };

/// By the ending of a file name, upper or lower case; nothing for any other.
std::optional<ExportKind> exportKind(const QString& path);

/// Title and the line of part values for the curves of one set.
widgets::CurvesPage curvesPage(const circuit::Circuit& circuit, circuit::PartSet set);
/// `R2 33 kΩ, C1 4.7 µF`: a set's part values; with another set, only those that the other shows otherwise.
QString partValues(const circuit::Circuit& circuit, circuit::PartSet set,
                   std::optional<circuit::PartSet> butNotOf = {});

/// What is written: the study of Set A, that of what it is compared with, or both.
struct StudiesToExport {
    const study::Study* first = nullptr;
    const study::Study* second = nullptr;
    QString secondName = {};                      ///< `Set B`
    QString secondBrief = {};                     ///< `B`
    std::shared_ptr<const study::Band> band = {}; ///< behind the curves of Set A
    widgets::RecordCurves records = {};           ///< of the real board; pictures only
    widgets::PageCurves curves() const;
    bool empty() const; ///< no curves in it
};
/// Their points as CSV, of a span of time or of all.
std::string curvesTable(const StudiesToExport& studies, const std::optional<widgets::Span>& span);

/// @return a fault that names the file; what stood in its place before is then left alone.
/// @param style of a table
Result<void> exportStudies(const StudiesToExport& studies, const widgets::CurvesPage& page,
                           const QString& path, const io::CsvStyle& style = io::pointCsv);

/// @return a fault that names the file; what stood in its place before is then left alone.
Result<void> exportStudy(const study::Study& study, const widgets::CurvesPage& page, const QString& path);

} // namespace blinkwright::app
