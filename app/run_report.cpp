#include "app/run_report.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace blinkwright::app {

namespace {

struct RunReportText {
    Q_DECLARE_TR_FUNCTIONS(RunReport)
};

} // namespace

QString runReport(const study::Study& study, double took_ms) {
    const engine::RunReport& run = study.readings.run;
    const std::size_t switchings =
        study.readings.timers.empty() ? 0 : study.readings.timers.front().switchings_s.size();
    const int flashes = static_cast<int>(switchings / 2);
    QString line =
        (flashes == 1 ? RunReportText::tr("1 flash") : RunReportText::tr("%1 flashes").arg(flashes)) +
        RunReportText::tr(", %1 steps, %2 ms")
            .arg(QLocale::c().toString(static_cast<qlonglong>(run.steps)),
                 QLocale::c().toString(took_ms, 'f', took_ms < 10 ? 1 : 0));
    if (run.reason != engine::StopReason::flashesReached) {
        const std::string_view why = engine::describe(run.reason);
        line += QStringLiteral(" – ") + QString::fromUtf8(why.data(), static_cast<qsizetype>(why.size()));
    }
    return line;
}

QString whyNoCurves(const study::Study& study) {
    if (!study.curves.time_s.empty()) return {};
    QStringList reasons;
    for (const std::string& reason : study.readings.reasons)
        reasons << QString::fromStdString(reason);
    if (reasons.isEmpty()) reasons << RunReportText::tr("This circuit cannot be run.");
    return reasons.join(u'\n');
}

} // namespace blinkwright::app
