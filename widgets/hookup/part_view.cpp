#include "widgets/hookup/part_view.h"

#include "core/units/engineering.h"
#include "widgets/text/words.h"

#include <array>

namespace blinkwright::widgets::hookup {

using circuit::Circuit;
using circuit::Part;
using circuit::PartKind;
using circuit::PartSet;
using units::Unit;

namespace {

QString quantity(double value, Unit unit) {
    return QString::fromStdString(units::formatQuantity(value, unit));
}

template <class T>
std::optional<T> stated(const Circuit& circuit, const Part& part, std::string_view key) {
    const std::optional<circuit::Value> value = circuit.value(PartSet::A, part.id, key);
    const T* held = value ? std::get_if<T>(&*value) : nullptr;
    return held ? std::optional<T>(*held) : std::nullopt;
}

QString colourText(const QString& colour) {
    static const std::array<std::pair<const char*, const char*>, 8> names{
        {{"red", QT_TRANSLATE_NOOP("Words", "red")},
         {"amber", QT_TRANSLATE_NOOP("Words", "amber")},
         {"yellow", QT_TRANSLATE_NOOP("Words", "yellow")},
         {"green", QT_TRANSLATE_NOOP("Words", "green")},
         {"pure-green", QT_TRANSLATE_NOOP("Words", "pure green")},
         {"blue", QT_TRANSLATE_NOOP("Words", "blue")},
         {"white", QT_TRANSLATE_NOOP("Words", "white")},
         {"infrared", QT_TRANSLATE_NOOP("Words", "infrared")}}};
    for (const auto& [word, text] : names)
        if (colour == QLatin1String(word)) return Words::tr(text);
    return colour;
}

QString valueText(const Circuit& circuit, const Part& part, const PartView& view) {
    const auto number = [&](std::string_view key, Unit unit) {
        const std::optional<double> value = stated<double>(circuit, part, key);
        return value ? quantity(*value, unit) : QString();
    };
    switch (part.kind) {
    case PartKind::supply:
        return number("voltage", Unit::volt);
    case PartKind::resistor:
        return number("resistance", Unit::ohm);
    case PartKind::capacitor:
        return number("capacitance", Unit::farad);
    case PartKind::variable:
        return number("resistance", Unit::ohm);
    case PartKind::lamp:
        return colourText(view.colour);
    case PartKind::timer:
        return stated<std::string>(circuit, part, "family").value_or("bipolar") == "cmos"
                   ? Words::tr("CMOS")
                   : Words::tr("bipolar");
    case PartKind::diode:
    case PartKind::toggle:
        break;
    }
    return {};
}

} // namespace

PartView viewOf(const Circuit& circuit, const Part& part, const Pose& pose, const SymbolStyle& style) {
    PartView view;
    view.id = part.id;
    view.kind = part.kind;
    view.pose = pose;
    view.style = style;
    view.ref = QString::fromStdString(part.ref);
    if (part.kind == PartKind::lamp)
        view.colour = QString::fromStdString(stated<std::string>(circuit, part, "colour").value_or("red"));
    if (part.kind == PartKind::capacitor)
        view.polarised = stated<bool>(circuit, part, "polarised").value_or(false);
    if (part.kind == PartKind::toggle) view.closed = stated<bool>(circuit, part, "closed").value_or(false);
    view.value = valueText(circuit, part, view);
    return view;
}

Point leadOf(const PartView& part, int pin) {
    return placed(leadOf(part.kind, part.style.timer, pin), {{}, part.pose.turn, part.pose.mirror});
}

QString kindText(PartKind kind) {
    switch (kind) {
    case PartKind::supply:
        return Words::tr("supply");
    case PartKind::timer:
        return Words::tr("555 timer");
    case PartKind::resistor:
        return Words::tr("resistor");
    case PartKind::variable:
        return Words::tr("variable resistor");
    case PartKind::capacitor:
        return Words::tr("capacitor");
    case PartKind::lamp:
        return Words::tr("lamp (LED)");
    case PartKind::diode:
        return Words::tr("diode");
    case PartKind::toggle:
        return Words::tr("switch");
    }
    return {};
}

QString partText(const PartView& part) {
    const QString kind = kindText(part.kind);
    return part.value.isEmpty() ? Words::tr("%1, %2").arg(part.ref, kind)
                                : Words::tr("%1, %2, %3").arg(part.ref, kind, part.value);
}

QString timerPinName(int pin) {
    static const std::array<const char*, 8> names{"GND",  "TRIG",  "OUT",   "RESET",
                                                  "CONT", "THRES", "DISCH", "VCC"};
    return QString::fromLatin1(names.at(static_cast<std::size_t>(pin)));
}

QString pinText(PartKind kind, int pin) {
    static const std::array<const char*, 8> timer{
        QT_TRANSLATE_NOOP("Words", "ground"),          QT_TRANSLATE_NOOP("Words", "trigger"),
        QT_TRANSLATE_NOOP("Words", "output"),          QT_TRANSLATE_NOOP("Words", "reset"),
        QT_TRANSLATE_NOOP("Words", "control voltage"), QT_TRANSLATE_NOOP("Words", "threshold"),
        QT_TRANSLATE_NOOP("Words", "discharge"),       QT_TRANSLATE_NOOP("Words", "supply")};
    const auto p = static_cast<std::size_t>(pin);
    switch (kind) {
    case PartKind::timer:
        return Words::tr("pin %1, %2").arg(pin + 1).arg(Words::tr(timer.at(p)));
    case PartKind::supply:
    case PartKind::capacitor:
        return pin == 0 ? Words::tr("plus") : Words::tr("minus");
    case PartKind::lamp:
    case PartKind::diode:
        return pin == 0 ? Words::tr("anode") : Words::tr("cathode");
    case PartKind::variable:
        if (pin == 2) return Words::tr("wiper");
        break;
    case PartKind::resistor:
    case PartKind::toggle:
        break;
    }
    return Words::tr("pin %1").arg(pin + 1);
}

} // namespace blinkwright::widgets::hookup
