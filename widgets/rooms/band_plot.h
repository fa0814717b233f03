// The band of random boards: capacitor voltage above, lamp currents below, from the 5th to the 95th
// percentile at each moment, the nominal board as a line in it.
//
//   BandPlot plot(RoomPlot::Use::screen);
//   plot.setBand(std::make_shared<const study::Band>(band), PartSet::A);
#pragma once

#include "core/study/band.h"
#include "widgets/rooms/room_plot.h"

namespace blinkwright::widgets {

class ScaleTicker;

class BandPlot final : public RoomPlot {
    Q_OBJECT
  public:
    explicit BandPlot(Use use, QWidget* parent = nullptr);

    void setBand(std::shared_ptr<const study::Band> band, circuit::PartSet set); ///< null: empty
    std::unique_ptr<RoomPlot> forPage() const override;

  protected:
    void restyle() override;
    void paintOver(QCPPainter& painter) override;

  private:
    void draw();
    void drawBand(QCPAxisRect* rect, const study::BandCurve& curve, const QColor& colour);
    void drawNominal(QCPAxisRect* rect, const study::BandCurve& curve, const QColor& colour);
    std::vector<QColor> lampColours() const;

    std::shared_ptr<const study::Band> m_band;
    circuit::PartSet m_set = circuit::PartSet::A;
    QCPAxisRect *m_upper, *m_lower;
    QSharedPointer<ScaleTicker> m_time, m_volts, m_amperes;
};

} // namespace blinkwright::widgets
