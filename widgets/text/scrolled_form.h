// Dialogs whose texts are whole at every size: a form asks for all the room that its wrapped texts need, and
// scrolls where the screen has less.
//
//   auto* whole = new QVBoxLayout(this);
//   whole->addWidget(new ScrolledForm(form, tr("Meter reading")), 1);
//   whole->addWidget(buttons);
//   growWithTexts(*this);
#pragma once

#include <QScrollArea>

class QDialog;

namespace blinkwright::widgets {

class ScrolledForm : public QScrollArea {
    Q_OBJECT
  public:
    /// Takes the form over. @param name for those who cannot see it
    ScrolledForm(QWidget* form, const QString& name);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

  protected:
    bool event(QEvent* event) override;
};

/// Whenever a wrapped text gets longer or larger, the dialog gets as high as it needs, up to the screen's
/// height. By itself the toolkit asks for one line of each, and cuts the rest.
void growWithTexts(QDialog& dialog);

} // namespace blinkwright::widgets
