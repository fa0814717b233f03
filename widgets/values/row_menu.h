// The context menu of a value row: tie the value to another of the same unit, untie it, let Set B follow.
//
//   auto* menu = new RowMenu(circuit, {r4, "resistance"}, true, panel);   // deletes itself when closed
//   connect(menu, &RowMenu::tieWished, ...);
//   menu->popup(at);
#pragma once

#include "core/circuit/circuit.h"

#include <QMenu>

namespace blinkwright::widgets {

/// `R4`, or `setting of RV1` where it is not the part's main value.
QString valueName(const circuit::Circuit& circuit, const circuit::ValueRef& value);

class RowMenu : public QMenu {
    Q_OBJECT
  public:
    /// @param sets offers what concerns Set B, too
    RowMenu(const circuit::Circuit& circuit, const circuit::ValueRef& value, bool sets, QWidget* parent);

  signals:
    void tieWished(const blinkwright::circuit::ValueRef& to);
    void untieWished();
    void followWished(bool on);
};

} // namespace blinkwright::widgets
