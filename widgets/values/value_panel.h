// Values: one row a part value, with a logarithmic slider and a field that reads engineering text.
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"

#include <QScrollArea>
#include <memory>

namespace blinkwright::widgets {

class ValuePanel : public QScrollArea {
    Q_OBJECT
  public:
    explicit ValuePanel(QWidget* parent = nullptr);
    ~ValuePanel() override;

    /// Shows the values of a set. Rows are kept (and a drag goes on) while the parts stay the same.
    void setCircuit(const circuit::Circuit& circuit, circuit::PartSet set);
    void setTheme(const Theme& theme);
    void showPart(circuit::PartId part); ///< brings its row into view and marks it

  signals:
    /// A wish to set one value. One gesture (a drag, a typed entry, a key pressed and held) keeps one id.
    void valueWished(blinkwright::circuit::ValueRef which, double value, int gesture);
    void gestureBegan(int gesture);
    void gestureEnded(int gesture);
    void partActivated(blinkwright::circuit::PartId part); ///< its row got the focus

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
