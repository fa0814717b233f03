#include "widgets/text/part_meaning.h"

#include "widgets/text/words.h"

namespace blinkwright::widgets {

namespace {

using circuit::PartKind;

struct Meaning {
    std::string_view key;
    const char* text;
};

// Of all kinds that have the value; a kind that means something else by it comes in ownMeanings.
constexpr Meaning meanings[] = {
    {"tolerance",
     QT_TRANSLATE_NOOP("Words",
                       "How far the real part may be from its value, such as 5 %. Spread, Account for it "
                       "and the band behind the curves draw on it; a single run does not.")},
    {"rated_power",
     QT_TRANSLATE_NOOP("Words", "In watts, above 0: the power that the resistor may turn into heat for good. "
                                "Findings tell when it is exceeded.")},
    {"setting", QT_TRANSLATE_NOOP(
                    "Words", "From 0 to 100 %: the share of the resistance that lies between pin 1 and the "
                             "wiper. The rest lies between the wiper and pin 2.")},
    {"forward_voltage",
     QT_TRANSLATE_NOOP("Words", "In volts, above 0: the voltage across it while the test current flows. A "
                                "higher one leaves less for the resistor, and so less current.")},
    {"test_current",
     QT_TRANSLATE_NOOP("Words", "In amperes, above 0: the current at which the forward voltage is stated.")},
    {"ideality",
     QT_TRANSLATE_NOOP("Words",
                       "A number above 0, for silicon 1 to 2, for lamps 1.5 to 3: how slowly the current "
                       "rises with the voltage. At a larger one the curve is flatter.")},
    {"series_resistance",
     QT_TRANSLATE_NOOP("Words", "In ohms, 0 or more: the resistance of the material and its leads. It makes "
                                "the voltage rise in proportion at large currents.")},
    {"rated_current",
     QT_TRANSLATE_NOOP("Words",
                       "In amperes, above 0: the current that the lamp bears all the time. Brightness "
                       "is shown against it, and findings tell when it is exceeded.")},
    {"pulse_current",
     QT_TRANSLATE_NOOP("Words",
                       "In amperes, above 0: the largest current that the lamp bears in short flashes. "
                       "Findings tell when it is exceeded.")},
    {"reverse_limit",
     QT_TRANSLATE_NOOP("Words", "In volts, above 0: the largest voltage the wrong way round that the lamp "
                                "bears. Findings tell when it is exceeded.")},
    {"luminous_intensity",
     QT_TRANSLATE_NOOP("Words", "In candelas, above 0, as the maker states it at the test current. What "
                                "the eye sees is told in candelas with it; the circuit runs without it.")},
    {"colour",
     QT_TRANSLATE_NOOP("Words",
                       "Colour of the light. It brings the usual forward voltage, ideality, resistance and "
                       "ratings of such a lamp, wherever none are stated.")},
    {"capacitance",
     QT_TRANSLATE_NOOP("Words",
                       "In farads, above 0. As the timing capacitor, twice the capacitance makes high "
                       "time and low time twice as long.")},
    {"esr",
     QT_TRANSLATE_NOOP(
         "Words", "In ohms, 1 mΩ or more: a resistance in series with the capacitor itself. It adds a step "
                  "to its voltage wherever the current jumps.")},
    {"leakage_resistance",
     QT_TRANSLATE_NOOP("Words", "In ohms, above 0, or none: the resistance by which the capacitor loses its "
                                "charge. With large timing resistors it slows charging down, or stops it "
                                "short of the upper level.")},
    {"rated_voltage",
     QT_TRANSLATE_NOOP("Words", "In volts, above 0, or none: the largest voltage that the capacitor bears. "
                                "Findings tell when it is exceeded.")},
    {"polarised",
     QT_TRANSLATE_NOOP("Words",
                       "Whether the capacitor must stand the right way round, as electrolytic ones must. "
                       "Findings tell when such a one gets voltage the wrong way.")},
    {"initial_voltage",
     QT_TRANSLATE_NOOP("Words",
                       "In volts: the voltage across the capacitor when the supply is switched on. It "
                       "changes the first flash from power-on, not the settled ones.")},
    {"voltage",
     QT_TRANSLATE_NOOP("Words",
                       "In volts, 0 or more: what the supply gives while no current flows. Brightness hangs "
                       "on it much more than the flash rate does.")},
    {"capacity",
     QT_TRANSLATE_NOOP("Words",
                       "Charge that a battery holds, or none for a supply that lasts. The battery life in "
                       "the readings is worked out from it.")},
    {"end_voltage",
     QT_TRANSLATE_NOOP("Words",
                       "In volts, 0 or more, or none: the voltage at which the battery counts as empty.")},
    {"family",
     QT_TRANSLATE_NOOP("Words",
                       "Bipolar or CMOS. The bipolar one drives large currents but takes milliamperes itself "
                       "and loses over a volt at its output; the CMOS one takes far less.")},
    {"closed",
     QT_TRANSLATE_NOOP("Words", "How the switch stands at power-on: closed it joins its contacts, open "
                                "it parts them.")},
    {"presses",
     QT_TRANSLATE_NOOP("Words", "When the switch is pressed, in seconds from power-on: pairs of begin "
                                "and end. It is then in its other position.")},
};

QString resistanceMeaning(PartKind kind) {
    if (kind == PartKind::supply)
        return Words::tr(
            "In ohms, above 0: the resistance inside the supply. The voltage sags by it times the current "
            "while a lamp is lit; an old battery has more of it.");
    if (kind == PartKind::variable)
        return Words::tr(
            "In ohms, above 0: the resistance from end to end. The setting says how much of it is on either "
            "side of the wiper.");
    return Words::tr(
        "In ohms, above 0. More of it makes a timing phase longer in proportion, or a lamp's current "
        "smaller: it depends on where the resistor stands.");
}

} // namespace

QString kindMeaning(PartKind kind) {
    switch (kind) {
    case PartKind::supply:
        return Words::tr("Gives the circuit its voltage: a battery or another source of low voltage, "
                         "with its inner resistance.");
    case PartKind::timer:
        return Words::tr("The timer with eight pins that makes the beat. Its levels are a third and "
                         "two thirds of the supply.");
    case PartKind::resistor:
        return Words::tr(
            "Sets how fast the timing capacitor charges and discharges, or how much current a lamp gets.");
    case PartKind::variable:
        return Words::tr("A resistor with a wiper, to set the rate by hand.");
    case PartKind::capacitor:
        return Words::tr("Stores charge. The one at pins 2 and 6 sets the time together with its resistors.");
    case PartKind::lamp:
        return Words::tr("A light-emitting diode. It needs a resistor in series that limits its current.");
    case PartKind::diode:
        return Words::tr(
            "Lets current flow one way only; across R2 it lets the lit time be set by R1 alone.");
    case PartKind::toggle:
        return Words::tr(
            "Joins two nets or parts them, such as to switch the blinker on or to hold its reset low.");
    }
    return {};
}

QString valueMeaning(PartKind kind, std::string_view key) {
    if (key == "resistance") return resistanceMeaning(kind);
    for (const Meaning& one : meanings)
        if (one.key == key) return Words::tr(one.text);
    return {};
}

} // namespace blinkwright::widgets
