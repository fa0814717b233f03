#include "widgets/pins/pin_rows.h"

#include "widgets/hookup/part_view.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

using namespace circuit;

namespace {

constexpr double leastShown_V = 1e-6; // below it the digits are the solver's
constexpr int digits = 4;

QString roleText(PartKind kind, int pin) {
    QString text = hookup::pinText(kind, pin);
    switch (kind) {
    case PartKind::timer:
        return text.section(QStringLiteral(", "), 1); // the number is in the pin's name
    case PartKind::resistor:
    case PartKind::toggle:
        return pin == 0 ? Words::tr("first end") : Words::tr("second end");
    case PartKind::variable:
        if (pin < 2) return pin == 0 ? Words::tr("first end") : Words::tr("second end");
        break;
    default:
        break;
    }
    return text;
}

} // namespace

std::vector<PinRow> pinRows(const Circuit& circuit) {
    std::map<PinRef, const Net*> nets;
    for (const Net& net : circuit.nets())
        for (const PinRef& pin : net.pins) nets[pin] = &net;
    std::vector<PinRow> rows;
    for (const Part& part : circuit.parts()) {
        const hookup::PartView view = hookup::viewOf(circuit, part, {});
        const QString kind = hookup::kindText(part.kind);
        const QString text = view.value.isEmpty() ? kind : Words::tr("%1, %2").arg(kind, view.value);
        for (int pin = 0; pin < static_cast<int>(info(part.kind).pins.size()); ++pin) {
            PinRow row{.pin = {part.id, pin},
                       .name = QString::fromStdString(circuit.pinText({part.id, pin})),
                       .part = text,
                       .role = roleText(part.kind, pin),
                       .net = {},
                       .netName = {}};
            if (const auto found = nets.find(row.pin); found != nets.end()) {
                row.net = found->second->id;
                row.netName = QString::fromStdString(found->second->name);
            }
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

QStringList netOffers(const std::vector<PinRow>& rows, PinRef pin) {
    QStringList nets, pins;
    for (const PinRow& row : rows) {
        if (!row.netName.isEmpty() && !nets.contains(row.netName)) nets << row.netName;
        if (row.pin != pin) pins << row.name;
    }
    nets.sort(Qt::CaseInsensitive);
    return nets + pins;
}

QString voltText(double volt) {
    const double shown = std::abs(volt) < leastShown_V ? 0 : volt;
    return QString::fromStdString(units::formatQuantity(shown, units::Unit::volt, digits, shown != 0));
}

} // namespace blinkwright::widgets
