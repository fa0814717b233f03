#include "app/exporter.h"
#include "app/measured_panels.h"
#include "app/verbs/all.h"
#include "app/verbs/lab_sheet.h"
#include "app/verbs/offscreen.h"
#include "app/verbs/studying.h"

#include <QFile>

namespace blinkwright::app::verbs {

namespace {

Result<void> write(const Studied& studied, const QString& path) {
    if (exportKind(path) == ExportKind::csv) return exportStudy(studied.study, {}, path);
    const Offscreen toolkit;
    StudiesToExport studies{.first = &studied.study};
    studies.records = recordsOver(studied.circuit, studied.study);
    return exportStudies(studies, curvesPage(studied.circuit, studied.set), path);
}

Result<ExitCode> runExport(const Arguments& arguments, std::ostream&, std::ostream& err) {
    const std::string& out = arguments.operands[1];
    const QString path = QFile::decodeName(QByteArray::fromStdString(out));
    if (arguments.has("--lab-sheet")) return exportLabSheet(arguments, err);
    for (const Option& option : labSheetOptions())
        if (arguments.has(option.name)) return Fault{std::string(option.name), "goes with --lab-sheet only"};
    if (!exportKind(path)) return Fault{out, "the name must end in .png, .svg, .pdf or .csv"};
    const Result<Studied> result = studied(arguments);
    if (!result) return result.fault();
    const study::Readings& readings = result.value().study.readings;
    const bool blinks = readings.verdict == study::Verdict::blinks;
    if (!blinks) sayWhyNot(err, "export", arguments, readings);
    if (result.value().study.curves.time_s.empty() && !blinks) return answerIsNo;
    if (Result<void> written = write(result.value(), path); !written) return written.fault();
    return blinks ? done : answerIsNo;
}

std::vector<Option> options() {
    std::vector<Option> all = runOptions();
    for (const Option& option : labSheetOptions()) all.push_back(option);
    return all;
}

} // namespace

const Verb& exportVerb() {
    static const Verb verb{
        "export",
        "writes the curves to a file: .png, .svg, .pdf or .csv; or a lab sheet: .pdf, .html or .odt",
        "The ending of OUT says which. Exit code 1 where the circuit does not blink; what there is, is\n"
        "written all the same. A lab sheet has Set B beside Set A where they differ, unless --set names one.",
        {"FILE", "OUT"},
        options(),
        runExport};
    return verb;
}

} // namespace blinkwright::app::verbs
