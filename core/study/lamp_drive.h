// What resistor a lamp needs, and what swing an output has, by the device laws.
//
//   LampDrive drive(wish);
//   drive.resistorToGround(0);     // of the first lamp [ohm]; 0 or less: the supply is too low for it
#pragma once

#include "core/devices/sheets.h"
#include "core/study/wish.h"

namespace blinkwright::study {

/// A turn of a coupled pair lasts this many time constants of its capacitor: the current falls to a third,
/// and the lamp stays visibly lit.
inline constexpr double pairFall = 1.1;

class LampDrive {
  public:
    explicit LampDrive(const Wish& wish);

    double resistorToGround(std::size_t lamp) const; ///< [ohm]
    double resistorToRail(std::size_t lamp) const;   ///< [ohm]
    /// In series with the coupled pair, so that each turn begins with the wished current [ohm].
    double resistorOfPair() const;
    double forwardVoltage(std::size_t lamp) const; ///< at the wished current [V]
    /// What the output loses at the wished current while high and while low [V]; infinite where it cannot
    /// carry it.
    double lostHigh_V() const { return m_lostHigh; }
    double lostLow_V() const { return m_lostLow; }

  private:
    const Wish& m_wish;
    double m_lostHigh = 0, m_lostLow = 0;
};

} // namespace blinkwright::study
