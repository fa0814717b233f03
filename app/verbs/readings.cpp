#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/io/reports.h"

#include <ostream>

namespace blinkwright::app::verbs {

namespace {

Result<ExitCode> runReadings(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const Result<Studied> result = studied(arguments);
    if (!result) return result.fault();
    const study::Readings& readings = result.value().study.readings;
    out << io::readingsJson(readings, result.value().study.eye, &result.value().circuit);
    return readings.verdict == study::Verdict::blinks ? done : answerIsNo;
}

} // namespace

const Verb& readingsVerb() {
    static const Verb verb{
        "readings",
        "runs the circuit and prints its readings as JSON",
        "Switching times, settled and textbook rates, currents of lamps and supply, in SI units.\n"
        "Exit code 1 where the circuit does not blink; the reasons are in the output.",
        {"FILE"},
        runOptions(),
        runReadings};
    return verb;
}

} // namespace blinkwright::app::verbs
