// How curves are exported: what is on the page and how large. Remembered between two starts.
//
//   ExportChoice choice = ExportChoice::from(settings.answers("export"));
//   choice.applyTo(page, visibleSpan, moment_s);
//   settings.setAnswers("export", choice.kept());
#pragma once

#include "widgets/curves/curves_export.h"

#include <QVariantMap>

namespace blinkwright::app {

struct ExportChoice {
    double width_mm = 180, height_mm = 150;                   ///< 40 to 400
    int dpi = 300;                                            ///< 72 to 1200
    double fontPoints = widgets::CurvesPage::usualFontPoints; ///< 5 to 24
    widgets::PageStyle style;
    bool visibleOnly = false; ///< the span of time that the window shows
    bool moment = false;      ///< the values at the moment line
    bool operator==(const ExportChoice&) const = default;

    static ExportChoice from(const QVariantMap& kept); ///< what is missing or out of range is as usual
    QVariantMap kept() const;
    void applyTo(widgets::CurvesPage& page, widgets::Span visible, double moment_s) const;
};

} // namespace blinkwright::app
