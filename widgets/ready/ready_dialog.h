// The dialog that makes a ready blinker: a list of kinds, a few answers with their units, a small drawing.
//
//   ReadyDialog dialog(theme, window);
//   dialog.setAnswers(remembered);
//   if (dialog.exec() == QDialog::Accepted) document.startWith(dialog.circuit());
#pragma once

#include "core/study/ready.h"
#include "widgets/theme/theme.h"

#include <QDialog>
#include <memory>

namespace blinkwright::widgets {

class ReadyDialog : public QDialog {
    Q_OBJECT
  public:
    explicit ReadyDialog(const Theme& theme, QWidget* parent = nullptr);
    ~ReadyDialog() override;

    /// Each kind keeps its own answers; those of the chosen kind are shown.
    void setAnswers(const study::ReadyAnswers& answers);
    study::ReadyAnswers answers() const;                 ///< of the kind that is chosen
    std::vector<study::ReadyAnswers> allAnswers() const; ///< of every kind, to be remembered
    void choose(study::ReadyKind kind);
    void setTheme(const Theme& theme);
    /// The circuit of the answers; empty while there is none.
    const circuit::Circuit& circuit() const;
    bool isReady() const;    ///< the circuit is that of the present answers
    QString message() const; ///< why there is none

    void accept() override;

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
