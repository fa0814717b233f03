// All that varies on a board within its tolerances, as a box: one dial from -1 to 1 for each part, or for
// each reel of parts that vary alike.
//
//   ToleranceBox box(circuit, set, board);
//   box.factors({-1, 0.3, 1}, factors);      // of box.varied(), as runBatch wants them
#pragma once

#include "core/base/random.h"
#include "core/circuit/circuit.h"
#include "core/engine/varied.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace blinkwright::study {

class ToleranceBox {
  public:
    ToleranceBox(const circuit::Circuit& circuit, circuit::PartSet set, const devices::Board& board);

    /// One part that has a tolerance.
    struct Member {
        std::string ref;
        double middle = 0, half = 0; ///< relative deviation at dial 0, and by which it moves to either end
        std::size_t dial = 0;
    };
    const std::vector<Member>& members() const { return m_members; }
    std::size_t dials() const { return m_dials; }
    const std::vector<engine::Varied>& varied() const { return m_varied; }

    /// @param dials each from -1 to 1. @param out one factor for each of varied().
    void factors(std::span<const double> dials, std::span<double> out) const;
    /// Factors with nothing off its value but one member, by a relative deviation.
    void factorsOff(std::size_t member, double deviation, std::span<double> out) const;
    /// The dials of a random board.
    void draw(const RandomDraws& draws, Spread kind, std::span<double> dials) const;

  private:
    std::vector<Member> m_members;
    std::vector<engine::Varied> m_varied;
    std::vector<std::size_t> m_memberOf; ///< by varied
    std::vector<std::uint64_t> m_drawOf; ///< by dial: which draw of a board; the place of its first part
    std::size_t m_dials = 0;
};

/// Relative deviations from low to high that a part may have in a set, by what it states or its default;
/// {0, 0} for one that has no tolerance.
circuit::Interval toleranceOf(const circuit::Circuit& circuit, circuit::PartSet set, circuit::PartId part);

/// The standard deviation of a draw between -1 and 1.
double deviationOf(Spread kind);

} // namespace blinkwright::study
