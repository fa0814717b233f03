#include "widgets/hookup/part_palette.h"

#include "widgets/hookup/paint.h"
#include "widgets/text/part_meaning.h"
#include "widgets/text/text_sized.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPixmap>
#include <QToolButton>

#include <algorithm>

namespace blinkwright::widgets {

using circuit::PartKind;

namespace {

constexpr QSize usualIcon(34, 22);
constexpr int widestIcon = 46; // more would make the Hook-up wider than its share of a small screen

} // namespace

QIcon partIcon(PartKind kind, const Theme& theme, QSize size) {
    QIcon icon;
    for (const qreal ratio : {1.0, 2.0}) {
        QPixmap picture(size * ratio);
        picture.setDevicePixelRatio(ratio);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF room = QRectF(QPointF(0, 0), QSizeF(size)).adjusted(1, 1, -1, -1);
        hookup::PartView view;
        view.kind = kind;
        if (kind == PartKind::timer) {
            // The whole package would be a blot at this size: its outline, its notch and eight leads.
            const double scale = room.height() / usualIcon.height();
            const QRectF body(room.center().x() - 7 * scale, room.top() + 1, 14 * scale, room.height() - 2);
            const double notch = 2.5 * scale, lead = 4 * scale;
            painter.setPen(QPen(theme.ink, 1.4 * scale));
            painter.drawRect(body);
            painter.drawArc(QRectF(body.center().x() - notch, body.top() - notch, 2 * notch, 2 * notch),
                            180 * 16, 180 * 16);
            for (int k = 0; k < 4; ++k) {
                const double y = body.top() + body.height() * (2 * k + 1) / 8;
                painter.drawLine(QPointF(body.left() - lead, y), QPointF(body.left(), y));
                painter.drawLine(QPointF(body.right(), y), QPointF(body.right() + lead, y));
            }
        } else {
            // One scale for all, so that the strip looks like the drawing.
            const hookup::Box box = extentOf(view);
            const double scale = room.width() / 60;
            const QPointF middle = kind == PartKind::lamp
                                       ? QPointF(0, 0)
                                       : QPointF(box.left + box.right, box.top + box.bottom) / 2;
            painter.translate(room.center());
            painter.scale(scale, scale);
            painter.translate(-middle);
            paintPart(painter, view, theme);
        }
        painter.end();
        icon.addPixmap(picture);
    }
    return icon;
}

PartPalette::PartPalette(QWidget* parent)
    : QWidget(parent), m_title(new QLabel(tr("Add"))), m_theme(Theme::of(Theme::Mode::light)) {
    setObjectName(QStringLiteral("palette"));
    setAccessibleName(tr("Kinds of parts to add"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 0, 4, 2);
    row->setSpacing(1);
    row->addWidget(m_title);
    row->addSpacing(4);
    for (const PartKind kind : circuit::allKinds) {
        auto* button = new QToolButton;
        const QString name = hookup::kindText(kind);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::NoFocus);
        button->setAccessibleName(tr("Add: %1").arg(name));
        button->setWhatsThis(kindMeaning(kind));
        button->setToolTip(tr("Add: %1. Click here, then where it is to stand.").arg(name));
        connect(button, &QToolButton::clicked, this, [this, kind] { emit chosen(kind); });
        row->addWidget(button);
        m_buttons[kind] = button;
    }
    row->addStretch(1);
    sizedByText(*this, [this] { drawIcons(); });
}

void PartPalette::setTheme(const Theme& theme) {
    QPalette quiet = m_title->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_title->setPalette(quiet);
    m_theme = theme;
    drawIcons();
}

void PartPalette::drawIcons() {
    const int width = std::min(withText(*this, usualIcon.width()), widestIcon);
    const QSize size(width, usualIcon.height() * width / usualIcon.width());
    for (const auto& [kind, button] : m_buttons) {
        button->setIconSize(size);
        button->setIcon(partIcon(kind, m_theme, size));
    }
}

} // namespace blinkwright::widgets
