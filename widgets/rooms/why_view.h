// Why the board differs from the textbook, as a bridge of bars: the textbook figure, what each cause adds or
// takes away, and the simulated board at the other end; where the board was measured, what remains
// unexplained leads on to that. A table, so that keys and readers can walk it.
//
//   WhyView view;
//   view.setWhy(why, study::whyMeasured(*why, measured));      // shared: an answer of study::why()
//   view.setQuantity(WhyView::Quantity::duty);
#pragma once

#include "core/study/unexplained.h"
#include "widgets/theme/theme.h"

#include <QTableWidget>
#include <memory>

namespace blinkwright::widgets {

/// One row of the bridge, as it is drawn.
struct BridgeBar {
    double from = 0, to = 0;
    bool end = false;      ///< textbook or simulated: a mark at `to`
    bool known = true;     ///< else there is nothing to draw
    bool measured = false; ///< in the colour of measurements
    double whisker = 0;    ///< standard uncertainty of `to`, drawn to both sides
};

class WhyView : public QTableWidget {
    Q_OBJECT
  public:
    enum class Quantity { period, duty };
    explicit WhyView(QWidget* parent = nullptr);
    ~WhyView() override;

    void setWhy(std::shared_ptr<const study::Why> why,
                const study::WhyMeasured& measured = {}); ///< null: empty
    void setQuantity(Quantity quantity);
    void setTheme(const Theme& theme);
    QString asText() const; ///< tab separated, for the clipboard
    const std::vector<BridgeBar>& bars() const { return m_bars; }

  private:
    void fill();
    void addMeasured(double book);
    double figureOf(const study::Phase& phase) const;
    QString textOf(double value) const;
    QString changeText(double value) const;
    void addRow(const QString& name, const QString& meaning, const QStringList& cells, const BridgeBar& bar);

    class Bridge;
    std::shared_ptr<const study::Why> m_why;
    study::WhyMeasured m_measured;
    Quantity m_quantity = Quantity::period;
    std::vector<BridgeBar> m_bars;
    Theme m_theme;
    Bridge* m_bridge;
};

} // namespace blinkwright::widgets
