#include "widgets/values/tie_mark.h"

#include <QPainter>

namespace blinkwright::widgets {

TieMark::TieMark(QWidget* parent) : QWidget(parent) {
    setFixedSize(18, 16);
}

void TieMark::setOthers(const QStringList& others) {
    if (others == m_others && !accessibleName().isEmpty()) return;
    m_others = others;
    const QString text =
        others.isEmpty() ? QString() : tr("Moves together with %1").arg(others.join(QStringLiteral(", ")));
    setToolTip(text);
    setAccessibleName(text);
    update();
}

void TieMark::paintEvent(QPaintEvent*) {
    if (m_others.isEmpty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(QPalette::WindowText), 1.5));
    painter.setBrush(Qt::NoBrush);
    const QPointF c = QRectF(rect()).center();
    painter.drawRoundedRect(QRectF(c.x() - 7.5, c.y() - 3, 9, 6), 3, 3);
    painter.drawRoundedRect(QRectF(c.x() - 1.5, c.y() - 3, 9, 6), 3, 3);
}

FollowButton::FollowButton(QString subject, QWidget* parent)
    : QAbstractButton(parent), m_subject(std::move(subject)), m_theme(Theme::of(Theme::Mode::light)) {
    setCheckable(true);
    setWhatsThis(tr("Joined, Set B always has the value of Set A; parted, it has a value of its own, which "
                    "its slider changes."));
    setFocusPolicy(Qt::TabFocus);
    setFixedSize(sizeHint());
    setChecked(true);
    setFollowing(false);
}

void FollowButton::setFollowing(bool on) {
    if (on == isChecked()) return;
    setChecked(on);
    setAccessibleName(tr("%1: Set B follows Set A").arg(m_subject));
    setToolTip(on ? tr("Set B follows Set A: press to give it a value of its own")
                  : tr("Set B has a value of its own: press to take the one of Set A"));
    setAccessibleDescription(toolTip());
    update();
}

void FollowButton::setTheme(const Theme& theme) {
    m_theme = theme;
    update();
}

void FollowButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (underMouse()) {
        painter.setPen(QPen(m_theme.frame, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
    }
    const QPointF c = QRectF(rect()).center();
    constexpr double reach = 6, gap = 2.5, radius = 3;
    painter.setPen(QPen(m_theme.quietInk, 1.5));
    if (isChecked()) {
        painter.drawLine(c - QPointF(reach, 0), c + QPointF(reach, 0));
    } else {
        painter.drawLine(c + QPointF(-gap, 4), c + QPointF(gap, -4));
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme.setA);
    painter.drawEllipse(c - QPointF(reach, 0), radius, radius);
    painter.setBrush(m_theme.setB);
    painter.drawEllipse(c + QPointF(reach, 0), radius, radius);
}

} // namespace blinkwright::widgets
