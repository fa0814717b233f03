// A count of flashes by stopwatch: so many flashes in such a time, or taps along with them.
//
//   auto* dialog = new StopwatchDialog(window);
//   dialog->setMeasurement(measurement);               // to change one
//   connect(dialog, &QDialog::accepted, ..., [=] { use(dialog->measurement()); });
//   dialog->open();
#pragma once

#include "core/circuit/circuit.h"

#include <QDialog>
#include <memory>

namespace blinkwright::widgets {

class TapTimer;

class StopwatchDialog : public QDialog {
    Q_OBJECT
  public:
    explicit StopwatchDialog(QWidget* parent = nullptr);
    ~StopwatchDialog() override;

    /// One that is to be changed; its kind is a count.
    void setMeasurement(const circuit::Measurement& measurement);
    /// As it stands in the form.
    circuit::Measurement measurement() const;
    TapTimer& taps();

  public slots:
    void accept() override; ///< not without a time

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
