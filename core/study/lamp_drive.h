// What current a lamp is to carry, what resistor it needs for that, and what swing an output has, by the
// device laws.
//
//   LampDrive drive(wish);
//   drive.resistorToGround(0);     // of the first lamp [ohm]; 0 or less: the supply is too low for it
//   drive.resistorOfPair();  drive.pairTime_s();     // of the coupled pair: R, and R C
#pragma once

#include "core/devices/sheets.h"
#include "core/study/wish.h"

namespace blinkwright::study {

/// A turn of a coupled pair lasts this many time constants of its capacitor: the current falls to a third,
/// and the lamp stays visibly lit. Where the wish says how long it is to stay lit, that counts instead.
inline constexpr double pairFall = 1.1;

class LampDrive {
  public:
    explicit LampDrive(const Wish& wish);

    /// While lit, of a lamp with a resistor of its own [A]: the wished one, or less in the brighter lamp of
    /// two that are to match.
    double current_A(std::size_t lamp) const;
    double resistorToGround(std::size_t lamp) const; ///< [ohm]
    double resistorToRail(std::size_t lamp) const;   ///< [ohm]
    /// In series with the coupled pair, so that the stronger turn begins with the wished current [ohm].
    double resistorOfPair() const;
    double pairTime_s() const; ///< of the coupled pair: its resistance times its capacitance, at least
    double forwardVoltage(std::size_t lamp, double current_A) const; ///< [V]
    /// What the output loses at a current while high and while low [V]; infinite where it cannot carry it.
    double lostHigh_V(double current_A) const;
    double lostLow_V(double current_A) const;

  private:
    const devices::LampSheet& sheet(std::size_t lamp) const;
    double shorterTurn_s() const;
    double longerTurn_s() const;

    const Wish& m_wish;
    devices::TimerSheet m_timer;
    devices::LampSheet m_lamps[2];
};

/// The longest that each lamp of a pair can stay lit: the shorter turn, at the fast end of a range [s].
double shortestTurn_s(const Wish& wish);

} // namespace blinkwright::study
