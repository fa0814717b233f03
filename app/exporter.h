// Writes the curves of a study to a file, by its ending: .png, .svg, .pdf or .csv. The window and `export`
// both use it.
//
//   Result<void> done = exportStudy(study, curvesPage(circuit, PartSet::A), "mole.pdf");
#pragma once

#include "core/circuit/circuit.h"
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

/// @return a fault that names the file; what stood in its place before is then left alone.
Result<void> exportStudy(const study::Study& study, const widgets::CurvesPage& page, const QString& path);

} // namespace blinkwright::app
