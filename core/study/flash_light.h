// The light of one flash as the eye adds it up near the threshold of seeing.
//
//   FlashLight light;
//   light.add(0.5, 0.01);  light.add(0.5, 0);      // [s], [A]: a square flash of half a second, then dark
//   light.effective_A(0.2);                        // 0.01 * 0.5 / 0.7: Blondel and Rey
#pragma once

#include "core/engine/waveform.h"

#include <array>
#include <vector>

namespace blinkwright::study {

/// Samples of one period of a lamp's current, in order; the period closes on itself.
class FlashLight {
  public:
    /// A stretch of constant current.
    void add(double length_s, double current_A);
    /// A step of a run: its current at the five Lobatto nodes, a smooth curve between them.
    void addStep(double length_s, const std::array<double, 5>& current_A);

    /// The steady current of equal effect, for light in proportion to the current: the greatest I with
    ///   I = integral of i dt over [t1, t2] / ((t2 - t1) + a)
    /// (A. Blondel, J. Rey, 1911; IES LS-1, definition 11.1.10.1). There i(t1) = i(t2) = I, so that I is the
    /// level above which the best single flash holds just a I more.
    /// @param a_s the eye's constant [s], > 0: 0.2 at the threshold by night
    double effective_A(double a_s) const;

  private:
    struct Piece {
        double length_s, from_A, to_A;
    };
    double mostAbove(double level_A) const;
    std::vector<Piece> m_pieces;
    double m_peak_A = 0;
};

/// effective_A() of every lamp over one settled period, by junction; 0 for a diode.
std::vector<double> effectiveCurrents(const devices::Board& board, const engine::Waveform& period,
                                      double a_s);

} // namespace blinkwright::study
