// The figures of a spread, for choosers, tables and plots.
//
//   for (const SpreadFigureView& f : spreadFigures(*outcome)) f.name, f.statistics->p95, f.values
#pragma once

#include "core/study/spread.h"
#include "widgets/text/figure_text.h"

#include <QString>
#include <vector>

namespace blinkwright::widgets {

struct SpreadFigureView {
    enum class Kind { rate, period, duty, lampLit, lampMean };
    Kind kind = Kind::rate;
    std::size_t lamp = 0;
    QString name; ///< `Flash rate`
    units::Unit unit = units::Unit::hertz;
    study::SpreadFigure statistics;
    std::vector<double> values; ///< board by board
    QString text(double value) const;
    bool isShare() const { return kind == Kind::duty || kind == Kind::lampLit; }
    /// Relative change of this figure for that of a part.
    double sensitivity(const study::SpreadSensitivity& part) const;
    /// How many boards lie beyond the worst case: none, unless the search failed.
    long boardsBeyond() const;
};

/// Empty where the nominal board does not blink.
std::vector<SpreadFigureView> spreadFigures(const study::SpreadOutcome& outcome);

} // namespace blinkwright::widgets
