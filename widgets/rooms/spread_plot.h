// How one figure is spread over the boards: bars that count them, and the share of boards up to each value,
// with the nominal board, the percentiles and the worst case marked.
//
//   SpreadPlot plot(RoomPlot::Use::screen);
//   plot.setFigure(spreadFigures(outcome)[0], PartSet::A);
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/rooms/room_plot.h"
#include "widgets/rooms/spread_figures.h"

#include <optional>

namespace blinkwright::widgets {

class ScaleTicker;

class SpreadPlot final : public RoomPlot {
    Q_OBJECT
  public:
    explicit SpreadPlot(Use use, QWidget* parent = nullptr);

    void setFigure(SpreadFigureView figure, circuit::PartSet set);
    void clear();
    std::unique_ptr<RoomPlot> forPage() const override;
    /// Boards in each bar, from the lowest.
    const std::vector<long>& bars() const { return m_bars; }

  protected:
    void restyle() override;
    void paintOver(QCPPainter& painter) override;

  private:
    void draw();
    QColor colour() const { return m_set == circuit::PartSet::A ? theme().setA : theme().setB; }

    std::optional<SpreadFigureView> m_figure;
    circuit::PartSet m_set = circuit::PartSet::A;
    std::vector<long> m_bars;
    double m_barFrom = 0, m_barWidth = 0;
    QSharedPointer<ScaleTicker> m_values;
};

} // namespace blinkwright::widgets
