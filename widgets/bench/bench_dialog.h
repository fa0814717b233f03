// The wiring list as a window to work by: steps to tick off, the parts to fetch, copy, print, export.
//
//   BenchDialog dialog(theme, window);
//   dialog.showCircuit(circuit, PartSet::A);     // again at every change; a step that changed loses its tick
//   connect(&dialog, &BenchDialog::exportWished, ...);
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"

#include <QDialog>
#include <memory>

namespace blinkwright::widgets {

class BenchDialog : public QDialog {
    Q_OBJECT
  public:
    explicit BenchDialog(const Theme& theme, QWidget* parent = nullptr);
    ~BenchDialog() override;

    void showCircuit(const circuit::Circuit& circuit, circuit::PartSet set);
    void clearTicks(); ///< another file
    void setTheme(const Theme& theme);
    int ticked() const;
    int steps() const;

  signals:
    void setChosen(blinkwright::circuit::PartSet set);
    void copyWished();
    void printWished();
    void pdfWished();
    void exportWished(); ///< the parts list as CSV

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
