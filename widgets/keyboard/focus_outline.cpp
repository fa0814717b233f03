#include "widgets/keyboard/focus_outline.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QComboBox>
#include <QFocusEvent>
#include <QFocusFrame>
#include <QPainter>
#include <QTabBar>

namespace blinkwright::widgets {

namespace {

constexpr int reach = FocusOutline::line + FocusOutline::gap;

QMargins around(int width) {
    return {width, width, width, width};
}

bool isClickedOnly(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QTabBar*>(&widget);
}

QRect inWindow(const QWidget& widget) {
    return {widget.mapTo(widget.window(), QPoint(0, 0)), widget.size()};
}

/// The part of the window in which the widget's surroundings are to be seen: what it is scrolled in ends
/// them.
QRect sight(const QWidget& widget) {
    QRect seen = widget.window()->rect();
    for (const QWidget* at = &widget; !at->isWindow(); at = at->parentWidget()) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(at->parentWidget());
        if (area && area->viewport() == at) seen &= inWindow(*at) + around(reach);
    }
    return seen;
}

} // namespace

/// A frame of focus to the toolkit, so that it is nothing to those who listen.
class FocusOutline::Ring : public QFocusFrame {
  public:
    explicit Ring(QWidget* window) : QFocusFrame(window) { setObjectName(QStringLiteral("focusOutline")); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), palette().color(QPalette::Active, QPalette::Highlight));
        painter.fillRect(rect() - around(line), palette().color(QPalette::Active, QPalette::Window));
    }
};

FocusOutline::FocusOutline(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

FocusOutline::~FocusOutline() {
    delete m_ring.data();
}

bool FocusOutline::eventFilter(QObject* watched, QEvent* event) {
    if (!watched->isWidgetType()) return false;
    auto* widget = static_cast<QWidget*>(watched);
    switch (event->type()) {
    case QEvent::FocusIn:
        if (widget == QApplication::focusWidget())
            follow(*widget, static_cast<QFocusEvent*>(event)->reason());
        break;
    case QEvent::FocusOut: // a list or a menu that opens belongs to what has the focus
        if ((!m_about || widget == m_about) &&
            static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason)
            leave();
        break;
    case QEvent::KeyPress:
        if (widget != m_clicked) break;
        m_clicked.clear();
        place();
        break;
    case QEvent::Move:
    case QEvent::Resize:
    case QEvent::Show:
    case QEvent::Hide:
        if (m_about && (widget == m_about || widget->isAncestorOf(m_about))) place();
        break;
    default:
        break;
    }
    return false;
}

void FocusOutline::follow(QWidget& widget, Qt::FocusReason reason) {
    const Qt::WindowType type = widget.window()->windowType();
    if (type == Qt::Popup || type == Qt::ToolTip) return;
    // The empty ground of a window has the focus where nothing else has it yet.
    if ((widget.focusPolicy() & Qt::TabFocus) == 0) return leave();
    if (reason == Qt::MouseFocusReason)
        m_clicked = isClickedOnly(widget) ? &widget : nullptr;
    else if (m_clicked != &widget ||
             (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason))
        m_clicked.clear();
    m_about = &widget;
    place();
    if (m_ring) m_ring->raise();
}

void FocusOutline::leave() {
    m_about.clear();
    place();
}

void FocusOutline::place() {
    if (!m_about || m_about == m_clicked || !m_about->isVisible()) {
        if (m_ring) m_ring->hide();
        return;
    }
    QWidget* window = m_about->window();
    if (!m_ring) m_ring = new Ring(window);
    if (m_ring->parentWidget() != window) m_ring->setParent(window);
    const QRect whole = (inWindow(*m_about) + around(reach)) & window->rect();
    const QRegion ring = QRegion(whole) - QRegion(whole - around(reach));
    const QRegion seen = ring & sight(*m_about);
    m_ring->setGeometry(whole);
    m_ring->setMask(seen.translated(-whole.topLeft()));
    m_ring->setVisible(!seen.isEmpty());
}

} // namespace blinkwright::widgets
