#include "widgets/measure/measurement_words.h"
#include "widgets/text/in_sentence.h"

#include "core/base/wording.h"

#include "widgets/text/measured_text.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

using circuit::Count;
using circuit::Measurement;
using circuit::MeterQuantity;
using circuit::MeterReading;
using circuit::Record;
using study::MeasuredAgainst;
using units::Unit;
using Figure = study::MeasuredFigure;

namespace {

QString refOf(const circuit::Circuit& circuit, circuit::PartId id) {
    const circuit::Part* part = circuit.find(id);
    return part ? QString::fromStdString(part->ref) : QStringLiteral("?");
}

QString whatRecorded(const Record& record) {
    QStringList traces;
    for (const circuit::Trace& trace : record.traces)
        traces << (trace.of == circuit::TraceOf::output      ? Words::tr("output")
                   : trace.of == circuit::TraceOf::capacitor ? Words::tr("capacitor")
                                                             : Words::tr("another trace"));
    const int cycles = study::figuresOf(record).cycles;
    const QString held = Words::tr("%1 cycles").arg(cycles);
    const QString begin = record.fromPowerOn ? Words::tr("from power-on") : Words::tr("while running");
    QString text = Words::tr("%1: %2, %3").arg(sentenceCase(traces.join(Words::tr(" and "))), held, begin);
    if (!record.source.empty()) text += QStringLiteral(" (%1)").arg(QString::fromStdString(record.source));
    return text;
}

} // namespace

QString kindText(const Measurement& m) {
    if (std::holds_alternative<Count>(m.what)) return Words::tr("Stopwatch");
    if (std::holds_alternative<MeterReading>(m.what)) return Words::tr("Meter");
    if (std::holds_alternative<Record>(m.what)) return Words::tr("Record");
    return Words::tr("Unknown");
}

QString quantityName(MeterQuantity quantity) {
    switch (quantity) {
    case MeterQuantity::supplyVoltage:
        return Words::tr("Supply voltage");
    case MeterQuantity::outputHigh:
        return Words::tr("Output while high");
    case MeterQuantity::outputLow:
        return Words::tr("Output while low");
    case MeterQuantity::lampCurrent:
        return Words::tr("Lamp current while lit");
    case MeterQuantity::partValue:
        break;
    }
    return Words::tr("Part by itself");
}

QString keyName(const circuit::Part& part, const std::string& key) {
    const circuit::KeyInfo* known = circuit::findKey(circuit::info(part.kind), key);
    return QString::fromStdString(wording::inWords(known ? known->label : std::string_view(key)));
}

QString whatText(const Measurement& m, const circuit::Circuit& circuit) {
    if (const auto* count = std::get_if<Count>(&m.what))
        return count->flashes == 1 ? Words::tr("1 flash") : Words::tr("%1 flashes").arg(count->flashes);
    if (const auto* record = std::get_if<Record>(&m.what)) return whatRecorded(*record);
    const auto* reading = std::get_if<MeterReading>(&m.what);
    if (!reading) return Words::tr("A kind that this version does not know; it is kept as it is");
    const QString ref = refOf(circuit, reading->part);
    switch (reading->quantity) {
    case MeterQuantity::supplyVoltage:
        return Words::tr("Voltage of %1").arg(ref);
    case MeterQuantity::outputHigh:
        return Words::tr("Output of %1 while high").arg(ref);
    case MeterQuantity::outputLow:
        return Words::tr("Output of %1 while low").arg(ref);
    case MeterQuantity::lampCurrent:
        return Words::tr("Current of %1 while lit").arg(ref);
    case MeterQuantity::partValue:
        break;
    }
    const circuit::Part* part = circuit.find(reading->part);
    return part ? Words::tr("%1 of %2").arg(sentenceCase(keyName(*part, reading->key)), ref) : ref;
}

QString nameOf(const Measurement& m, const circuit::Circuit& circuit) {
    if (!m.title.empty()) return QString::fromStdString(m.title);
    if (std::holds_alternative<Count>(m.what))
        return Words::tr("%1, %2").arg(kindText(m), whatText(m, circuit));
    return whatText(m, circuit);
}

Unit unitOf(const MeterReading& reading, const circuit::Circuit& circuit) {
    if (reading.quantity == MeterQuantity::lampCurrent) return Unit::ampere;
    if (reading.quantity != MeterQuantity::partValue) return Unit::volt;
    const circuit::Part* part = circuit.find(reading.part);
    const circuit::KeyInfo* key = part ? circuit::findKey(circuit::info(part->kind), reading.key) : nullptr;
    return key ? key->unit : Unit::none;
}

