#include "core/study/fit.h"
#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/circuit/edit.h"
#include "core/io/fit_report.h"
#include "core/io/record_file.h"

#include <ostream>

namespace blinkwright::app::verbs {

namespace {

Result<ExitCode> runFit(const Arguments& arguments, std::ostream& out, std::ostream&) {
    Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();
    auto& [circuit, set] = file.value();
    Result<circuit::Record> record = io::importRecord(arguments.operands[1]);
    if (!record)
        return record.fault().place == arguments.operands[1]
                   ? record.fault()
                   : Fault{arguments.operands[1], record.fault().message()};
    circuit::Measurement measurement{"", true, std::move(record).value(), {}};
    if (Result<void> fine = circuit.canMeasure(measurement); !fine)
        return Fault{arguments.operands[1], fine.fault().text};
    circuit.measurements.push_back(std::make_shared<const circuit::Measurement>(std::move(measurement)));
    const Result<study::FitOutcome> fit = study::fit(circuit, set, {});
    if (!fit) return Fault{arguments.operands.front(), fit.fault().message()};
    out << io::fitJson(fit.value());
    return fit.value().found && fit.value().agrees ? done : answerIsNo;
}

} // namespace

const Verb& fitVerb() {
    static const Verb verb{
        "fit",
        "prints as JSON which part values explain a record of an instrument",
        "Measurements that the circuit file holds are used beside it. Exit code 1 where no values that the\n"
        "parts may have explain what was measured, or the circuit does not blink.",
        {"FILE", "RECORD.csv"},
        commonOptions(),
        runFit};
    return verb;
}

} // namespace blinkwright::app::verbs
