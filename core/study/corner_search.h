// The lowest and the highest value that a figure takes anywhere in a tolerance box.
//
//   CornerSearch search(boards, box.dials());
//   Extreme high = search.from(start, +1, [](const BoardFigures& f) { return f.period_s; });
//
// From a start, all dials are tried at their ends and between, one by one; what betters the figure is taken,
// until nothing does. A figure that moves one way with each dial ends in a corner at once. Where a dial does
// best between its ends, the search goes on there in ever smaller steps.
#pragma once

#include "core/study/box_boards.h"

#include <optional>

namespace blinkwright::study {

struct Extreme {
    Dials dials;
    double value = 0;
};

class CornerSearch {
  public:
    using Figure = std::function<double(const BoardFigures&)>;

    CornerSearch(const BoxBoards& boards, std::size_t dials) : m_boards(boards), m_dials(dials) {}

    /// @param sign +1: the highest, -1: the lowest. @return nothing where the start does not blink.
    std::optional<Extreme> from(Dials start, int sign, const Figure& figure);
    /// Whether every board looked at so far blinked.
    bool allBlinked() const { return m_allBlinked; }

  private:
    struct Tried {
        std::size_t best = 0;
        bool any = false;
        double value = 0;
    };
    Tried tryAll(const std::vector<Dials>& list, int sign, const Figure& figure);

    const BoxBoards& m_boards;
    std::size_t m_dials;
    bool m_allBlinked = true;
};

} // namespace blinkwright::study
