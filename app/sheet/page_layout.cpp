#include "app/sheet/page_layout.h"

#include "app/sheet/page_pieces.h"
#include "app/sheet/sheet_sections.h"
#include "core/units/lengths.h"

#include <QFontMetricsF>
#include <qcustomplot.h>

#include <algorithm>
#include <map>

namespace blinkwright::app::sheet {

namespace {

constexpr double side_mm = 20, top_mm = 18, bottom_mm = 22, foot_mm = 12;

double px(double mm) {
    return mm / units::mmPerInch * PageLayout::dpi;
}

} // namespace

PageLayout::PageLayout(const LabSheet& sheet, QPageSize::PageSizeId size)
    : m_size(QPageSize(size).size(QPageSize::Inch) * dpi), m_foot(sheet.foot()) {
    m_room = QRectF(QPointF(0, 0), m_size).adjusted(px(side_mm), px(top_mm), -px(side_mm), -px(bottom_mm));
    m_pieces = piecesOf(sheet, m_room.size());
    paginate();
}

void PageLayout::paginate() {
    std::map<int, std::size_t> heads;
    for (std::size_t k = 0; k < m_pieces.size(); ++k)
        if (m_pieces[k].isTableHead) heads[m_pieces[k].table] = k;

    m_pages.emplace_back();
    double used = 0;
    const auto place = [&](std::size_t piece) {
        used += m_pages.back().empty() ? 0 : m_pieces[piece].before;
        m_pages.back().push_back({piece, used});
        used += m_pieces[piece].height;
    };
    for (std::size_t k = 0; k < m_pieces.size();) {
        // What must stay together: up to the first piece that may be the last of a page.
        std::size_t end = k;
        double wanted = 0;
        for (; end < m_pieces.size(); ++end) {
            wanted += (end == k && m_pages.back().empty() ? 0 : m_pieces[end].before) + m_pieces[end].height;
            if (!m_pieces[end].keepWithNext) break;
        }
        end = std::min(end + 1, m_pieces.size());
        if (!m_pages.back().empty() && used + wanted > m_room.height()) {
            m_pages.emplace_back();
            used = 0;
            const Piece& first = m_pieces[k];
            if (first.table >= 0 && !first.isTableHead && heads.contains(first.table))
                place(heads[first.table]);
        }
        for (; k < end; ++k) {
            // A run that is longer than a page breaks where it must.
            if (!m_pages.back().empty() && used + m_pieces[k].before + m_pieces[k].height > m_room.height()) {
                m_pages.emplace_back();
                used = 0;
            }
            place(k);
        }
    }
}

void PageLayout::paint(QCPPainter& painter, int page) const {
    painter.fillRect(QRectF(QPointF(0, 0), m_size), Qt::white);
    for (const Placed& placed : m_pages[static_cast<std::size_t>(page)]) {
        painter.save();
        painter.setPen(Qt::black);
        m_pieces[placed.piece].paint(painter, m_room.topLeft() + QPointF(0, placed.top));
        painter.restore();
    }
    paintFoot(painter, page);
}

void PageLayout::paintFoot(QCPPainter& painter, int page) const {
    const QFont font = sheetFont(smallSize);
    const QFontMetricsF metrics(font);
    const double baseline = m_size.height() - px(foot_mm);
    const QString number = Words::tr("Page %1 of %2").arg(page + 1).arg(count());
    const double width = metrics.horizontalAdvance(number);
    painter.save();
    painter.setFont(font);
    painter.setPen(QPen(Qt::black, 0.6));
    painter.drawLine(QPointF(m_room.left(), baseline - metrics.height()),
                     QPointF(m_room.right(), baseline - metrics.height()));
    painter.drawText(QPointF(m_room.left(), baseline),
                     metrics.elidedText(m_foot, Qt::ElideRight, m_room.width() - width - 20));
    painter.drawText(QPointF(m_room.right() - width, baseline), number);
    painter.restore();
}

} // namespace blinkwright::app::sheet
