#include "widgets/text/flow_layout.h"

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr int usualWidth = 640; // what the size hint is for [pixels]

} // namespace

FlowLayout::FlowLayout(QWidget* parent, int across, int between)
    : QLayout(parent), m_across(across), m_between(between) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (QLayoutItem* item : m_items) delete item;
}

void FlowLayout::addItem(QLayoutItem* item) {
    m_items.push_back(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item) m_items.erase(m_items.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const {
    return layOut(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::sizeHint() const {
    return {usualWidth, heightForWidth(usualWidth)};
}

QSize FlowLayout::minimumSize() const {
    QSize least;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty()) least = least.expandedTo(item->minimumSize());
    return least;
}

void FlowLayout::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    layOut(area, true);
}

int FlowLayout::layOut(const QRect& area, bool really) const {
    int y = area.top();
    for (std::size_t first = 0; first < m_items.size();) {
        // As many as fit, then all of them on the middle of the line.
        int x = area.left(), height = 0;
        std::size_t end = first;
        for (; end < m_items.size(); ++end) {
            if (m_items[end]->isEmpty()) continue;
            const QSize size = m_items[end]->sizeHint();
            if (height > 0 && x + size.width() > area.right() + 1) break;
            x += size.width() + m_across;
            height = std::max(height, size.height());
        }
        x = area.left();
        for (std::size_t k = first; really && k < end; ++k) {
            if (m_items[k]->isEmpty()) continue;
            const QSize size = m_items[k]->sizeHint().boundedTo({area.width(), height});
            m_items[k]->setGeometry(QRect(QPoint(x, y + (height - size.height()) / 2), size));
            x += size.width() + m_across;
        }
        if (height > 0) y += height + m_between;
        first = end;
    }
    return std::max(0, y - m_between - area.top());
}

} // namespace blinkwright::widgets
