#include "widgets/rooms/why_words.h"

#include <QCoreApplication>

namespace blinkwright::widgets {

using study::Imperfection;

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Why", text);
}

} // namespace

QString causeName(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return tr("Discharge pin");
    case Imperfection::inputCurrents:
        return tr("Input currents");
    case Imperfection::capacitorLeakage:
        return tr("Capacitor leakage");
    case Imperfection::capacitorSeries:
        return tr("Capacitor's series resistance");
    case Imperfection::outputLevels:
        return tr("Output and its load");
    case Imperfection::supplySag:
        return tr("Supply sag");
    case Imperfection::controlPin:
        return tr("Control pin");
    case Imperfection::delay:
        return tr("Delay of the timer");
    case Imperfection::diodeDrop:
        return tr("Diode drop");
    }
    return {};
}

QString causeMeaning(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return tr("Pin 7 does not pull to 0 V: the switch in it has resistance and a voltage left over, so "
                   "that the capacitor falls more slowly.");
    case Imperfection::inputCurrents:
        return tr("Threshold (pin 6) and trigger (pin 2) take small currents, which flow through the timing "
                   "resistors too.");
    case Imperfection::capacitorLeakage:
        return tr("The timing capacitor loses charge by itself, most where its voltage is high.");
    case Imperfection::capacitorSeries:
        return tr("The voltage across the capacitor's own resistance is there at once, before any charge.");
    case Imperfection::outputLevels:
        return tr("The output reaches neither rail, and less so under load; here it charges the capacitor.");
    case Imperfection::supplySag:
        return tr("The current of lamp and timer lowers the voltage at pin 8, and with it both levels.");
    case Imperfection::controlPin:
        return tr("What hangs on pin 5 moves both levels.");
    case Imperfection::delay:
        return tr("From a crossed level to the output and pin 7 some time goes by.");
    case Imperfection::diodeDrop:
        return tr("The diode across the timing resistor takes part of the voltage that charges.");
    }
    return {};
}

} // namespace blinkwright::widgets
