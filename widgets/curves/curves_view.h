// Curves: three strips on one time axis (output, timing capacitor with its levels, lamp currents), a moment
// line through all of them, and the pale echo of the curves before a drag.
#pragma once

#include "core/engine/curves.h"
#include "core/study/band.h"
#include "widgets/curves/record_curve.h"
#include "widgets/curves/strips.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class CurvesView : public QWidget {
    Q_OBJECT
  public:
    explicit CurvesView(QWidget* parent = nullptr);
    ~CurvesView() override;

    using Shared = std::shared_ptr<const engine::Curves>;
    void setTheme(const Theme& theme);
    /// New curves of Set A; the visible span is kept if the user has chosen one, else fitted.
    void setCurves(Shared curves);
    /// Curves of Set B, or of another circuit, laid over those of Set A; null takes them away.
    /// @param name of them in the keys, @param brief the same after a lamp's name: `D1 in B`
    void setSecond(Shared curves, const QString& name = {}, const QString& brief = {});
    /// Curves shown pale behind; null takes them away. While they are there, the fitted span is theirs
    /// (unless the new curves are more than twice or less than half as long), so that a drag moves the curves
    /// and not the axis.
    /// @param ofSecond they are those of the curves that are laid over
    void setEcho(Shared curves, bool ofSecond = false);
    /// The band of simulated boards behind Set A's curves; null takes it away.
    void setBand(std::shared_ptr<const study::Band> band);
    bool hasBand() const;
    /// Records of the real board, laid over in the colour of measurements; empty takes them away. The time
    /// axis stays that of the curves.
    void setRecords(RecordCurves records);
    void setMessage(const QString& text); ///< shown over empty strips: why there are no curves

    double moment_s() const;
    Span visibleSpan() const;
    void setMoment(double time_s); ///< moves the line without a signal
    /// The same while it moves by itself: the visible span follows page by page, and nothing is told to those
    /// who listen, until setMoment() does.
    void playMoment(double time_s);
    void fit();
    void zoomBy(double factor); ///< about the moment line; above 1 shows less time, larger

  signals:
    void momentMoved(double time_s); ///< by mouse or keys
    void painted();                  ///< after each repaint with curves in it

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
