// The full, unreduced equations of a board, F(y, y') = 0, for the independent solver: one current balance a
// net, one equation a source, capacitor and junction. Nothing is eliminated.
//
//   Layout layout(board, true);
//   Equations equations(layout, switchesClosed, outputsHigh);
//   equations.residual(y, yp, 1.0, F);
//   equations.jacobian(y, cj, columns);     // dF/dy + cj dF/dy', column by column
#pragma once

#include "core/devices/board.h"
#include "tests/reference/reference_laws.h"

#include <array>
#include <cstdint>
#include <vector>

namespace blinkwright::reference {

inline constexpr int zeroVolt = -1; ///< the 0 V net in place of an unknown: it has no equation

/// Numbers the unknowns. First the algebraic ones: net voltages, supply currents (out of plus), capacitor
/// currents (into plus), voltages across the junctions alone. Then the differential ones: inner capacitor
/// voltages, and if wished one charge a lamp.
class Layout {
  public:
    Layout(const devices::Board& board, bool chargeUnknowns);

    struct LampPlace {
        std::size_t junction; ///< index into Board::junctions
        int charge;           ///< its unknown, or -1 where charges are quadratures
    };

    const devices::Board* board;
    int nodes = 0;                        ///< unknown net voltages, inner ones of open pins counted
    int supplies = 0;                     ///< first supply current
    int capacitors = 0;                   ///< first capacitor current
    int junctions = 0;                    ///< first junction voltage
    int algebraic = 0;                    ///< count; also the first capacitor voltage
    int size = 0;                         ///< all
    std::vector<std::array<int, 8>> pins; ///< unknown of each timer pin's voltage; zeroVolt; or `absent`
    std::vector<int> junctionUnknown;     ///< by junction; absent where it joins nothing
    std::vector<int> outputUnknown;       ///< by timer: junction in the bipolar output; absent for CMOS
    std::vector<LampPlace> lamps;
    std::vector<std::pair<int, int>> weakTies; ///< unknown and pin 1: hang on 1e-12 S
    std::vector<int> datumTies;                ///< one of each group without a path to 0 V

    static constexpr int absent = -2;
    static int unknownOf(devices::Node node) { return node == devices::open ? absent : node - 1; }

  private:
    void tie();
};

/// The equations for one state of switches and outputs.
class Equations {
  public:
    Equations(const Layout& layout, const std::vector<bool>& closed, const std::vector<bool>& high);

    /// @param drive share of all sources that is switched on; 1 in a run, less on the way to a first
    /// solution.
    void residual(const double* y, const double* yp, double drive, double* F) const;
    /// dF/dy + cj dF/dy' as `size` columns of `size` entries.
    void jacobian(const double* y, double cj, double* columns) const;
    /// Currents of the lamps, in the order of Layout::lamps.
    void lampCurrents(const double* y, double* currents) const;
    /// How far a Newton step may go in an unknown: nVt of a junction, infinite for the rest.
    const std::vector<double>& reach() const { return m_reach; }
    const Layout& layout() const { return *m_layout; }

  private:
    enum class Law : std::uint8_t {
        junction,  ///< own unknown x: x + R i + K i^3 = v, i = exponential(x)
        twoPaths,  ///< own unknown x = v
        saturated, ///< CMOS output
        knee,      ///< discharge while low
        leak,
        own,
        pair,
    };
    /// A current from `from` to `to`. Its voltage is v = V(from) - V(to); of a pair input it is
    /// V(plus) - V(minus) weighed.
    struct Element {
        Law law = Law::junction;
        int from = zeroVolt, to = zeroVolt;
        int x = Layout::absent;
        double p[4] = {0, 0, 0, 0};
        Exponential exponential{};
        std::array<int, 3> control{zeroVolt, zeroVolt, zeroVolt};
        std::array<double, 3> weight{0, 0, 0};
        int charge = -1;
    };

    void stampParts(const std::vector<bool>& closed);
    void stampTimer(std::size_t index, bool high);
    void conductance(int a, int b, double g);
    void entry(int row, int column, double value);
    void constant(int row, double value);
    void compress();
    static double at(const double* y, int unknown) { return unknown >= 0 ? y[unknown] : 0; }
    static double across(const double* y, const Element& e) { return at(y, e.from) - at(y, e.to); }
    static double controlled(const double* y, const Element& e);
    PairedLaw law(const double* y, const Element& e) const;

    const Layout* m_layout;
    std::vector<Element> m_elements;
    std::vector<double> m_matrix;   ///< linear part, column by column
    std::vector<double> m_constant; ///< sources
    std::vector<int> m_rowStart, m_column;
    std::vector<double> m_value;
    std::vector<double> m_reach;
    std::vector<std::size_t> m_lamps; ///< their elements
};

} // namespace blinkwright::reference
