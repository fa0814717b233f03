#include "widgets/values/scale_slider.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr double handleWidth = 9;
constexpr double handleHeight = 18;
constexpr double finer = 0.1;

/// What a screen reader hears: the value as it is written, with its unit.
class SliderAccess : public QAccessibleWidget, public QAccessibleValueInterface {
  public:
    explicit SliderAccess(ScaleSlider* slider) : QAccessibleWidget(slider, QAccessible::Slider) {}
    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
        return QAccessibleWidget::interface_cast(type);
    }
    QString text(QAccessible::Text what) const override {
        return what == QAccessible::Value ? slider()->valueText() : QAccessibleWidget::text(what);
    }
    QVariant currentValue() const override { return slider()->value(); }
    QVariant minimumValue() const override { return slider()->scale().low; }
    QVariant maximumValue() const override { return slider()->scale().high; }
    QVariant minimumStepSize() const override { return 0.0; } // it depends on the value
    void setCurrentValue(const QVariant& wanted) override {
        emit slider()->pressed();
        emit slider()->dragged(wanted.toDouble());
        emit slider()->released();
    }

  private:
    ScaleSlider* slider() const { return static_cast<ScaleSlider*>(widget()); }
};

QAccessibleInterface* sliderAccess(const QString&, QObject* object) {
    auto* slider = qobject_cast<ScaleSlider*>(object);
    return slider ? new SliderAccess(slider) : nullptr;
}

} // namespace

ScaleSlider::ScaleSlider(QWidget* parent) : QWidget(parent), m_theme(Theme::of(Theme::Mode::light)) {
    static const bool installed = (QAccessible::installFactory(sliderAccess), true);
    Q_UNUSED(installed);
    m_handle = m_theme.setA;
    setFocusPolicy(Qt::StrongFocus); // not by wheel: scrolling past must not take the focus
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScaleSlider::setScale(const ValueScale& scale) {
    m_scale = scale;
    update();
}

void ScaleSlider::setValue(double value, const QString& text) {
    if (value == m_value && text == m_text) return;
    m_value = value;
    m_text = text;
    if (QAccessible::isActive()) {
        QAccessibleValueChangeEvent event(this, value);
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void ScaleSlider::setColours(const Theme& theme, const QColor& handle) {
    m_theme = theme;
    m_handle = handle;
    update();
}

QRectF ScaleSlider::groove() const {
    return QRectF(handleWidth / 2 + 3, height() / 2.0 - 5, std::max(1.0, width() - handleWidth - 6), 4);
}

double ScaleSlider::handleX() const {
    return groove().left() + groove().width() * m_scale.place(m_value);
}

void ScaleSlider::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF g = groove();
    painter.setPen(QPen(m_theme.frame, 1));
    painter.setBrush(m_theme.paper);
    painter.drawRoundedRect(g, 2, 2);

    const auto mark = [&](double value, double length) {
        if (!m_scale.contains(value)) return;
        const double x = g.left() + g.width() * m_scale.place(value);
        painter.drawLine(QPointF(x, g.bottom() + 5), QPointF(x, g.bottom() + 5 + length));
    };
    if (m_scale.kind.ratios) {
        const int first = static_cast<int>(std::floor(std::log10(m_scale.low) + 1e-9));
        const int last = static_cast<int>(std::ceil(std::log10(m_scale.high) - 1e-9));
        for (int decade = first; decade <= last; ++decade)
            for (int digit = 1; digit < 10; ++digit) mark(digit * std::pow(10.0, decade), digit == 1 ? 5 : 2);
    } else {
        const double step = 2 * m_scale.kind.coarse;
        for (double k = std::ceil(m_scale.low / step - 1e-9); k * step <= m_scale.high + 1e-9; ++k)
            mark(k * step, std::fmod(k, 5) == 0 ? 5 : 2);
    }

    if (!isEnabled()) { // a mark that shows the value, and nothing to take hold of
        if (m_text.isEmpty()) return;
        painter.setPen(QPen(m_handle, 2));
        painter.drawLine(QPointF(handleX(), g.top() - 4), QPointF(handleX(), g.bottom() + 4));
        return;
    }
    QRectF handle(0, 0, handleWidth, handleHeight);
    handle.moveCenter(QPointF(handleX(), g.center().y()));
    painter.setPen(QPen(m_theme.paper, 1));
    painter.setBrush(m_handle);
    painter.drawRoundedRect(handle, 3, 3);
    if (m_hovered || m_dragging) {
        painter.setPen(QPen(m_theme.paper, 1.5));
        painter.drawLine(QPointF(handleX(), handle.top() + 5), QPointF(handleX(), handle.bottom() - 5));
    }
}

void ScaleSlider::dragTo(double place) {
    m_place = place;
    const double ordinary = roundedTo3(m_scale.at(place));
    const double value = std::clamp(ordinary, m_scale.low, m_scale.high);
    if (value != m_value) emit dragged(value);
}

void ScaleSlider::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || m_dragging) return;
    const double x = event->position().x();
    emit pressed(); // before anything else: it ends a run of key presses
    m_dragging = true;
    m_lastX = x;
    m_before = m_value;
    m_place = m_scale.place(m_value);
    if (std::abs(x - handleX()) > handleWidth) dragTo((x - groove().left()) / groove().width());
    update();
}

void ScaleSlider::mouseMoveEvent(QMouseEvent* event) {
    if (!m_dragging) return;
    const double x = event->position().x();
    const double share = event->modifiers() & Qt::ShiftModifier ? finer : 1.0;
    const double moved = (x - m_lastX) / groove().width() * share;
    m_lastX = x;
    dragTo(m_place + moved);
}

void ScaleSlider::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_dragging) return;
    m_dragging = false;
    update();
    emit released();
}

void ScaleSlider::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        emit stepWished(-1, false);
        break;
    case Qt::Key_Right:
    case Qt::Key_Up:
        emit stepWished(1, false);
        break;
    case Qt::Key_PageDown:
        emit stepWished(-1, true);
        break;
    case Qt::Key_PageUp:
        emit stepWished(1, true);
        break;
    case Qt::Key_Home:
        emit endWished(false);
        break;
    case Qt::Key_End:
        emit endWished(true);
        break;
    case Qt::Key_Escape:
        if (!m_dragging) {
            event->ignore();
            return;
        }
        emit dragged(m_before);
        m_dragging = false;
        emit released();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ScaleSlider::wheelEvent(QWheelEvent* event) {
    if (!hasFocus() || m_dragging) {
        event->ignore(); // the panel scrolls
        return;
    }
    m_wheelRest += event->angleDelta().y();
    const int notches = m_wheelRest / 120;
    m_wheelRest -= notches * 120;
    if (notches != 0) emit stepWished(notches, event->modifiers() & Qt::ControlModifier);
    event->accept();
}

void ScaleSlider::focusInEvent(QFocusEvent* event) {
    m_wheelRest = 0;
    QWidget::focusInEvent(event);
}

void ScaleSlider::focusOutEvent(QFocusEvent* event) {
    if (m_dragging) { // the window lost the mouse: the drag ends where it is
        m_dragging = false;
        emit released();
    }
    QWidget::focusOutEvent(event);
}

void ScaleSlider::enterEvent(QEnterEvent*) {
    m_hovered = true;
    update();
}

void ScaleSlider::leaveEvent(QEvent*) {
    m_hovered = false;
    update();
}

} // namespace blinkwright::widgets
