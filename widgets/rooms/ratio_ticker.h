// Ticks of a logarithmic axis, each with the SI prefix that suits it: 10 kΩ, 20 kΩ, 50 kΩ ... 1 MΩ.
#pragma once

#include "core/units/engineering.h"

#include <qcustomplot.h>

namespace blinkwright::widgets {

class RatioTicker : public QCPAxisTicker {
  public:
    units::Unit unit = units::Unit::none;

  protected:
    double getTickStep(const QCPRange&) override { return 1; }
    int getSubTickCount(double) override { return 0; }
    QVector<double> createTickVector(double step, const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar formatChar, int precision) override;
};

} // namespace blinkwright::widgets
