#include "core/study/wiring_list.h"

#include "core/circuit/set_edits.h"
#include "core/devices/defaults.h"

#include "core/base/csv.h"
#include "core/base/wording.h"
#include "core/study/cause.h"
#include "core/study/part_words.h"

#include <algorithm>
#include <charconv>

namespace blinkwright::study {

namespace {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;
using circuit::PinRef;

/// The order of building: what is put in first stands first.
int orderOf(PartKind kind) {
    switch (kind) {
    case PartKind::timer:
        return 0;
    case PartKind::resistor:
        return 1;
    case PartKind::variable:
        return 2;
    case PartKind::diode:
        return 3;
    case PartKind::capacitor:
        return 4;
    case PartKind::lamp:
        return 5;
    case PartKind::toggle:
        return 6;
    case PartKind::supply:
        return 7;
    }
    return 8;
}

std::string joined(const std::vector<std::string>& items, std::string_view between) {
    std::string text;
    for (const std::string& item : items) text.append(text.empty() ? "" : between).append(item);
    return text;
}

/// R2 before R10.
bool refBefore(const std::string& a, const std::string& b) {
    const auto split = [](const std::string& ref) {
        const std::size_t at = std::min(ref.find_first_of("0123456789"), ref.size());
        long number = 0;
        std::from_chars(ref.data() + at, ref.data() + ref.size(), number);
        return std::pair{ref.substr(0, at), number};
    };
    return split(a) < split(b);
}

std::vector<const Part*> inOrder(const Circuit& circuit) {
    std::vector<const Part*> parts;
    for (const Part& part : circuit.parts()) parts.push_back(&part);
    std::stable_sort(parts.begin(), parts.end(), [](const Part* a, const Part* b) {
        if (orderOf(a->kind) != orderOf(b->kind)) return orderOf(a->kind) < orderOf(b->kind);
        return refBefore(a->ref, b->ref);
    });
    return parts;
}

class Lister {
  public:
    Lister(const Circuit& circuit, circuit::PartSet set) : m_circuit(circuit), m_set(set) {
        for (const Part& part : circuit.parts()) {
            if (part.kind == PartKind::timer) ++m_timers;
            if (part.kind != PartKind::supply || m_plus || m_zero) continue;
            m_plus = circuit.netOf({part.id, 0});
            m_zero = circuit.netOf({part.id, 1});
        }
    }

    std::string step(const Part& part) const {
        const std::string words = stepWords(m_circuit, m_set, part);
        switch (part.kind) {
        case PartKind::timer:
            return wording::inWords("%1, %2: %3", part.ref, words, timer(part));
        case PartKind::supply:
            return wording::inWords("%1, %2: plus to %3, minus to %4; join it last", part.ref, words,
                                    end(part, 0), end(part, 1));
        case PartKind::variable:
            return wording::inWords("%1, %2: one end to %3, the other end to %4, wiper to %5", part.ref,
                                    words, end(part, 0), end(part, 1), end(part, 2));
        case PartKind::lamp:
            return wording::inWords("%1, %2: anode (the longer lead) to %3, cathode to %4", part.ref, words,
                                    end(part, 0), end(part, 1));
        case PartKind::diode:
            return wording::inWords("%1, %2: anode to %3, cathode (the ring) to %4", part.ref, words,
                                    end(part, 0), end(part, 1));
        case PartKind::capacitor:
            if (isPolarised(m_circuit, m_set, part))
                return wording::inWords("%1, %2: plus to %3, minus to %4", part.ref, words, end(part, 0),
                                        end(part, 1));
            break;
        case PartKind::resistor:
        case PartKind::toggle:
            break;
        }
        // The end that is harder to find comes first; rails are easy.
        const bool turned = isRail(m_circuit.netOf({part.id, 0})) && !isRail(m_circuit.netOf({part.id, 1}));
        return wording::inWords("%1, %2: from %3 to %4", part.ref, words, end(part, turned ? 1 : 0),
                                end(part, turned ? 0 : 1));
    }

  private:
    bool isRail(std::optional<NetId> net) const { return net && (net == m_plus || net == m_zero); }

