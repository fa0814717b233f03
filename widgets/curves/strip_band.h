// The band of simulated boards behind the strips: from the 5th to the 95th percentile at each moment, pale.
//
//   band->setBand(std::make_shared<const study::Band>(study::band(circuit, set, request).value()));
#pragma once

#include "core/study/band.h"
#include "widgets/curves/strip_plot.h"

namespace blinkwright::widgets {

class StripBand : public QCPLayerable {
    Q_OBJECT
  public:
    explicit StripBand(StripPlot* plot) : QCPLayerable(plot, "band"), m_plot(plot) {}

    void setBand(std::shared_ptr<const study::Band> band) { m_band = std::move(band); }
    bool isThere() const { return m_band && m_band->time_s.size() > 1; }
    /// Widens the ranges of strips so that no band is cut off.
    void widen(std::array<Span, stripCount>& ranges) const;
    /// A curve's colour as a band has it: pale, and one shows through another.
    static QColor shade(QColor curve);

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override { painter->setAntialiasing(true); }
    void draw(QCPPainter* painter) override;

  private:
    void drawCurve(QCPPainter* painter, Strip strip, const study::BandCurve& curve, const QColor& colour);
    StripPlot* m_plot;
    std::shared_ptr<const study::Band> m_band;
};

} // namespace blinkwright::widgets