std::optional<StatedNumber> statedNumber(const Measurement& m, const circuit::Circuit& circuit) {
    if (const auto* count = std::get_if<Count>(&m.what))
        return StatedNumber{count->time_s, Unit::second, true};
    if (const auto* reading = std::get_if<MeterReading>(&m.what))
        return StatedNumber{reading->value, unitOf(*reading, circuit), true};
    if (const auto* record = std::get_if<Record>(&m.what))
        if (const auto period = study::figuresOf(*record).period_s)
            return StatedNumber{*period, Unit::second, false};
    return {};
}

QString figureName(const MeasuredAgainst& one, const circuit::Circuit& circuit) {
    switch (one.figure) {
    case Figure::rate:
        return Words::tr("Flash rate");
    case Figure::perMinute:
        return Words::tr("Flashes a minute");
    case Figure::period:
        return Words::tr("Cycle time");
    case Figure::high:
        return Words::tr("Pulse width (high)");
    case Figure::low:
        return Words::tr("Space width (low)");
    case Figure::duty:
        return Words::tr("Duty cycle");
    case Figure::firstHigh:
        return Words::tr("First flash");
    case Figure::outputHigh:
        return quantityName(MeterQuantity::outputHigh);
    case Figure::outputLow:
        return quantityName(MeterQuantity::outputLow);
    case Figure::supplyVoltage:
        return quantityName(MeterQuantity::supplyVoltage);
    case Figure::lampCurrent:
        return Words::tr("Current of %1 while lit").arg(refOf(circuit, one.part));
    case Figure::partValue:
        break;
    }
    const circuit::Part* part = circuit.find(one.part);
    return part ? Words::tr("%1 of %2").arg(sentenceCase(keyName(*part, one.key)), refOf(circuit, one.part))
                : QString();
}

FigureText figureForm(const MeasuredAgainst& one, const circuit::Circuit& circuit) {
    switch (one.figure) {
    case Figure::rate:
        return rateText;
    case Figure::perMinute:
        return numberText;
    case Figure::duty:
        return shareText;
    case Figure::outputHigh:
    case Figure::outputLow:
    case Figure::supplyVoltage:
        return figureTextOf(Unit::volt);
    case Figure::lampCurrent:
        return figureTextOf(Unit::ampere);
    case Figure::partValue:
        return figureTextOf(unitOf({MeterQuantity::partValue, one.part, one.key, {}}, circuit));
    default:
        return secondsText;
    }
}

bool isShare(const MeasuredAgainst& one) {
    return one.figure == Figure::duty;
}

QString clashText(const study::MeasuredReadings& readings, const circuit::Circuit& circuit) {
    QStringList sentences;
    for (const study::Clash& clash : readings.clashes) {
        const auto name = [&](std::size_t at) { return nameOf(*circuit.measurements.at(at), circuit); };
        sentences
            << Words::tr(
                   "“%1” and “%2” contradict each other in the %3: they are further apart than twice their "
                   "common uncertainty. Look at both again, or take one out of use.")
                   .arg(name(clash.first), name(clash.second), QString::fromStdString(clash.figure));
    }
    return sentences.join(u'\n');
}

QString agreementText(const std::vector<MeasuredAgainst>& figures, const circuit::Circuit& circuit) {
    QStringList off;
    int compared = 0;
    for (const MeasuredAgainst& one : figures) {
        // The rate is the cycle time once more.
        if (one.figure == Figure::rate || one.figure == Figure::perMinute) continue;
        const auto multiples = one.multiples();
        if (!multiples) continue;
        ++compared;
        const QString name = figureName(one, circuit);
        if (std::abs(*multiples) <= study::coverage) continue;
        // `Cycle time` within a sentence, `Resistance of R1` too.
        off << inSentence(name);
    }
    if (compared == 0) return {};
    if (off.isEmpty())
        return Words::tr(
            "The board agrees with the simulation: nothing differs by more than twice its uncertainty.");
    return Words::tr(
               "Further from the simulation than twice the uncertainty: %1. “Why it differs” shows how far "
               "the "
               "known causes go.")
        .arg(off.join(QStringLiteral(", ")));
}

} // namespace blinkwright::widgets
