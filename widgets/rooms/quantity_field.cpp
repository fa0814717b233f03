#include "widgets/rooms/quantity_field.h"

#include "widgets/text/text_sized.h"

#include <QKeyEvent>

namespace blinkwright::widgets {

QuantityField::QuantityField(QWidget* parent) : QLineEdit(parent) {
    setAlignment(Qt::AlignRight);
    sizedByText(
        *this, [this] { setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000.00 MΩ")) + 18); });
    connect(this, &QLineEdit::returnPressed, this, &QuantityField::enter);
}

void QuantityField::showText(const QString& text) {
    if (isModified() && hasFocus() && text == m_held) return;
    m_held = text;
    setText(text);
    setModified(false);
}

void QuantityField::enter() {
    if (!isModified()) return;
    const Result<double> read = m_reader(text());
    if (!read) {
        selectAll();
        return emit refused(QString::fromStdString(read.fault().message()));
    }
    setModified(false);
    emit entered(read.value());
}

void QuantityField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && isModified()) {
        setText(m_held);
        setModified(false);
        return selectAll();
    }
    QLineEdit::keyPressEvent(event);
    // Enter is for the field; a dialog must not take it as its own.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) event->accept();
}

void QuantityField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason || !isModified()) return;
    enter();
    if (!isModified()) return;
    setText(m_held); // what cannot be read is not left standing
    setModified(false);
}

} // namespace blinkwright::widgets
