// A lab sheet laid out on pages, in pixels of 96 to the inch: rows of tables are whole, headings stay with
// what they head, the head row of a table comes again on each page that it goes on to.
//
//   PageLayout pages(sheet, QPageSize::A4);
//   for (int page = 0; page < pages.count(); ++page) pages.paint(painter, page);
// Always black on white, whatever the theme.
#pragma once

#include "app/sheet/lab_sheet.h"

#include <QPageSize>
#include <QRectF>
#include <QSizeF>

namespace blinkwright::app::sheet {

/// A piece that stays together on a page.
struct Piece {
    double height = 0;
    double before = 0;         ///< space above it; none at the top of a page
    bool keepWithNext = false; ///< not the last of a page
    int table = -1;            ///< of a row: which head row comes again above it
    bool isTableHead = false;
    std::function<void(QCPPainter&, QPointF)> paint; ///< from its upper left
};

class PageLayout {
  public:
    static constexpr double dpi = 96;

    PageLayout(const LabSheet& sheet, QPageSize::PageSizeId size);

    int count() const { return static_cast<int>(m_pages.size()); }
    QSizeF size() const { return m_size; } ///< of a page
    /// @param painter its unit is a layout pixel; the page's upper left is at its origin.
    void paint(QCPPainter& painter, int page) const;

  private:
    struct Placed {
        std::size_t piece;
        double top;
    };
    void paginate();
    void paintFoot(QCPPainter& painter, int page) const;

    QSizeF m_size;
    QRectF m_room;
    QString m_foot;
    std::vector<Piece> m_pieces;
    std::vector<std::vector<Placed>> m_pages;
};

} // namespace blinkwright::app::sheet
