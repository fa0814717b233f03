// The whole text of a cell that has too little room for it, in a tool tip: of every table and list of the
// program.
//
//   new WholeCells(window);   // for as long as the window lives
#pragma once

#include <QObject>

class QAbstractItemView;
class QHelpEvent;

namespace blinkwright::widgets {

class WholeCells : public QObject {
    Q_OBJECT
  public:
    explicit WholeCells(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    static bool show(const QAbstractItemView& view, const QHelpEvent& wanted);
};

} // namespace blinkwright::widgets
