// Tables that only show: rows are chosen whole, nothing is edited, Tab leaves them.
//
//   prepareTable(*table);
//   table->setItem(0, 1, tableCell(tr("4.7 kΩ"), true));
#pragma once

#include <QTableWidget>

namespace blinkwright::widgets {

void prepareTable(QTableWidget& table);
/// @param number right-aligned
QTableWidgetItem* tableCell(const QString& text, bool number);
/// As high as its rows: what it stands in scrolls up and down, and it scrolls sideways where it must.
class WholeTable : public QTableWidget {
    Q_OBJECT
  public:
    WholeTable(int columns, QWidget* parent = nullptr);
    /// After its rows have changed.
    void fitToRows();

  protected:
    void resizeEvent(QResizeEvent* event) override;
};

} // namespace blinkwright::widgets
