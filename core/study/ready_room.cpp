#include "core/study/ready_room.h"

#include "core/devices/laws.h"
#include "core/study/output_levels.h"

namespace blinkwright::study {

double lampVoltage(const std::string& colour, double current_A) {
    const devices::LampSheet sheet = *devices::lampSheet(colour);
    const auto law = devices::JunctionLaw::through(sheet.forward_voltage, sheet.test_current, sheet.ideality,
                                                   sheet.series_resistance);
    return devices::junctionVoltage(law.value(), current_A) + sheet.series_resistance * current_A;
}

double highLevel(const ReadyAnswers& answers, double current_A) {
    return outputHigh(devices::timerSheet(answers.family, answers.supply_V, {}),
                      answers.family == devices::TimerFamily::cmos, answers.supply_V, current_A);
}
double lowLevel(const ReadyAnswers& answers, double current_A) {
    return outputLow(devices::timerSheet(answers.family, answers.supply_V, {}), current_A);
}

Across acrossOf(const ReadyAnswers& answers) {
    const double i = answers.lampCurrent_A;
    const double high = highLevel(answers, i), low = lowLevel(answers, i);
    const double first = lampVoltage(answers.colour, i);
    const double second = !info(answers.kind).secondLamp ? first : lampVoltage(answers.secondColour, i);
    return {high - first, answers.supply_V - low - second, high - low - first - second};
}

} // namespace blinkwright::study
