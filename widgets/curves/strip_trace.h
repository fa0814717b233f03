// One curve of a strip. On screen it is drawn straight onto a painter, without the plot's own buffers, and
// its lines are handed over in one go.
//
//   auto* trace = new StripTrace(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft)); // the plot's
//   trace->data()->set(points, true);
//   trace->paintOn(painter);
#pragma once

#include <qcustomplot.h>

namespace blinkwright::widgets {

/// Of the pen that a measured record is drawn with, where it is not too dense for a smooth line.
inline constexpr double recordWidth = 1.2;

class StripTrace : public QCPGraph {
    Q_OBJECT
  public:
    StripTrace(QCPAxis* time, QCPAxis* value);
    /// What the plot does for each of its layers' children.
    void paintOn(QCPPainter* painter);

  protected:
    void drawLinePlot(QCPPainter* painter, const QVector<QPointF>& points) const override;
};

} // namespace blinkwright::widgets
