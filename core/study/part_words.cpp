#include "core/study/part_words.h"

#include "core/base/wording.h"
#include "core/devices/board.h"
#include "core/devices/defaults.h"
#include "core/units/marking.h"

namespace blinkwright::study {

namespace {

using circuit::Circuit;
using circuit::Part;
using circuit::PartKind;
using circuit::PartSet;
using units::Tolerance;
using units::Unit;

/// One part of one set, with its defaults.
class Words {
  public:
    Words(const Circuit& circuit, PartSet set, const Part& part)
        : m_circuit(circuit), m_set(set), m_part(part) {}

    PartsRow row() const {
        PartsRow row;
        row.kind = std::string(circuit::info(m_part.kind).name);
        const auto add = [&row](const std::string& more) { row.description += ", " + more; };
        switch (m_part.kind) {
        case PartKind::resistor:
        case PartKind::variable:
            row.value = units::shortest(number("resistance"));
            row.rating = units::shortest(number("rated_power"));
            row.description = m_part.kind == PartKind::resistor
                                  ? wording::inWords("resistor %1", text("resistance", Unit::ohm))
                                  : wording::inWords("variable resistor %1", text("resistance", Unit::ohm));
            describeTolerance(row);
            add(text("rated_power", Unit::watt));
            break;
        case PartKind::capacitor:
            row.description =
                flag("polarised")
                    ? wording::inWords("electrolytic capacitor %1", text("capacitance", Unit::farad))
                    : wording::inWords("capacitor %1", text("capacitance", Unit::farad));
            row.value = units::shortest(number("capacitance"));
            describeTolerance(row);
            if (const auto volts = numberIfAny("rated_voltage")) {
                row.rating = units::shortest(*volts);
                add(units::formatQuantity(*volts, Unit::volt));
            }
            break;
        case PartKind::lamp:
            row.value = word("colour");
            row.description = wording::inWords("%1 lamp (LED)", colourWords(row.value));
            row.rating = units::shortest(number("rated_current"));
            add(wording::inWords("rated %1", text("rated_current", Unit::ampere)));
            break;
        case PartKind::timer:
            row.value = word("family");
            row.description = row.value == "cmos" ? wording::inWords("555 timer, CMOS")
                                                  : wording::inWords("555 timer, bipolar");
            break;
        case PartKind::supply:
            row.value = units::shortest(number("voltage"));
            row.description = wording::inWords("supply %1", text("voltage", Unit::volt));
            break;
        case PartKind::diode:
            row.description = wording::inWords("diode");
            break;
        case PartKind::toggle:
            row.description = wording::inWords("switch");
            break;
        }
        row.marking = marking();
        return row;
    }

    std::string step() const {
        std::string words;
        switch (m_part.kind) {
        case PartKind::resistor:
            words = text("resistance", Unit::ohm);
            break;
        case PartKind::variable:
            words = wording::inWords("%1 variable resistor", text("resistance", Unit::ohm));
            break;
        case PartKind::capacitor:
            words = text("capacitance", Unit::farad);
            if (!flag("polarised")) break;
            if (const auto volts = numberIfAny("rated_voltage"))
                words =
                    wording::inWords("%1 %2 electrolytic", words, units::formatQuantity(*volts, Unit::volt));
            else
                words = wording::inWords("%1 electrolytic", words);
            break;
        case PartKind::lamp:
            words = wording::inWords("%1 lamp", colourWords(word("colour")));
            break;
        case PartKind::timer:
        case PartKind::diode:
        case PartKind::toggle:
        case PartKind::supply:
            words = row().description;
            break;
        }
        const std::string code = marking();
        return code.empty() ? words : words + " (" + code + ")";
    }

  private:
    double number(const char* key) const {
        return devices::effectiveNumber(m_circuit, m_set, m_part.id, key);
    }
    std::optional<double> numberIfAny(const char* key) const {
        return devices::effectiveNumberIfAny(m_circuit, m_set, m_part.id, key);
    }
    std::string word(const char* key) const {
        return devices::effectiveWord(m_circuit, m_set, m_part.id, key);
    }
    bool flag(const char* key) const { return devices::effectiveFlag(m_circuit, m_set, m_part.id, key); }
    std::string text(const char* key, Unit unit) const {
        constexpr int figures = 4;
        return units::formatQuantity(number(key), unit, figures);
    }

    std::optional<Tolerance> tolerance() const {
        const auto value = devices::effectiveValue(m_circuit, m_set, m_part.id, "tolerance");
        if (!value) return std::nullopt;
        if (const double* way = std::get_if<double>(&*value)) return Tolerance::either(*way);
        if (const auto* ends = std::get_if<circuit::Interval>(&*value))
            return Tolerance{(*ends)[0], (*ends)[1]};
        return std::nullopt;
    }
    void describeTolerance(PartsRow& row) const {
        const auto t = tolerance();
        if (!t) return;
        const auto percent = [](double share) {
            return units::formatQuantity(100 * share, Unit::none) + " %";
        };
        const bool either = t->low == -t->high;
        row.tolerance =
            either ? units::shortest(t->high) : units::shortest(t->low) + " to " + units::shortest(t->high);
        row.description += ", " + (either ? percent(t->high)
                                          : wording::inWords("%1 to +%2", percent(t->low), percent(t->high)));
    }

    /// Electrolytics and all but fixed resistors have their value printed in full.
    std::string marking() const {
        const auto t = tolerance();
        if (m_part.kind == PartKind::resistor && t && t->low == -t->high) {
            const auto bands = units::colourBands(number("resistance"), t->high);
            return bands ? units::bandsText(bands.value()) : std::string();
        }
        if (m_part.kind != PartKind::capacitor || flag("polarised")) return {};
        auto code = units::capacitorCode(number("capacitance"), t);
        if (!code) code = units::capacitorCode(number("capacitance"));
        return code ? code.value() : std::string();
    }

    const Circuit& m_circuit;
    const PartSet m_set;
    const Part& m_part;
};

} // namespace

std::string colourWords(const std::string& colour) {
    return wording::inWords(colour); // marked where the words of files are listed
}

std::string stepWords(const Circuit& circuit, PartSet set, const Part& part) {
    return Words(circuit, set, part).step();
}

PartsRow rowWords(const Circuit& circuit, PartSet set, const Part& part) {
    return Words(circuit, set, part).row();
}

bool isPolarised(const Circuit& circuit, PartSet set, const Part& part) {
    return part.kind == PartKind::capacitor && devices::effectiveFlag(circuit, set, part.id, "polarised");
}

} // namespace blinkwright::study
