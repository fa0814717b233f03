// A share of 1 painted as a bar beside its number: a delegate for a column of a table. The share stands in
// Qt::UserRole, its text in the item.
//
//   auto* bar = new ShareBar(table);  table->setItemDelegateForColumn(1, bar);
//   bar->setColour(theme.accent);
#pragma once

#include <QColor>
#include <QStyledItemDelegate>

namespace blinkwright::widgets {

class ShareBar : public QStyledItemDelegate {
  public:
    static constexpr int numberRoom = 64; ///< [pixels] right of the bar
    explicit ShareBar(QObject* parent = nullptr) : QStyledItemDelegate(parent) {}
    void setColour(const QColor& colour) { m_colour = colour; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

  private:
    QColor m_colour;
};

} // namespace blinkwright::widgets
