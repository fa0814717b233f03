#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/io/reports.h"

#include <algorithm>
#include <ostream>

namespace blinkwright::app::verbs {

namespace {

bool isSerious(const study::Finding& finding) {
    return finding.severity == study::Severity::fault || finding.severity == study::Severity::overstress;
}

Result<ExitCode> runCheck(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const Result<Studied> result = studied(arguments);
    if (!result) return result.fault();
    const std::vector<study::Finding>& findings = result.value().study.findings;
    out << io::findingsJson(findings);
    return std::ranges::any_of(findings, isSerious) ? answerIsNo : done;
}

} // namespace

const Verb& checkVerb() {
    static const Verb verb{"check",
                           "prints wiring faults, overstress and cautions as JSON",
                           "Exit code 1 where there is a fault or overstress.",
                           {"FILE"},
                           commonOptions(),
                           runCheck};
    return verb;
}

} // namespace blinkwright::app::verbs