    /// Words for the place that a pin goes to: a rail, timer pins, or else other parts' pins.
    std::string end(const Part& part, int pin) const {
        const auto net = m_circuit.netOf({part.id, pin});
        if (!net) return nothing();
        if (net == m_plus) return wording::inWords("+ rail");
        if (net == m_zero) return wording::inWords("0\u00A0V rail");
        return others(*net, part.id);
    }
    std::string others(NetId net, PartId except) const {
        std::vector<std::string> timerPlaces, places;
        for (const Part* part : inOrder(m_circuit)) {
            if (part->id == except) continue;
            std::vector<std::string> pins;
            for (const PinRef pin : m_circuit.find(net)->pins)
                if (pin.part == part->id)
                    pins.emplace_back(circuit::info(part->kind).pins[static_cast<std::size_t>(pin.pin)].name);
            if (pins.empty()) continue;
            if (part->kind == PartKind::timer) {
                std::sort(pins.begin(), pins.end());
                timerPlaces.push_back(timerPlace(*part, pins));
            } else {
                places.push_back(partPlace(*part, pins));
            }
        }
        if (!timerPlaces.empty()) return listed(timerPlaces); // a pin is the best place to find
        return places.empty() ? nothing() : listed(places);
    }
    static std::string nothing() { return wording::inWords("nothing (left open)"); }
    std::string timerPlace(const Part& timer, const std::vector<std::string>& pins) const {
        const bool one = pins.size() == 1;
        if (m_timers > 1)
            return one ? wording::inWords("pin %1 of %2", pins.front(), timer.ref)
                       : wording::inWords("pins %1 of %2", listed(pins), timer.ref);
        return one ? wording::inWords("pin %1", pins.front()) : wording::inWords("pins %1", listed(pins));
    }
    static std::string partPlace(const Part& part, std::vector<std::string> pins) {
        if (part.kind == PartKind::resistor || part.kind == PartKind::toggle) return part.ref;
        for (std::string& pin : pins) pin = wording::inWords(pin); // poles and wipers are called as in files
        return wording::inWords("the %1 of %2", listed(pins), part.ref);
    }

    std::string timer(const Part& part) const {
        std::vector<std::string> sentences;
        std::vector<int> told;
        for (int pin = 0; pin < 8; ++pin) {
            if (std::find(told.begin(), told.end(), pin) != told.end()) continue;
            const auto net = m_circuit.netOf({part.id, pin});
            if (!net) continue;
            std::vector<std::string> together;
            for (int other = pin; other < 8; ++other) {
                if (m_circuit.netOf({part.id, other}) != net) continue;
                together.push_back(std::to_string(other + 1));
                told.push_back(other);
            }
            const std::string to = isRail(net) ? end(part, pin) : otherTimers(*net, part.id);
            const std::string pins = listed(together);
            if (together.size() == 1 && !to.empty())
                sentences.push_back(wording::inWords("pin %1 to %2", pins, to));
            else if (together.size() > 1)
                sentences.push_back(to.empty() ? wording::inWords("pins %1 to each other", pins)
                                               : wording::inWords("pins %1 to %2", pins, to));
        }
        if (sentences.empty()) return wording::inWords("notch up, pin 1 at the top left");
        return wording::inWords("notch up, pin 1 at the top left; %1", joined(sentences, ", "));
    }
    std::string otherTimers(NetId net, PartId except) const {
        std::vector<std::string> places;
        for (const PinRef pin : m_circuit.find(net)->pins) {
            const Part* part = m_circuit.find(pin.part);
            if (pin.part != except && part->kind == PartKind::timer)
                places.push_back(wording::inWords("pin %1 of %2", pin.pin + 1, part->ref));
        }
        return listed(places);
    }

