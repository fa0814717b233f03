// Rectangles by tile of the plane, to find those that meet a given one without looking at all.
//
//   TileIndex index(area);
//   index.add(rect, 3);
//   index.visit(query, [](int item) { ... });   // each item that may meet the query, once
#pragma once

#include <QRectF>

#include <algorithm>
#include <cmath>
#include <vector>

namespace blinkwright::widgets::hookup {

class TileIndex {
  public:
    /// @param area of all rectangles; what lies outside counts for its rim.
    explicit TileIndex(const QRectF& area) : m_area(area) {
        const double room = std::max(area.width(), 1.0) * std::max(area.height(), 1.0);
        m_tile = std::max(64.0, std::sqrt(room / mostTiles));
        m_across = column(area.right()) + 1;
        m_tiles.resize(static_cast<std::size_t>(m_across * (row(area.bottom()) + 1)));
    }
    void add(const QRectF& rect, int item) {
        const Span s = spanOf(rect);
        for (int y = s.top; y <= s.bottom; ++y)
            for (int x = s.left; x <= s.right; ++x)
                m_tiles[static_cast<std::size_t>(y * m_across + x)].push_back({item, s.left, s.top});
    }
    template <class Visit>
    void visit(const QRectF& query, Visit visit) const {
        const Span s = spanOf(query);
        for (int y = s.top; y <= s.bottom; ++y)
            for (int x = s.left; x <= s.right; ++x)
                for (const Entry& entry : m_tiles[static_cast<std::size_t>(y * m_across + x)])
                    // Of all tiles that the two share, the first one speaks.
                    if (x == std::max(entry.left, s.left) && y == std::max(entry.top, s.top))
                        visit(entry.item);
    }

  private:
    static constexpr double mostTiles = 20000;
    struct Entry {
        int item, left, top; ///< and the first tile that the item is in
    };
    struct Span {
        int left, top, right, bottom;
    };
    int place(double from, double to, double at) const {
        return static_cast<int>((std::clamp(at, from, to) - from) / m_tile);
    }
    int column(double x) const { return place(m_area.left(), m_area.right(), x); }
    int row(double y) const { return place(m_area.top(), m_area.bottom(), y); }
    Span spanOf(const QRectF& r) const {
        return {column(r.left()), row(r.top()), column(r.right()), row(r.bottom())};
    }

    QRectF m_area;
    double m_tile = 64;
    int m_across = 1;
    std::vector<std::vector<Entry>> m_tiles;
};

} // namespace blinkwright::widgets::hookup
