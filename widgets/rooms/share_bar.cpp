#include "widgets/rooms/share_bar.h"

#include "widgets/text/text_sized.h"

#include <QPainter>

#include <algorithm>

namespace blinkwright::widgets {

void ShareBar::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, index);
    const double share = std::clamp(index.data(Qt::UserRole).toDouble(), 0.0, 1.0);
    if (share < 5e-4) return; // reads as 0.0 %
    const int room_px = option.widget ? withText(*option.widget, numberRoom) : numberRoom;
    const QRectF room(option.rect.left() + 6, option.rect.center().y() - 6, option.rect.width() - room_px - 6,
                      12);
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->setPen(Qt::NoPen);
    painter->setBrush(chosen ? option.palette.color(QPalette::HighlightedText) : m_colour);
    painter->drawRect(QRectF(room.left(), room.top(), std::max(1.0, share * room.width()), room.height()));
    painter->restore();
}

} // namespace blinkwright::widgets
