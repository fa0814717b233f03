#include "core/study/expected_readings.h"

#include "core/base/wording.h"
#include "core/study/wiring_list.h"
#include "core/units/engineering.h"

#include <cmath>

namespace blinkwright::study {

using units::Unit;

namespace {

// What no meter of these rooms shows.
constexpr double least_V = 5e-4, least_A = 5e-7;

/// A text filled up with spaces; what is no ASCII counts one column a character.
std::string padded(std::string text, std::size_t width) {
    std::size_t shown = 0;
    for (const char c : text)
        if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++shown;
    text.append(width > shown ? width - shown : 1, ' ');
    return text;
}

} // namespace

Result<ExpectedReadings> expectedReadings(const circuit::Circuit& circuit, circuit::PartSet set,
                                          const ExpectedReadingsRequest& request) {
    Result<devices::Board> board = devices::makeBoard(circuit, set);
    if (!board) return board.fault();
    const BenchBoard bench = benchBoard(std::move(board).value());
    BehaviourRequest once{.accuracy = request.accuracy, .stepBudget = 200'000, .cancel = request.cancel};
    const Behaviour meter = behaviourOf(bench, once);
    once.instrument = tenToOneProbe;
    const Behaviour probe = behaviourOf(bench, once);
    ExpectedReadings expected;
    expected.cancelled = request.cancel && request.cancel->load(std::memory_order_relaxed);
    expected.state = probe.state == BoardState::unknown ? probe.state : meter.state;
    if (expected.state == BoardState::unknown) return expected;
    expected.period_s = meter.period_s;
    for (std::size_t k = 0; k < bench.places.size(); ++k)
        expected.rows.push_back({bench.places[k], meter.readings[k], probe.readings[k]});
    return expected;
}

std::string checkCardHeading(const ExpectedReadings& expected) {
    const std::string period = units::formatQuantity(expected.period_s, Unit::second);
    switch (expected.state) {
    case BoardState::blinks:
        return wording::inWords("Over one settled cycle of %1.", period);
    case BoardState::uneven:
        return wording::inWords("The cycles are not alike; over several of them, %1 on average.", period);
    case BoardState::rest:
        return wording::inWords("The board does not blink: at rest.");
    case BoardState::unpowered:
        return wording::inWords("The timer has no supply: at rest.");
    case BoardState::unknown:
        break;
    }
    return wording::inWords("There are no readings: the simulation found no settled state.");
}

std::vector<std::string> checkCardNotes() {
    return {
        wording::inWords(
            "Black lead on 0 V, the minus of the supply. Touch the legs of the timer itself, and of a lamp "
            "the places where anode and cathode belong."),
        wording::inWords(
            "Readings are with a DC meter of 10 MΩ on that place alone. “Mean” is what a slow meter settles "
            "on; a meter that follows wanders between least and most."),
        wording::inWords("Lamp currents want the meter in series with the lamp: take the battery off before "
                         "a joint is opened.")};
}

std::string readingText(const ReadingPlace& place, double value) {
    const bool isVoltage = place.isVoltage();
    if (std::abs(value) < (isVoltage ? least_V : least_A)) value = 0;
    return units::formatQuantity(value, isVoltage ? Unit::volt : Unit::ampere, 3, value != 0);
}

std::string checkCardText(const circuit::Circuit& circuit, circuit::PartSet set,
                          const ExpectedReadings& expected) {
    std::string text = circuit.title + "\n";
    if (const std::string heading = setHeading(circuit, set); !heading.empty()) text += heading + "\n";
    text += wording::inWords("Expected readings. %1", checkCardHeading(expected)) + "\n\n";
    constexpr std::size_t wide = 32, narrow = 13;
    text += padded(wording::inWords("Place"), wide) + padded(wording::inWords("Least"), narrow) +
            padded(wording::inWords("Mean"), narrow) + padded(wording::inWords("Most"), narrow) +
            wording::inWords("Measured") + "\n";
    for (const ExpectedReading& row : expected.rows) {
        text += padded(row.place.words, wide);
        for (const Quantity quantity : {Quantity::least, Quantity::mean, Quantity::most})
            text += padded(readingText(row.place, row.meter.of(quantity)), narrow);
        text += "________\n";
    }
    text += "\n";
    for (const std::string& note : checkCardNotes()) text += note + "\n";
    for (const std::string& caution : buildCautions(circuit, set)) text += caution + "\n";
    return text;
}

} // namespace blinkwright::study
