#include "widgets/rooms/why_words.h"

#include "widgets/text/words.h"

namespace blinkwright::widgets {

using study::Imperfection;

QString causeName(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return Words::tr("Discharge pin");
    case Imperfection::inputCurrents:
        return Words::tr("Input currents");
    case Imperfection::capacitorLeakage:
        return Words::tr("Capacitor leakage");
    case Imperfection::capacitorSeries:
        return Words::tr("Capacitor's series resistance");
    case Imperfection::outputLevels:
        return Words::tr("Output and its load");
    case Imperfection::supplySag:
        return Words::tr("Supply sag");
    case Imperfection::controlPin:
        return Words::tr("Control pin");
    case Imperfection::delay:
        return Words::tr("Delay of the timer");
    case Imperfection::diodeDrop:
        return Words::tr("Diode drop");
    }
    return {};
}

QString causeMeaning(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return Words::tr(
            "Pin 7 does not pull to 0 V: the switch in it has resistance and a voltage left over, so "
            "that the capacitor falls more slowly.");
    case Imperfection::inputCurrents:
        return Words::tr(
            "Threshold (pin 6) and trigger (pin 2) take small currents, which flow through the timing "
            "resistors too.");
    case Imperfection::capacitorLeakage:
        return Words::tr("The timing capacitor loses charge by itself, most where its voltage is high.");
    case Imperfection::capacitorSeries:
        return Words::tr(
            "The voltage across the capacitor's own resistance is there at once, before any charge.");
    case Imperfection::outputLevels:
        return Words::tr(
            "The output reaches neither rail, and less so under load; here it charges the capacitor.");
    case Imperfection::supplySag:
        return Words::tr(
            "The current of lamp and timer lowers the voltage at pin 8, and with it both levels.");
    case Imperfection::controlPin:
        return Words::tr("What hangs on pin 5 moves both levels.");
    case Imperfection::delay:
        return Words::tr("From a crossed level to the output and pin 7 some time goes by.");
    case Imperfection::diodeDrop:
        return Words::tr("The diode across the timing resistor takes part of the voltage that charges.");
    }
    return {};
}

} // namespace blinkwright::widgets
