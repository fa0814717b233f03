// All that a spread shows: its distribution with the figures, its parts, and the band of curves.
//
//   SpreadView view;
//   view.setOutcome(outcome, band, circuit, PartSet::A);    // shared
//   view.setFigure(1);                                      // one of view.figures()
#pragma once

#include "core/study/band.h"
#include "widgets/rooms/spread_tables.h"

#include <QTabWidget>

namespace blinkwright::widgets {

class BandPlot;
class RoomPlot;
class SpreadPlot;

class SpreadView : public QTabWidget {
    Q_OBJECT
  public:
    explicit SpreadView(QWidget* parent = nullptr);
    ~SpreadView() override;

    void setOutcome(std::shared_ptr<const study::SpreadOutcome> outcome,
                    std::shared_ptr<const study::Band> band, const circuit::Circuit& circuit,
                    circuit::PartSet set);
    void clear();
    const std::vector<SpreadFigureView>& figures() const { return m_figures; }
    void setFigure(std::size_t figure);
    /// What is found, in words: how many boards blink, where most are, and that none lies beyond the worst
    /// case.
    QString words() const;
    /// The plot of the page that is in front; that of the distribution where it has none.
    const RoomPlot& plotInFront() const;
    /// The table of the page in front, for the clipboard.
    QString text() const;
    std::shared_ptr<const study::SpreadOutcome> outcome() const { return m_outcome; }
    void setTheme(const Theme& theme);

    SpreadPlot& plot() const { return *m_plot; }
    FiguresTable& figuresTable() const { return *m_table; }
    PartsTable& partsTable() const { return *m_parts; }

  signals:
    void reelWished(blinkwright::circuit::PartId part, std::optional<blinkwright::circuit::PartId> with);

  private:
    void show();

    std::shared_ptr<const study::SpreadOutcome> m_outcome;
    circuit::Circuit m_circuit;
    circuit::PartSet m_set = circuit::PartSet::A;
    std::vector<SpreadFigureView> m_figures;
    std::size_t m_figure = 0;
    SpreadPlot* m_plot;
    FiguresTable* m_table;
    PartsTable* m_parts;
    BandPlot* m_band;
};

} // namespace blinkwright::widgets
