#include "app/ready_answers.h"

#include "widgets/ready/ready_dialog.h"

namespace blinkwright::app {

using study::ReadyAnswers;
using study::ReadyKind;

namespace {

const QString lastKind = QStringLiteral("last");
const QString family = QStringLiteral("family"), cmos = QStringLiteral("cmos"),
              bipolar = QStringLiteral("bipolar");
const QString colour = QStringLiteral("colour"), second = QStringLiteral("second");

struct NumberKey {
    const char* key;
    double ReadyAnswers::*answer;
};
constexpr NumberKey numberKeys[] = {{"supply", &ReadyAnswers::supply_V},
                                    {"current", &ReadyAnswers::lampCurrent_A},
                                    {"rate", &ReadyAnswers::perMinute},
                                    {"lit", &ReadyAnswers::lit},
                                    {"groups", &ReadyAnswers::groups}};

QString idOf(ReadyKind kind) {
    const auto id = study::info(kind).id;
    return QString::fromUtf8(id.data(), static_cast<qsizetype>(id.size()));
}

QVariantMap kept(const ReadyAnswers& answers) {
    QVariantMap map{{family, answers.family == devices::TimerFamily::cmos ? cmos : bipolar},
                    {colour, QString::fromStdString(answers.colour)},
                    {second, QString::fromStdString(answers.secondColour)}};
    for (const NumberKey& key : numberKeys) map.insert(QLatin1String(key.key), answers.*key.answer);
    return map;
}

/// What is missing or senseless stays at its first answer.
ReadyAnswers restored(ReadyKind kind, const QVariantMap& map) {
    ReadyAnswers answers = study::defaultAnswers(kind);
    if (map.contains(family))
        answers.family =
            map.value(family).toString() == cmos ? devices::TimerFamily::cmos : devices::TimerFamily::bipolar;
    if (map.contains(colour)) answers.colour = map.value(colour).toString().toStdString();
    if (map.contains(second)) answers.secondColour = map.value(second).toString().toStdString();
    for (const NumberKey& key : numberKeys) {
        bool fine = false;
        const double value = map.value(QLatin1String(key.key)).toDouble(&fine);
        if (fine) answers.*key.answer = value;
    }
    return study::checkAnswers(answers) ? answers : study::defaultAnswers(kind);
}

} // namespace

void restoreAnswers(const Settings& settings, widgets::ReadyDialog& dialog) {
    for (const ReadyKind kind : study::allReadyKinds)
        dialog.setAnswers(restored(kind, settings.answers(idOf(kind))));
    const QString last = settings.answers(lastKind).value(lastKind).toString();
    if (const auto kind = study::readyKindNamed(last.toStdString())) dialog.choose(*kind);
}

void keepAnswers(Settings& settings, const widgets::ReadyDialog& dialog) {
    for (const ReadyAnswers& answers : dialog.allAnswers())
        settings.setAnswers(idOf(answers.kind), kept(answers));
    settings.setAnswers(lastKind, {{lastKind, idOf(dialog.answers().kind)}});
}

} // namespace blinkwright::app
