#include "widgets/text/steady_label.h"

#include <QCoreApplication>
#include <QEvent>

namespace blinkwright::widgets {

namespace {
constexpr double leastUse = 0.7; ///< a line that needs less of its room gives the rest back
} // namespace

// The label is in no layout, so what it asks for stops here.
SteadyLabel::SteadyLabel(QWidget* parent) : QWidget(parent), m_label(new QLabel(this)) {
}

void SteadyLabel::setText(const QString& text) {
    if (m_label->text() == text) return;
    m_label->setText(text);
    settle();
    QCoreApplication::removePostedEvents(this, QEvent::LayoutRequest); // that of the new text
}

void SteadyLabel::settle() {
    if (hasHeightForWidth()) {
        const QSize needed(0, heightForWidth(width()));
        if (needed == m_held) return;
        m_held = needed;
    } else {
        const QSize needed = m_label->sizeHint();
        if (needed.height() == m_held.height() && needed.width() <= m_held.width() &&
            needed.width() >= leastUse * m_held.width())
            return;
        m_held = needed;
    }
    updateGeometry();
}

QSize SteadyLabel::sizeHint() const {
    return hasHeightForWidth() ? m_label->sizeHint() : m_held;
}

QSize SteadyLabel::minimumSizeHint() const {
    return hasHeightForWidth() ? m_label->minimumSizeHint() : m_held;
}

bool SteadyLabel::event(QEvent* event) {
    // Another font, at once: a status bar takes its height from what it holds, and may look but once.
    // Margins and style later.
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutRequest) settle();
    return QWidget::event(event);
}

void SteadyLabel::resizeEvent(QResizeEvent*) {
    m_label->setGeometry(rect());
    // A layout remembers heights for widths, maybe of a text before this one.
    if (hasHeightForWidth() && heightForWidth(width()) != height()) updateGeometry();
}

} // namespace blinkwright::widgets
