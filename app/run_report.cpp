#include "app/run_report.h"

#include "core/base/wording.h"
#include "widgets/text/words.h"

#include <QLocale>
#include <QStringList>

namespace blinkwright::app {

using widgets::Words;

QString runReport(const study::Study& study, double took_ms) {
    const engine::RunReport& run = study.readings.run;
    const QString why = QString::fromStdString(wording::inWords(engine::describe(run.reason)));
    if (run.reason == engine::StopReason::cannotStart) return Words::tr("No run: %1").arg(why);
    const std::size_t switchings =
        study.readings.timers.empty() ? 0 : study.readings.timers.front().switchings_s.size();
    const auto flashes = static_cast<qulonglong>(switchings / 2);
    const QLocale locale;
    QString line = Words::tr("%1, %2 steps, %3 ms")
                       .arg(flashes == 1 ? Words::tr("1 flash") : Words::tr("%1 flashes").arg(flashes),
                            locale.toString(static_cast<qlonglong>(run.steps)),
                            locale.toString(took_ms, 'f', took_ms < 10 ? 1 : 0));
    if (run.reason == engine::StopReason::flashesReached) return line;
    return Words::tr("%1 – %2").arg(line, why);
}

QString whyNoCurves(const study::Study& study) {
    if (!study.curves.time_s.empty()) return {};
    QStringList reasons;
    for (const std::string& reason : study.readings.reasons) reasons << QString::fromStdString(reason);
    if (reasons.isEmpty()) reasons << Words::tr("This circuit cannot be run.");
    return reasons.join(u'\n');
}

} // namespace blinkwright::app
