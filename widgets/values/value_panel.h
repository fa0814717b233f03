// Values: one row a part value, with a logarithmic slider and a field that reads engineering text; beside
// them, when it is shown, a second column for Set B or for the values of another circuit.
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

    /// The second column. After each setCircuit(), before the next paint.
    /// @param circuit the same circuit for its Set B, or another one, whose parts are found by designator,
    /// kind and key, and which is shown read only
    void showSecond(const circuit::Circuit& circuit, circuit::PartSet set, const QString& title,
                    bool readOnly);
    void hideSecond();

  signals:
    /// A wish to set one value. One gesture (a drag, a typed entry, a key pressed and held) keeps one id.
    void valueWished(blinkwright::circuit::ValueRef which, double value, int gesture);
    /// The same for a value of the second column.
    void secondWished(blinkwright::circuit::ValueRef which, double value, int gesture);
    void followWished(blinkwright::circuit::ValueRef which, bool on); ///< Set B shall follow Set A
    void tieWished(blinkwright::circuit::ValueRef which, blinkwright::circuit::ValueRef to);
    void untieWished(blinkwright::circuit::ValueRef which);
    void gestureBegan(int gesture, blinkwright::circuit::PartSet set = blinkwright::circuit::PartSet::A);
    void gestureEnded(int gesture);
    void partActivated(blinkwright::circuit::PartId part); ///< its row got the focus

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
