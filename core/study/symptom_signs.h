// What people see of a board that does not do what it should, as words to tick and as a measure of how
// clearly a simulated board shows it.
//
//   Signs signs = signsOf(asDrawn, broken);
//   signs[Symptom::tooFast]        // 0: not at all, 1: anybody would say so
#pragma once

#include "core/study/behaviour.h"

#include <array>
#include <string_view>

namespace blinkwright::study {

enum class Symptom {
    dark,
    alwaysLit,
    tooFast,
    tooSlow,
    litTooLong,
    litTooShort,
    faint,
    tooBright,
    oneLampOnly,
    bothAtOnce,
    asIntended,
};
inline constexpr std::array allSymptoms{Symptom::dark,       Symptom::alwaysLit,  Symptom::tooFast,
                                        Symptom::tooSlow,    Symptom::litTooLong, Symptom::litTooShort,
                                        Symptom::faint,      Symptom::tooBright,  Symptom::oneLampOnly,
                                        Symptom::bothAtOnce, Symptom::asIntended};
/// `stays dark`, `always lit`, ...
std::string_view words(Symptom symptom);
/// Whether it takes two lamps to be seen.
bool wantsTwoLamps(Symptom symptom);

class Signs {
  public:
    double& operator[](Symptom symptom) { return m_clear[static_cast<std::size_t>(symptom)]; }
    double operator[](Symptom symptom) const { return m_clear[static_cast<std::size_t>(symptom)]; }

  private:
    std::array<double, allSymptoms.size()> m_clear{};
};

/// @param asDrawn the board without a fault, against which fast, faint and so on are meant
Signs signsOf(const Behaviour& asDrawn, const Behaviour& broken);

} // namespace blinkwright::study
