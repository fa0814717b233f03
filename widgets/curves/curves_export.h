// Exports of the curves: always on white, with title, part values and axis units, whatever the theme.
#pragma once

#include "core/base/result.h"
#include "core/engine/curves.h"

#include <QImage>
#include <QString>

namespace blinkwright::widgets {

struct CurvesPage {
    QString title;
    QString values; ///< one line: `R1 10 kΩ, R2 68 kΩ, C1 10 µF ...`; wrapped if long
    double width_mm = 180;
    double height_mm = 150;
    int dpi = 300; ///< PNG only
};

enum class PageFormat { png, svg, pdf };

Result<void> exportCurves(const engine::Curves& curves, const CurvesPage& page, PageFormat format,
                          const QString& path);
QImage curvesPicture(const engine::Curves& curves, const CurvesPage& page);

} // namespace blinkwright::widgets
