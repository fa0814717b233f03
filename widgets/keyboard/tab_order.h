// The order in which Tab goes through a window: as the window is read, row by row and in each row from left
// to right, whatever the order in which its controls were made. What stands in one panel or group stays
// together.
//
//   layTabOrder(*dialog);         // for what stands in it now
//   new TabOrder(mainWindow);     // for every window: when it is shown, and before each Tab
#pragma once

#include <QObject>

#include <vector>

class QWidget;

namespace blinkwright::widgets {

/// What takes the focus in a window, in the order in which it is read; what is hidden is left out.
std::vector<QWidget*> readingOrder(QWidget& window);
/// Has Tab go through the window in that order.
void layTabOrder(QWidget& window);

/// Hears the events of all windows while it lives. Controls come, go and move while a window is open, so the
/// order is looked at again before each Tab; only one that has become another is laid anew.
class TabOrder : public QObject {
    Q_OBJECT
  public:
    explicit TabOrder(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace blinkwright::widgets
