// One SI prefix for an axis and all that is read off it.
//
//   AxisScale scale = AxisScale::of(0.012, Unit::ampere);   // mA
//   scale.unitText();            // "mA"
//   scale.text(0.0091, 2);       // "9.10 mA"
#pragma once

#include "core/units/engineering.h"

#include <QString>
#include <qcustomplot.h>

namespace blinkwright::widgets {

struct AxisScale {
    QString symbol; ///< of the unit
    QString prefix;
    double factor = 1; ///< SI value of one step of the prefix

    /// @param magnitude largest value on the axis [SI]
    static AxisScale of(double magnitude, units::Unit unit);
    static AxisScale ofTime(double magnitude_s);

    QString unitText() const { return prefix + symbol; }
    /// Number and unit with so many decimals, in the prefix of the axis.
    QString text(double value, int decimals) const;
    /// Decimals that tell about a five-hundredth of `span` apart, 0 to 9.
    int decimalsFor(double span) const;
};

/// Number with a true minus sign and a decimal point.
QString plainNumber(double value, int decimals);

/// Ticks at round values whose labels are in the axis' prefix, all with the same decimals.
class ScaleTicker : public QCPAxisTicker {
  public:
    AxisScale scale;

  protected:
    double getTickStep(const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar formatChar, int precision) override;

  private:
    double m_step = 1;
};

} // namespace blinkwright::widgets
