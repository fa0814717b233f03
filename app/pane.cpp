#include "app/pane.h"

#include "widgets/theme/theme.h"

#include <QApplication>
#include <QLabel>
#include <QVBoxLayout>

namespace blinkwright::app {

namespace {

bool takesTab(const QWidget* widget) {
    return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) != 0;
}

} // namespace

Pane::Pane(const QString& title, QWidget* panel, QWidget* parent)
    : QFrame(parent), m_head(new QHBoxLayout), m_title(new QLabel(title, this)), m_panel(panel) {
    constexpr int titleMargin = 8;
    QFont font = m_title->font();
    font.setBold(true);
    m_title->setFont(font);
    m_title->setContentsMargins(titleMargin, 3, titleMargin, 3);
    m_title->setObjectName(QStringLiteral("title"));
    if (panel->accessibleName().isEmpty()) panel->setAccessibleName(title);
    QSizePolicy policy = panel->sizePolicy();
    policy.setRetainSizeWhenHidden(true); // the heading stays at the top of an empty pane
    panel->setSizePolicy(policy);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_head->setContentsMargins(0, 0, titleMargin, 0);
    m_head->addWidget(m_title, 1);
    column->addLayout(m_head);
    column->addWidget(panel, 1);
    setFrameShape(QFrame::NoFrame);
}

void Pane::setCorner(QWidget* corner) {
    m_head->addWidget(corner);
}

void Pane::setTheme(const widgets::Theme& theme) {
    QPalette quiet = m_title->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_title->setPalette(quiet);
}

bool Pane::takeFocus() {
    QWidgetList candidates{m_panel};
    candidates += m_panel->findChildren<QWidget*>();
    for (QWidget* candidate : candidates) {
        if (!takesTab(candidate)) continue;
        candidate->setFocus(Qt::ShortcutFocusReason);
        return true;
    }
    return false;
}

bool Pane::hasFocusWithin() const {
    const QWidget* focus = QApplication::focusWidget();
    return focus && (focus == this || isAncestorOf(focus));
}

} // namespace blinkwright::app