    const Circuit& m_circuit;
    const circuit::PartSet m_set;
    int m_timers = 0;
    std::optional<NetId> m_plus, m_zero;
};

} // namespace

std::vector<BuildStep> wiringList(const Circuit& circuit, circuit::PartSet set) {
    const Lister lister(circuit, set);
    std::vector<BuildStep> steps;
    for (const Part* part : inOrder(circuit)) steps.push_back({part->id, part->ref, lister.step(*part)});
    return steps;
}

std::vector<PartsRow> partsList(const Circuit& circuit, circuit::PartSet set) {
    std::vector<PartsRow> rows;
    for (const Part* part : inOrder(circuit)) {
        PartsRow row = rowWords(circuit, set, *part);
        const auto same = std::find_if(rows.begin(), rows.end(), [&](const PartsRow& known) {
            return known.description == row.description && known.value == row.value &&
                   known.marking == row.marking;
        });
        if (same == rows.end()) {
            row.refs = {part->ref};
            rows.push_back(std::move(row));
        } else {
            same->refs.push_back(part->ref);
        }
    }
    return rows;
}

std::string partsCsv(const std::vector<PartsRow>& rows) {
    std::string csv = "quantity,references,kind,value,tolerance,rating,description,marking\r\n";
    for (const PartsRow& row : rows) {
        const std::vector<std::string> cells{std::to_string(row.refs.size()),
                                             joined(row.refs, " "),
                                             row.kind,
                                             row.value,
                                             row.tolerance,
                                             row.rating,
                                             row.description,
                                             row.marking};
        for (std::size_t k = 0; k < cells.size(); ++k) csv += (k ? "," : "") + csvField(cells[k]);
        csv += "\r\n";
    }
    return csv;
}

std::string partsText(const std::vector<PartsRow>& rows) {
    std::string text;
    for (const PartsRow& row : rows)
        text += std::to_string(row.refs.size()) + " \u00D7 " + row.description +
                (row.marking.empty() ? "" : " (" + row.marking + ")") + ": " + joined(row.refs, ", ") + "\n";
    return text;
}

std::string setHeading(const Circuit& circuit, circuit::PartSet set) {
    if (circuit::setsAgree(circuit)) return {};
    return set == circuit::PartSet::A ? wording::inWords("Values of Set A")
                                      : wording::inWords("Values of Set B");
}

std::vector<std::string> buildCautions(const Circuit& circuit, circuit::PartSet set) {
    const auto has = [&](circuit::PartKind kind) {
        return std::ranges::any_of(circuit.parts(), [kind](const auto& part) { return part.kind == kind; });
    };
    const bool polarised = std::ranges::any_of(circuit.parts(), [&](const auto& part) {
        return part.kind == circuit::PartKind::capacitor &&
               devices::effectiveFlag(circuit, set, part.id, "polarised");
    });
    std::vector<std::string> all;
    if (has(circuit::PartKind::supply))
        all.push_back(wording::inWords(
            "Check for shorts before the supply is joined, and take it off before the wiring is changed: a "
            "shorted battery can burn you, or burst. Never mains."));
    if (polarised)
        all.push_back(wording::inWords("Mind plus and minus of the electrolytic capacitors: the wrong way "
                                       "round they can fail with force."));
    if (has(circuit::PartKind::lamp))
        all.push_back(wording::inWords(
            "More than three flashes a second can set off seizures in some people. Do not look into strong "
            "lamps from close by. Local rules and licensed practice decide what a light may be used for."));
    return all;
}

std::string buildText(const Circuit& circuit, circuit::PartSet set) {
    std::string text = circuit.title.empty() ? "" : circuit.title + "\n\n";
    if (const std::string heading = setHeading(circuit, set); !heading.empty()) text += heading + "\n\n";
    text += wording::inWords("Parts") + "\n" + partsText(partsList(circuit, set)) + "\n" +
            wording::inWords("Wiring") + "\n";
    int number = 0;
    for (const BuildStep& step : wiringList(circuit, set))
        text += std::to_string(++number) + ". " + step.text + "\n";
    const std::vector<std::string> cautions = buildCautions(circuit, set);
    if (!cautions.empty()) text += "\n" + wording::inWords("Cautions") + "\n";
    for (const std::string& caution : cautions) text += caution + "\n";
    return text;
}

} // namespace blinkwright::study
