// Exports of the curves: always on white, with title, part values and axis units, whatever the theme.
#pragma once

#include "core/base/result.h"
#include "core/engine/curves.h"
#include "core/study/band.h"
#include "widgets/curves/page_style.h"
#include "widgets/curves/record_curve.h"

#include <QImage>
#include <QString>
#include <memory>
#include <optional>

class QCPPainter;

namespace blinkwright::widgets {

struct CurvesPage {
    QString title;
    QString values; ///< one line: `R1 10 kΩ, R2 68 kΩ, C1 10 µF ...`; wrapped if long
    double width_mm = 180;
    double height_mm = 150;
    int dpi = 300;                       ///< PNG only
    double fontPoints = usualFontPoints; ///< of labels; the title is larger
    PageStyle style = {};
    std::optional<Span> span = {};       ///< of time; else all of it
    std::optional<double> moment_s = {}; ///< where a line stands with the values of the curves
    static constexpr double usualFontPoints = 9;
};

/// The curves of a page: of Set A, of the set that is laid over, or of both. Null for what is not there.
struct PageCurves {
    PageCurves() = default;
    PageCurves(const engine::Curves& only) : first(&only) {}
    PageCurves(const engine::Curves* a, const engine::Curves* b, QString name, QString briefName)
        : first(a), second(b), secondName(std::move(name)), secondBrief(std::move(briefName)) {}

    const engine::Curves* first = nullptr;
    const engine::Curves* second = nullptr;
    QString secondName = {};                      ///< in the keys
    QString secondBrief = {};                     ///< after a lamp's name
    std::shared_ptr<const study::Band> band = {}; ///< behind the curves of Set A
    RecordCurves records = {};                    ///< of the real board
};

enum class PageFormat { png, svg, pdf };

Result<void> exportCurves(const PageCurves& curves, const CurvesPage& page, PageFormat format,
                          const QString& path);
QImage curvesPicture(const PageCurves& curves, const CurvesPage& page);
/// The strips alone, as on a page but without title and values, for a page of somebody else's.
/// @param painter its unit is a pixel of 96 to the inch.
void paintCurves(QCPPainter& painter, const PageCurves& curves, const QSize& room);

} // namespace blinkwright::widgets
