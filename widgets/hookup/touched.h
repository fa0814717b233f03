// Which places of the router's grid hold something else than they did, kept by tiles: a box that meets no
// touched tile holds exactly what it held.
//
//   Touched touched;
//   touched.reset(grid.area());
//   touched.mark({0, 0, 40, 0});
//   touched.meets({30, -20, 60, 20});   // true
#pragma once

#include "widgets/hookup/geometry.h"

#include <cstdint>
#include <vector>

namespace blinkwright::widgets::hookup {

class Touched {
  public:
    /// Nothing is touched. @param area of all boxes that will be named; what lies outside counts for its rim.
    void reset(const Box& area) {
        m_area = area;
        m_across = column(area.right) + 1;
        m_tiles.assign(static_cast<std::size_t>(m_across * (row(area.bottom) + 1)), 0);
        m_any = false;
    }
    bool any() const { return m_any; }
    void mark(const Box& box) {
        m_any = true;
        for (int y = row(box.top); y <= row(box.bottom); ++y)
            for (int x = column(box.left); x <= column(box.right); ++x)
                m_tiles[static_cast<std::size_t>(y * m_across + x)] = 1;
    }
    void markRim(const Box& area) {
        for (const int y : {area.top, area.bottom}) mark({area.left, y, area.right, y});
        for (const int x : {area.left, area.right}) mark({x, area.top, x, area.bottom});
    }
    bool meets(const Box& box) const {
        if (!m_any) return false;
        for (int y = row(box.top); y <= row(box.bottom); ++y)
            for (int x = column(box.left); x <= column(box.right); ++x)
                if (m_tiles[static_cast<std::size_t>(y * m_across + x)]) return true;
        return false;
    }

  private:
    static constexpr int tile = 3 * pitch;
    int column(int x) const { return (std::clamp(x, m_area.left, m_area.right) - m_area.left) / tile; }
    int row(int y) const { return (std::clamp(y, m_area.top, m_area.bottom) - m_area.top) / tile; }
    Box m_area;
    int m_across = 0;
    bool m_any = false;
    std::vector<std::uint8_t> m_tiles;
};

} // namespace blinkwright::widgets::hookup
