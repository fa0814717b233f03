// A reading of a meter: of what, the value as read, and what the meter's accuracy makes of it.
//
//   auto* dialog = new MeterDialog(circuit, window);
//   dialog->setMeasurement(measurement);               // to change one
//   connect(dialog, &QDialog::accepted, ..., [=] { use(dialog->measurement()); });
//   dialog->open();
#pragma once

#include "core/circuit/circuit.h"

#include <QDialog>
#include <memory>

namespace blinkwright::widgets {

class MeterDialog : public QDialog {
    Q_OBJECT
  public:
    /// @param circuit whose parts can be measured
    explicit MeterDialog(const circuit::Circuit& circuit, QWidget* parent = nullptr);
    ~MeterDialog() override;

    /// Whether there is any part in the circuit that a meter can say something of.
    static bool hasSubjects(const circuit::Circuit& circuit);
    /// One that is to be changed; its kind is a meter's reading.
    void setMeasurement(const circuit::Measurement& measurement);
    /// As it stands in the form.
    circuit::Measurement measurement() const;

  public slots:
    void accept() override; ///< not without a value that can be

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
