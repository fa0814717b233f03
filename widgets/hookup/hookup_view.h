// The Hook-up: the circuit drawn as parts and wires, with a lens beside each lamp that lights with its current.
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"

#include <QAbstractScrollArea>
#include <QImage>
#include <map>

namespace blinkwright::widgets {

class HookupView : public QAbstractScrollArea {
    Q_OBJECT
  public:
    explicit HookupView(QWidget* parent = nullptr);
    ~HookupView() override;

    void setCircuit(const circuit::Circuit& circuit);
    void setTheme(const Theme& theme);
    /// Brightness of each lamp's lens, 0 (dark) to 1 (rated current and more).
    void setGlow(const std::map<circuit::PartId, double>& shares);
    void select(std::optional<circuit::PartId> part); ///< marks a part and brings it into view
    std::optional<circuit::PartId> selected() const;
    void fit();

  signals:
    void partActivated(blinkwright::circuit::PartId part); ///< clicked, or chosen with the keyboard

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
