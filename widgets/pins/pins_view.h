// Pins: the Hook-up as a table, one row a pin with its role, its net and its voltage at the moment line. The
// same wiring, edited with the keyboard alone.
//
//   PinsView view;
//   view.setCircuit(circuit);
//   view.setVoltages(study::netVoltages(study, moment_s));
//   connect(&view, &PinsView::netWished, ...);   // what was typed into a pin's net cell
// Enter, F2 or any letter opens the net cell: type a net's name or a pin (`R1:2`), choose from the list with
// the arrows, Enter joins. An empty cell takes the pin off. Backspace does so without opening the cell. The
// window adds Insert (a part), Delete (the part) and Ctrl+Enter (its name and values).
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <map>
#include <memory>
#include <optional>

namespace blinkwright::widgets {

class PinsView : public QWidget {
    Q_OBJECT
  public:
    explicit PinsView(QWidget* parent = nullptr);
    ~PinsView() override;

    void setCircuit(const circuit::Circuit& circuit);
    /// Volt by net at the moment line; a net that is left out shows a dash.
    /// @param atRest rows that are sorted by voltage may change places; not while the line moves.
    void setVoltages(const std::map<circuit::NetId, double>& voltages, bool atRest = true);
    void setTheme(const Theme& theme);

    void selectPart(std::optional<circuit::PartId> part); ///< its first pin, without a signal
    void selectPin(circuit::PinRef pin);
    std::optional<circuit::PinRef> selectedPin() const;
    void focusFilter();

  signals:
    /// What the net cell shall mean; see circuit::editForNetText.
    void netWished(blinkwright::circuit::PinRef pin, const QString& text);
    void partActivated(blinkwright::circuit::PartId part); ///< a pin of it was chosen

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
