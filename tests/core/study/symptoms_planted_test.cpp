// Thirty faults planted on three circuits, and how far up the search lists the true one. It gets what an
// honest helper would have: one symptom, and the two readings that the search itself asks for, one after the
// other.
#include "core/study/expected_readings.h"
#include "core/study/symptoms.h"

#include "tests/core/study/planted.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

struct Case {
    const char* sample;
    FaultKind kind;
    const char *ref, *other; ///< the other part of a swap
    int pin;                 ///< of the package
    void (*plant)(Planted&);
};

/// Readings of a board without current, by Ohm's law with a meter of 10 Mohm.
void withoutSupply(Planted& board) {
    board.state("U1:8", 0);
}
void withoutPin8(Planted& board) { // pins 2 and 6 behind R1 and R2, pin 7 behind R1, pin 4 on the rail
    constexpr double supply_V = 6.1, meter = 10e6;
    board.state("U1:2", supply_V * meter / (meter + 78e3));
    board.state("U1:6", supply_V * meter / (meter + 78e3));
    board.state("U1:7", supply_V * meter / (meter + 10e3));
    board.state("U1:4", supply_V);
}

const Case cases[] = {
    {"mole-light", FaultKind::open, "R1", "", 0, [](Planted& b) { b.open("R1:2"); }},
    {"mole-light", FaultKind::open, "R2", "", 0, [](Planted& b) { b.open("R2:2"); }},
    {"mole-light", FaultKind::leftOut, "U1", "", 7, [](Planted& b) { b.open("U1:7"); }},
    {"mole-light", FaultKind::leftOut, "U1", "", 6, [](Planted& b) { b.open("U1:6"); }},
    {"mole-light", FaultKind::turned, "D1", "", 0, [](Planted& b) { b.turned("D1"); }},
    {"mole-light", FaultKind::decadeUp, "C1", "", 0, [](Planted& b) { b.times("C1", "capacitance", 10); }},
    {"mole-light", FaultKind::swapped, "R1", "R2", 0,
     [](Planted& b) { b.swapped("R1", "R2", "resistance"); }},
    {"mole-light", FaultKind::bridged, "U1", "", 6, [](Planted& b) { b.shorted("U1:6", "U1:7"); }},
    {"mole-light", FaultKind::exhausted, "BT1", "", 0,
     [](Planted& b) {
         b.times("BT1", "voltage", 0.7);
         b.times("BT1", "resistance", 30);
     }},
    {"mole-light", FaultKind::leftOut, "U1", "", 8, &withoutPin8},
    {"buoy-pair", FaultKind::open, "D1", "", 0, [](Planted& b) { b.open("D1:anode"); }},
    {"buoy-pair", FaultKind::turned, "D2", "", 0, [](Planted& b) { b.turned("D2"); }},
    {"buoy-pair", FaultKind::open, "C4", "", 0, [](Planted& b) { b.open("C4:plus"); }},
    {"buoy-pair", FaultKind::shorted, "C4", "", 0, [](Planted& b) { b.shorted("C4:plus", "C4:minus"); }},
    {"buoy-pair", FaultKind::decadeUp, "R3", "", 0, [](Planted& b) { b.times("R3", "resistance", 10); }},
    {"buoy-pair", FaultKind::decadeDown, "R2", "", 0, [](Planted& b) { b.times("R2", "resistance", 0.1); }},
    {"buoy-pair", FaultKind::leftOut, "U1", "", 2, [](Planted& b) { b.open("U1:2"); }},
    {"buoy-pair", FaultKind::turned, "C1", "", 0, [](Planted& b) { b.turnedElectrolytic("C1"); }},
    {"buoy-pair", FaultKind::open, "BT1", "", 0, &withoutSupply},
    {"buoy-pair", FaultKind::bridged, "U1", "", 5, [](Planted& b) { b.shorted("U1:5", "U1:6"); }},
    {"winch-warning", FaultKind::open, "R3", "", 0, [](Planted& b) { b.open("R3:1"); }},
    {"winch-warning", FaultKind::turned, "D1", "", 0, [](Planted& b) { b.turned("D1"); }},
    {"winch-warning", FaultKind::swapped, "R1", "R2", 0,
     [](Planted& b) { b.swapped("R1", "R2", "resistance"); }},
    {"winch-warning", FaultKind::shorted, "C1", "", 0, [](Planted& b) { b.shorted("C1:plus", "C1:minus"); }},
    {"winch-warning", FaultKind::leftOut, "U1", "", 3, [](Planted& b) { b.open("U1:3"); }},
    {"winch-warning", FaultKind::swapped, "C1", "C2", 0,
     [](Planted& b) { b.swapped("C1", "C2", "capacitance"); }},
    {"winch-warning", FaultKind::decadeUp, "R1", "", 0, [](Planted& b) { b.times("R1", "resistance", 10); }},
    {"winch-warning", FaultKind::bridged, "U1", "", 7, [](Planted& b) { b.shorted("U1:7", "U1:8"); }},
    {"winch-warning", FaultKind::shorted, "R2", "", 0, [](Planted& b) { b.shorted("R2:1", "R2:2"); }},
    {"winch-warning", FaultKind::shorted, "C2", "", 0, [](Planted& b) { b.shorted("C2:plus", "C2:minus"); }},
};

