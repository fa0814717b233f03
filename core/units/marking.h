// What is printed on resistors and capacitors, and back to numbers: colour bands, letter-and-digit codes and
// three-digit codes, after IEC 60062:2016.
//
//   colourBands(4700, 0.05).value()                  // yellow violet red gold
//   readBandsText("yellow violet red gold").value().value   // 4700
//   letterCode(0.47, Unit::ohm).value()              // "R47"
//   readLetterCode("33nK", Unit::farad).value()      // 33 nF, -10 % to +10 %
//   capacitorCode(100e-9, {{-0.1, 0.1}}).value()     // "104K"
#pragma once

#include "core/base/result.h"
#include "core/units/engineering.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::units {

enum class Colour { pink, silver, gold, black, brown, red, orange, yellow, green, blue, violet, grey, white };

inline constexpr Colour allColours[] = {
    Colour::pink,   Colour::silver, Colour::gold, Colour::black,  Colour::brown, Colour::red,  Colour::orange,
    Colour::yellow, Colour::green,  Colour::blue, Colour::violet, Colour::grey,  Colour::white};

std::string_view name(Colour colour);
std::optional<Colour> colourNamed(std::string_view text);

/// What a colour stands for in each kind of band; nothing where it has no meaning there.
struct ColourMeaning {
    std::optional<int> digit;
    int multiplier = 0;                ///< power of ten
    std::optional<double> tolerance;   ///< relative, either way
    std::optional<double> temperature; ///< coefficient [1/K]
};
const ColourMeaning& meaning(Colour colour);

/// Allowed deviation, relative: low <= 0 <= high.
struct Tolerance {
    double low = 0;
    double high = 0;
    bool operator==(const Tolerance&) const = default;
    static Tolerance either(double way) { return {-way, way}; }
};

/// The letter of a tolerance, e.g. J for 5 % either way; nothing where there is none.
std::optional<char> toleranceLetter(const Tolerance& tolerance);
std::optional<Tolerance> toleranceOf(char letter);

/// What the marks of a part say.
struct Marked {
    double value = 0;                        ///< [ohm] or [farad]
    std::optional<Tolerance> tolerance = {}; ///< nothing where the marks do not tell
    std::optional<double> temperature = {};  ///< coefficient [1/K], of six bands
};

/// The colour bands of a resistor, in reading order: two figures with no tolerance band (20 %) or one of 5 %
/// or 10 %; three figures with a tolerance of 2 % and less, or where two do not tell the value.
/// @param ohm [ohm] > 0. @param tolerance relative, either way. @param temperature coefficient [1/K]: asks
/// for a sixth band. @return a fault where no bands tell it.
Result<std::vector<Colour>> colourBands(double ohm, double tolerance, std::optional<double> temperature = {});
/// The same with a stated number of bands, 3 to 6.
Result<std::vector<Colour>> colourBands(int bands, double ohm, double tolerance,
                                        std::optional<double> temperature = {});
/// Reads 3 to 6 bands.
Result<Marked> readBands(std::span<const Colour> bands);
/// `orange orange orange gold`.
std::string bandsText(std::span<const Colour> bands);
/// Reads colours by name, white space or commas between them.
Result<Marked> readBandsText(std::string_view text);

/// The letter stands for the decimal point and tells the power of ten: `R47`, `4R7`, `4K7`, `2M2`; `4p7`,
/// `33n`, `2µ2`. @param unit Unit::ohm or Unit::farad. @param tolerance adds its letter.
/// @return a fault for more than four figures, or beyond the letters.
Result<std::string> letterCode(double value, Unit unit, std::optional<Tolerance> tolerance = {});
/// Reads such a code, with or without a tolerance letter; `u` stands for µ, `k` for K. `n33` and `330p` are
/// one value.
Result<Marked> readLetterCode(std::string_view text, Unit unit);

/// Two figures and the number of zeros, in picofarad, 9 and 8 for a tenth and a hundredth: `104`, `479`; with
/// the tolerance's letter where one is given. @param farad 0.1 pF to 990 uF.
Result<std::string> capacitorCode(double farad, std::optional<Tolerance> tolerance = {});
/// Reads such a code.
Result<Marked> readCapacitorCode(std::string_view text);

} // namespace blinkwright::units
