#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/io/study_reports.h"

#include <ostream>

namespace blinkwright::app::verbs {

namespace {

Result<ExitCode> runWhy(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();
    const Result<devices::Board> board = boardOf(arguments, file.value());
    if (!board) return board.fault();
    const study::Why why = study::why(board.value(), {});
    out << io::whyJson(why, study::whyMeasured(why, study::measuredReadings(file.value().circuit)));
    return why.interaction ? done : answerIsNo;
}

} // namespace

const Verb& whyVerb() {
    static const Verb verb{
        "why",
        "prints as JSON what moves period and duty cycle away from the textbook",
        "Each cause is simulated by itself, on the textbook circuit. Exit code 1 where the circuit does not\n"
        "blink, or has no textbook formula.",
        {"FILE"},
        commonOptions(),
        runWhy};
    return verb;
}

} // namespace blinkwright::app::verbs
