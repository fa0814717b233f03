#include "core/study/readings.h"

#include "core/study/figures.h"
#include "core/study/readings_builder.h"

#include <algorithm>

namespace blinkwright::study {

std::string_view name(Verdict verdict) {
    switch (verdict) {
    case Verdict::blinks:
        return "blinks";
    case Verdict::settlesHigh:
        return "settles high";
    case Verdict::settlesLow:
        return "settles low";
    case Verdict::doesNotSettle:
        return "does not settle";
    case Verdict::cannotRun:
        return "cannot run";
    }
    return "";
}

namespace {

/// Where a part stands in one of the board's lists.
template <class Parts>
std::optional<std::size_t> placeOf(const Parts& parts, circuit::PartId id) {
    const auto at = std::find_if(parts.begin(), parts.end(), [&](const auto& part) { return part.id == id; });
    if (at == parts.end()) return std::nullopt;
    return static_cast<std::size_t>(at - parts.begin());
}

void addHotterPhase(PartReading& reading, const PartFigures& figures, double span_s, const Phase& phase) {
    const double high = figures.highEnergy_J / phase.high_s;
    const double low = (figures.meanPower_W * span_s - figures.highEnergy_J) / phase.low_s;
    reading.hotterPower_W = std::max(high, low);
    reading.hotterPhase_s = high >= low ? phase.high_s : phase.low_s;
}

} // namespace

void addFigures(Readings& readings, const circuit::Circuit& circuit, const devices::Board& board,
                const Figures* figures, const std::optional<Phase>& phase) {
    for (std::size_t k = 0; k < board.junctions.size(); ++k) {
        const auto& part = board.junctions[k];
        if (!part.lamp) continue;
        LampReading lamp{.id = part.id, .ref = part.ref};
        if (figures) {
            const auto& f = figures->junctions[k];
            lamp.peak_A = f.peak_A;
            lamp.mean_A = f.mean_A;
            lamp.rms_A = f.rms_A;
            lamp.charge_C = f.charge_C;
            lamp.litTime_s = f.lit_s;
            lamp.reversePeak_V = f.reversePeak_V;
            lamp.overRated_s = f.overRated_s;
        }
        readings.lamps.push_back(std::move(lamp));
    }
    if (!board.supplies.empty()) {
        SupplyReading supply{.ref = board.supplies.front().ref};
        if (figures) {
            const auto& f = figures->supplyCurrents.front();
            supply.mean_A = f.mean_A;
            supply.peak_A = f.peak_A;
            supply.energy_J = f.energy_J;
            if (const auto capacity = board.supplies.front().capacity; capacity && f.mean_A > 0)
                supply.batteryLife_s = *capacity / f.mean_A;
        }
        readings.supply = std::move(supply);
    }
    const auto find = [&](circuit::PartId id) -> const PartFigures* {
        if (!figures) return nullptr;
        const auto in = [&](const auto& parts, const std::vector<PartFigures>& list) -> const PartFigures* {
            const auto place = placeOf(parts, id);
            return place ? &list[*place] : nullptr;
        };
        for (const PartFigures* found :
             {in(board.supplies, figures->supplies), in(board.timers, figures->timers),
              in(board.resistors, figures->resistors), in(board.variables, figures->variables),
              in(board.capacitors, figures->capacitors), in(board.junctions, figures->junctionParts),
              in(board.switches, figures->switches)})
            if (found) return found;
        return nullptr;
    };
    for (const auto& part : circuit.parts()) {
        PartReading reading{.ref = part.ref};
        if (const PartFigures* f = find(part.id)) {
            reading.meanPower_W = f->meanPower_W;
            reading.peakCurrent_A = f->peakCurrent_A;
            reading.peakVoltage_V = f->peakVoltage_V;
            if (phase) addHotterPhase(reading, *f, figures->span_s, *phase);
        }
        if (const auto k = placeOf(board.capacitors, part.id); k && figures)
            reading.lowestVoltage_V = figures->capacitorLowest_V[*k];
        if (const auto k = placeOf(board.timers, part.id); k && figures) {
            reading.sourced_A = figures->timerPeaks[*k].sourced_A;
            reading.sunk_A = figures->timerPeaks[*k].sunk_A;
            reading.dischargePeak_A = figures->timerPeaks[*k].discharge_A;
        }
        readings.parts.push_back(std::move(reading));
    }
}

} // namespace blinkwright::study
