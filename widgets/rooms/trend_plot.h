// Trend: one figure against one value, a curve a set, the textbook dotted beside it. A line stands at each
// set's present value; by mouse and keys it is moved along the curve.
//
//   TrendPlot plot(RoomPlot::Use::screen);
//   plot.setPicture({value, range, figure, {{PartSet::A, tr("Set A"), trend, exact, 68e3}}, PartSet::A,
//   marks}); connect(&plot, &TrendPlot::wished, ...);      // between began() and ended(); the line stays
//   where it is plot.setPresent(PartSet::A, 47e3);            // until it is told
#pragma once

#include "widgets/rooms/room_plot.h"
#include "widgets/rooms/trend_figures.h"

#include <QTimer>

namespace blinkwright::widgets {

class RatioTicker;
class ScaleTicker;

/// What one set's curve is drawn from.
struct TrendLine {
    circuit::PartSet set = circuit::PartSet::A;
    QString name;                              ///< `Set A`
    std::shared_ptr<const study::Trend> trend; ///< over the range
    std::vector<study::TrendPoint> exact =
        {}; ///< single values that were settled too: the present one, marks
    double present = 0;
};

/// A value of note on the axis.
struct TrendMark {
    double value = 0;
    QString words;
    bool withFigure = false; ///< its figure is written beside it
};

struct TrendPicture {
    TrendValue value;
    TrendRange range;
    TrendFigure figure;
    std::vector<TrendLine> lines;
    circuit::PartSet held = circuit::PartSet::A; ///< the set whose line the keys move
    std::vector<TrendMark> marks = {};
};

/// A stretch of the range where a set does not blink.
struct TrendGap {
    double from = 0, to = 0;
};
/// Up to half way to the neighbours that blink, and to the ends of the range.
std::vector<TrendGap> gapsOf(const TrendLine& line, const TrendRange& range);
/// The figure at a value: exactly, where it was settled; else between its neighbours on the curve.
std::optional<double> figureAt(const TrendLine& line, const TrendFigure& figure, const TrendRange& range,
                               double value);

class TrendPlot final : public RoomPlot {
    Q_OBJECT
  public:
    explicit TrendPlot(Use use, QWidget* parent = nullptr);

    void setPicture(TrendPicture picture);
    void clear();
    const TrendPicture& picture() const { return m_picture; }
    void setPresent(circuit::PartSet set, double value);
    void setHeld(circuit::PartSet set);
    bool inGesture() const { return m_dragging || m_bursting; }
    std::unique_ptr<RoomPlot> forPage() const override;
    /// Where a set's line meets its curve, in pixels of the plot; for tests and tools.
    QPointF handleAt(circuit::PartSet set) const;

  signals:
    void began();
    void wished(blinkwright::circuit::PartSet set, double value);
    void ended();
    void heldChanged(blinkwright::circuit::PartSet set);

  protected:
    void restyle() override;
    void paintOver(QCPPainter& painter) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void layOutAxes();
    void drawCurves();
    void paintGaps(QCPPainter& painter) const;
    void paintMarks(QCPPainter& painter, std::vector<QRectF>& taken) const;
    void paintPresent(QCPPainter& painter, std::vector<QRectF>& taken) const;
    /// Where words of a size stand beside a point with no curve and no other words under them, as near to it
    /// as can be; what they take is added to `taken`.
    QRectF placeBeside(const QPointF& at, const QRectF& size, std::vector<QRectF>& taken) const;
    bool isClear(const QRectF& box, const std::vector<QRectF>& taken) const;
    bool setsCoincide() const;
    QColor colourOf(circuit::PartSet set) const;
    TrendLine* lineOf(circuit::PartSet set);
    const TrendLine* lineNear(double x) const;
    double xOf(double value) const;
    void wish(double value);
    void burst(double value);
    void endGesture();

    TrendPicture m_picture;
    QSharedPointer<RatioTicker> m_valueRatios, m_figureRatios;
    QSharedPointer<ScaleTicker> m_valueSteps, m_figureSteps;
    bool m_dragging = false;
    bool m_bursting = false; ///< a run of key presses
    double m_place = 0, m_lastX = 0, m_before = 0;
    QTimer m_quiet; ///< ends the run of key presses
};

} // namespace blinkwright::widgets
