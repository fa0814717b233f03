#include "app/exporter.h"
#include "app/measured_panels.h"
#include "app/verbs/all.h"
#include "app/verbs/studying.h"

#include <QApplication>
#include <QFile>

#include <array>
#include <iostream>

namespace blinkwright::app::verbs {

namespace {

Result<void> write(const Studied& studied, const QString& path) {
    if (exportKind(path) == ExportKind::csv) return exportStudy(studied.study, {}, path);
    // Pictures need the toolkit's fonts, but never a display, and what it misses of a desktop is no user's
    // concern.
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
        if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << text.toStdString() << "\n";
    });
    qputenv("QT_QPA_PLATFORM", "offscreen");
    std::string name = "blinkwright";
    std::array<char*, 2> argv{name.data(), nullptr};
    int argc = 1;
    const QApplication application(argc, argv.data());
    StudiesToExport studies{.first = &studied.study};
    studies.records = recordsOver(studied.circuit, studied.study);
    return exportStudies(studies, curvesPage(studied.circuit, studied.set), path);
}

Result<ExitCode> run(const Arguments& arguments, std::ostream&, std::ostream& err) {
    const std::string& out = arguments.operands[1];
    const QString path = QFile::decodeName(QByteArray::fromStdString(out));
    if (arguments.has("--lab-sheet")) return Fault{"--lab-sheet", "lab sheets cannot be written yet"};
    if (!exportKind(path)) return Fault{out, "the name must end in .png, .svg, .pdf or .csv"};
    const Result<Studied> result = studied(arguments);
    if (!result) return result.fault();
    const study::Readings& readings = result.value().study.readings;
    const bool blinks = readings.verdict == study::Verdict::blinks;
    if (!blinks) {
        err << "blinkwright export: " << arguments.operands[0] << ": " << study::name(readings.verdict)
            << ".";
        for (const std::string& reason : readings.reasons) err << " " << reason;
        err << "\n";
    }
    if (result.value().study.curves.time_s.empty() && !blinks) return answerIsNo;
    if (Result<void> written = write(result.value(), path); !written) return written.fault();
    return blinks ? done : answerIsNo;
}

std::vector<Option> options() {
    std::vector<Option> all = runOptions();
    all.push_back({"--lab-sheet", "", ""});
    return all;
}

} // namespace

const Verb& exportVerb() {
    static const Verb verb{
        "export",
        "writes the curves to a file: .png, .svg, .pdf or .csv",
        "The ending of OUT says which. Exit code 1 where the circuit does not blink; curves that\n"
        "there are, are written all the same.",
        {"FILE", "OUT"},
        options(),
        run};
    return verb;
}

} // namespace blinkwright::app::verbs
