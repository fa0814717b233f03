#include "widgets/rooms/why_words.h"

#include <QCoreApplication>

namespace blinkwright::widgets {

using study::Imperfection;

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("Why", text);
}

} // namespace

QString causeName(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return say("Discharge pin");
    case Imperfection::inputCurrents:
        return say("Input currents");
    case Imperfection::capacitorLeakage:
        return say("Capacitor leakage");
    case Imperfection::capacitorSeries:
        return say("Capacitor's series resistance");
    case Imperfection::outputLevels:
        return say("Output and its load");
    case Imperfection::supplySag:
        return say("Supply sag");
    case Imperfection::controlPin:
        return say("Control pin");
    case Imperfection::delay:
        return say("Delay of the timer");
    case Imperfection::diodeDrop:
        return say("Diode drop");
    }
    return {};
}

QString causeMeaning(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return say("Pin 7 does not pull to 0 V: the switch in it has resistance and a voltage left over, so "
                   "that the capacitor falls more slowly.");
    case Imperfection::inputCurrents:
        return say("Threshold (pin 6) and trigger (pin 2) take small currents, which flow through the timing "
                   "resistors too.");
    case Imperfection::capacitorLeakage:
        return say("The timing capacitor loses charge by itself, most where its voltage is high.");
    case Imperfection::capacitorSeries:
        return say("The voltage across the capacitor's own resistance is there at once, before any charge.");
    case Imperfection::outputLevels:
        return say("The output reaches neither rail, and less so under load; here it charges the capacitor.");
    case Imperfection::supplySag:
        return say("The current of lamp and timer lowers the voltage at pin 8, and with it both levels.");
    case Imperfection::controlPin:
        return say("What hangs on pin 5 moves both levels.");
    case Imperfection::delay:
        return say("From a crossed level to the output and pin 7 some time goes by.");
    case Imperfection::diodeDrop:
        return say("The diode across the timing resistor takes part of the voltage that charges.");
    }
    return {};
}

} // namespace blinkwright::widgets