std::size_t indexOf(const FaultLibrary& library, const circuit::Circuit& circuit, const Case& planted) {
    const auto id = circuit.findRef(planted.ref)->id;
    for (std::size_t k = 0; k < library.faults.size(); ++k) {
        const BoardFault& fault = library.faults[k];
        if (fault.kind != planted.kind || fault.part != id) continue;
        if (planted.pin > 0 && fault.pin != planted.pin - 1) continue;
        if (*planted.other != 0 && fault.other != circuit.findRef(planted.other)->id) continue;
        return k;
    }
    throw std::logic_error("this fault is not among the candidates");
}

/// Asks for two readings, plants each fault, and tells how many come among the first three.
/// @param fixed the places of both readings, means; empty: those that the search asks for itself.
int foundAmongThree(const std::vector<std::string>& fixed) {
    std::map<std::string, FaultLibrary> libraries;
    int amongThree = 0, first = 0;
    std::uint64_t seed = 1;
    for (const Case& planted : cases) {
        const circuit::Circuit drawn = sampleCircuit(planted.sample);
        FaultLibrary& library = libraries[planted.sample];
        if (library.faults.empty()) library = faultLibrary(drawn, PartSet::A, {}).value();
        const std::size_t truth = indexOf(library, drawn, planted);
        Planted board(drawn, seed++);
        planted.plant(board);

        Observation seen{.symptoms = {board.symptom()}};
        std::string asked;
        for (std::size_t reading = 0; reading < 2; ++reading) {
            std::optional<Telling> next = diagnose(library, seen).next;
            if (!fixed.empty()) {
                const auto named = std::ranges::find(library.places, fixed[reading], &ReadingPlace::name);
                next = Telling{static_cast<std::size_t>(named - library.places.begin()), Quantity::mean, 0};
            }
            if (!next) break;
            const ReadingPlace& place = library.places[next->place];
            const double value = board.read(place.name, next->quantity);
            seen.readings.push_back({next->place, next->quantity, value});
            asked +=
                " " + place.name + " " + std::string(name(next->quantity)) + " " + readingText(place, value);
        }
        const Diagnosis found = diagnose(library, seen);
        const auto at = std::ranges::find_if(found.suspects, [&](const Suspect& suspect) {
            return std::ranges::count(suspect.faults, truth) > 0;
        });
        const auto rank = at - found.suspects.begin() + 1;
        amongThree += rank <= 3 ? 1 : 0;
        first += rank == 1 ? 1 : 0;
        std::printf("%-13s rank %2ld, share %3.0f %%  %s\n              %s;%s\n", planted.sample,
                    static_cast<long>(rank), 100 * at->share, library.faults[truth].sentence.c_str(),
                    std::string(words(*seen.symptoms.begin())).c_str(), asked.c_str());
        for (const std::size_t same : at->faults)
            if (same != truth)
                std::printf("              counted as one with: %s\n", library.faults[same].sentence.c_str());
        if (rank > 1)
            std::printf("              before it: %s\n",
                        library.faults[found.suspects.front().faults.front()].sentence.c_str());
    }
    std::printf("%d of %zu among the first three, %d of them first\n", amongThree, std::size(cases), first);
    return amongThree;
}

TEST(Symptoms, FindThePlantedFaultAmongTheFirstThreeByOneSymptomAndTheTwoReadingsAskedFor) {
    ASSERT_EQ(std::size(cases), 30u);
    EXPECT_GE(foundAmongThree({}), 24);
}

TEST(Symptoms, FindItByTheSameTwoPinsForAllToo) {
    EXPECT_GE(foundAmongThree({"U1:3", "U1:7"}), 24);
}

} // namespace
} // namespace blinkwright::study
