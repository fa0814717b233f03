#include "core/study/symptoms.h"

#include "core/circuit/edit.h"
#include "tests/core/study/planted.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

const FaultLibrary& libraryOf(const std::string& name) {
    static std::map<std::string, FaultLibrary> all;
    FaultLibrary& library = all[name];
    if (library.faults.empty()) library = faultLibrary(sampleCircuit(name), PartSet::A, {}).value();
    return library;
}
std::size_t faultOf(const FaultLibrary& library, FaultKind kind, const char* ref, int pin = 0) {
    for (std::size_t k = 0; k < library.faults.size(); ++k) {
        const BoardFault& fault = library.faults[k];
        if (fault.kind == kind && !fault.places.empty() && fault.places.front().starts_with(ref) &&
            (pin == 0 || fault.pin == pin - 1))
            return k;
    }
    throw std::logic_error("there is no such fault");
}
std::size_t placeOf(const FaultLibrary& library, std::string_view name) {
    for (std::size_t k = 0; k < library.places.size(); ++k)
        if (library.places[k].name == name) return k;
    throw std::logic_error("there is no such place");
}
const Suspect& suspectOf(const Diagnosis& diagnosis, std::size_t fault) {
    return *std::ranges::find_if(diagnosis.suspects,
                                 [&](const Suspect& s) { return std::ranges::count(s.faults, fault) > 0; });
}

TEST(Faults, OfTheMoleLightAreAllSingleOnesThatItHasRoomFor) {
    const FaultLibrary& library = libraryOf("mole-light");
    const auto count = [&](FaultKind kind) {
        return std::ranges::count_if(library.faults, [&](const BoardFault& f) { return f.kind == kind; });
    };
    EXPECT_EQ(count(FaultKind::none), 1);
    EXPECT_EQ(count(FaultKind::leftOut), 8);
    EXPECT_EQ(count(FaultKind::bridged), 6);
    EXPECT_EQ(count(FaultKind::open), 8); // BT1, R1 to R3, C1 to C3, D1
    EXPECT_EQ(count(FaultKind::shorted), 8);
    EXPECT_EQ(count(FaultKind::turned), 5); // BT1, U1, C1, C3, D1
    EXPECT_EQ(count(FaultKind::decadeUp), 6);
    EXPECT_EQ(count(FaultKind::decadeDown), 6);
    EXPECT_EQ(count(FaultKind::swapped), 6); // three pairs of resistors, three of capacitors
    for (const BoardFault& fault : library.faults) {
        EXPECT_FALSE(fault.sentence.empty());
        EXPECT_FALSE(fault.remedy.empty());
        EXPECT_GT(fault.prior, 0);
    }
}

TEST(Faults, JoinedPinsAreNotBridgedAgain) {
    circuit::Circuit circuit = sampleCircuit("mole-light");
    const auto timing = circuit.findNet("timing")->id;
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{circuit.pinNamed("U1:7").value(), timing}}));
    const BenchBoard bench = benchBoard(devices::makeBoard(circuit, PartSet::A).value());
    std::vector<int> lower;
    for (const BoardFault& fault : boardFaults(circuit, PartSet::A, bench))
        if (fault.kind == FaultKind::bridged) lower.push_back(fault.pin + 1);
    EXPECT_THAT(lower, testing::ElementsAre(1, 2, 3, 5, 7)); // 6 and 7 are joined anyway
}

TEST(Faults, APinWithoutContactIsReadAtItsLeg) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Behaviour& b = library.cases[faultOf(library, FaultKind::leftOut, "U1", 7)].behaviour;
    EXPECT_NEAR(b.readings[placeOf(library, "U1:7")].mean, 0, 1e-3); // while R1 and R2 hold its row at 6 V
    EXPECT_NEAR(b.readings[placeOf(library, "U1:2")].mean, 6 * 5e6 / (5e6 + 78e3),
                0.01); // C1 leaks as the meter does
}

TEST(Faults, WhatAMeterLetsThroughDoesNotFeedATimer) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Behaviour& b = library.cases[faultOf(library, FaultKind::leftOut, "U1", 1)].behaviour;
    EXPECT_EQ(b.state, BoardState::unpowered);
    for (const Extent& reading : b.readings) EXPECT_EQ(reading.least, reading.most);
}

TEST(Faults, EachOneComesToAnAnswerWithinItsBudget) {
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"}) {
        const FaultLibrary& library = libraryOf(name);
        for (std::size_t k = 0; k < library.faults.size(); ++k) {
            EXPECT_NE(library.cases[k].behaviour.state, BoardState::unknown)
                << name << ": " << library.faults[k].sentence;
            for (const Extent& reading : library.cases[k].behaviour.readings) {
                EXPECT_TRUE(std::isfinite(reading.mean));
                EXPECT_LE(reading.least, reading.mean + 1e-6);
                EXPECT_GE(reading.most, reading.mean - 1e-6);
            }
        }
    }
}

TEST(Signs, SayWhatADecadeOfTheTimingCapacitorDoes) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Signs up = library.cases[faultOf(library, FaultKind::decadeUp, "C1")].signs;
    const Signs down = library.cases[faultOf(library, FaultKind::decadeDown, "C1")].signs;
    EXPECT_GT(up[Symptom::tooSlow], 0.95);
    EXPECT_LT(up[Symptom::tooFast], 0.05);
    EXPECT_GT(down[Symptom::tooFast], 0.95);
    EXPECT_LT(down[Symptom::asIntended], 0.05);
    EXPECT_GT(library.cases[0].signs[Symptom::asIntended], 0.9);
}

TEST(Signs, SayWhichLampsAreDark) {
    const FaultLibrary& library = libraryOf("mole-light");
    EXPECT_EQ(library.cases[faultOf(library, FaultKind::turned, "D1")].signs[Symptom::dark], 1);
    EXPECT_EQ(library.cases[faultOf(library, FaultKind::open, "R2")].signs[Symptom::alwaysLit], 1);
    EXPECT_GT(library.cases[faultOf(library, FaultKind::decadeUp, "R3")].signs[Symptom::faint], 0.9);
    EXPECT_GT(library.cases[faultOf(library, FaultKind::decadeDown, "R3")].signs[Symptom::tooBright], 0.9);
    const FaultLibrary& pair = libraryOf("buoy-pair");
    EXPECT_EQ(pair.cases[faultOf(pair, FaultKind::shorted, "C4")].signs[Symptom::oneLampOnly], 1);
    for (const FaultCase& each : library.cases) {
        EXPECT_EQ(each.signs[Symptom::oneLampOnly], 0); // of one lamp
        EXPECT_EQ(each.signs[Symptom::bothAtOnce], 0);
    }
}

TEST(Symptoms, WithoutAnObservationTheSharesAreThePriors) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Diagnosis diagnosis = diagnose(library, {});
    double all = 0, sum = 0;
    for (const BoardFault& fault : library.faults) all += fault.prior;
    for (const Suspect& suspect : diagnosis.suspects) {
        double prior = 0;
        for (const std::size_t fault : suspect.faults) prior += library.faults[fault].prior;
        EXPECT_NEAR(suspect.share, prior / all, 1e-12);
        sum += suspect.share;
    }
    EXPECT_NEAR(sum, 1, 1e-12);
}

TEST(Symptoms, AReadingMovesTheSharesByBayes) {
    // Two suspects, one reading: the ratio of their shares changes by the ratio of the two densities, a
    // normal one with 3 % of mistaken readings spread over twice the supply.
    const FaultLibrary& library = libraryOf("mole-light");
    const std::size_t a = faultOf(library, FaultKind::open, "R1"),
                      b = faultOf(library, FaultKind::open, "R2");
    const std::size_t place = placeOf(library, "U1:7");
    const PlaceReading reading{place, Quantity::mean, 2.2};
    const Diagnosis before = diagnose(library, {}), after = diagnose(library, {.readings = {reading}});
    const auto density = [&](std::size_t fault) {
        const double spread = readingSpread(library, fault, reading, 0.008);
        const double off = (2.2 - library.cases[fault].behaviour.readings[place].mean) / spread;
        return 0.97 * std::exp(-off * off / 2) / (spread * std::sqrt(2 * M_PI)) + 0.03 / 12;
    };
    const double ratio = suspectOf(after, a).share / suspectOf(after, b).share;
    const double was = suspectOf(before, a).share / suspectOf(before, b).share;
    EXPECT_NEAR(ratio / was, density(a) / density(b), 1e-9 * ratio / was);
    EXPECT_GT(ratio / was, 10); // R1 open leaves pin 7 at 1.9 V, R2 open at 6 V
}

TEST(Symptoms, WhatNoReadingTellsApartIsOneSuspect) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Diagnosis diagnosis = diagnose(library, {.symptoms = {Symptom::dark}});
    const Suspect& lamp = suspectOf(diagnosis, faultOf(library, FaultKind::turned, "D1"));
    EXPECT_EQ(std::ranges::count(lamp.faults, faultOf(library, FaultKind::open, "D1")), 1);
    // A short across R1 is one of pins 7 and 8.
    EXPECT_EQ(library.alike[faultOf(library, FaultKind::shorted, "R1")],
              library.alike[faultOf(library, FaultKind::bridged, "U1", 7)]);
    EXPECT_NE(library.alike[faultOf(library, FaultKind::open, "R1")],
              library.alike[faultOf(library, FaultKind::open, "R2")]);
}

TEST(Symptoms, TheNextPlaceToMeasureTellsTheTopTwoApart) {
    const FaultLibrary& library = libraryOf("mole-light");
    const Diagnosis diagnosis = diagnose(library, {.symptoms = {Symptom::alwaysLit}});
    ASSERT_TRUE(diagnosis.next);
    const auto [place, quantity, power] = *diagnosis.next;
    EXPECT_GT(power, 0.2);
    // Taking the reading that the leader would give makes it lead by more.
    const std::size_t leader = diagnosis.suspects.front().faults.front();
    const double value = library.cases[leader].behaviour.readings[place].of(quantity);
    const Diagnosis after =
        diagnose(library, {.symptoms = {Symptom::alwaysLit}, .readings = {{place, quantity, value}}});
    EXPECT_GT(suspectOf(after, leader).share, 1.2 * suspectOf(diagnosis, leader).share);
}

TEST(Symptoms, NothingIsAskedForTwice) {
    const FaultLibrary& library = libraryOf("mole-light");
    Observation seen{.symptoms = {Symptom::dark}};
    std::set<std::pair<devices::Node, Quantity>> asked;
    for (int k = 0; k < 8; ++k) {
        const Diagnosis diagnosis = diagnose(library, seen);
        if (!diagnosis.next) break;
        const auto [place, quantity, power] = *diagnosis.next;
        // Pins 2 and 6 are one place to a meter.
        EXPECT_TRUE(asked.insert({library.places[place].node, quantity}).second)
            << library.places[place].name;
        seen.readings.push_back({place, quantity, 3.0}); // which fits nothing, so that it goes on asking
    }
    EXPECT_GT(asked.size(), 2u);
}

TEST(Symptoms, ARateThatWasCountedTellsADecadeFromASwap) {
    const FaultLibrary& library = libraryOf("mole-light");
    const std::size_t decade = faultOf(library, FaultKind::decadeDown, "C1");
    const double rate = 1.1 / library.cases[decade].behaviour.period_s;
    const Diagnosis diagnosis = diagnose(library, {.symptoms = {Symptom::tooFast}, .rate_Hz = rate});
    EXPECT_EQ(&suspectOf(diagnosis, decade), &diagnosis.suspects.front());
}

TEST(Symptoms, AreTheSameForAnyNumberOfThreads) {
    const circuit::Circuit circuit = sampleCircuit("winch-warning");
    const FaultLibrary one = faultLibrary(circuit, PartSet::A, {.threads = 1}).value();
    const FaultLibrary three = faultLibrary(circuit, PartSet::A, {.threads = 3}).value();
    for (std::size_t k = 0; k < one.cases.size(); ++k)
        EXPECT_EQ(one.cases[k].behaviour.readings, three.cases[k].behaviour.readings);
}

TEST(Symptoms, CountProgressAndStopWhenCancelled) {
    const circuit::Circuit circuit = sampleCircuit("winch-warning");
    std::atomic<long> done = 0, total = 0;
    const FaultLibrary library = faultLibrary(circuit, PartSet::A, {.done = &done, .total = &total}).value();
    EXPECT_EQ(done, static_cast<long>(library.faults.size()));
    EXPECT_EQ(total, done);
    const std::atomic<bool> cancel = true;
    const FaultLibrary none = faultLibrary(circuit, PartSet::A, {.cancel = &cancel}).value();
    EXPECT_TRUE(none.cancelled);
    EXPECT_TRUE(diagnose(none, {}).suspects.empty());
}

TEST(Symptoms, AnEmptyCircuitHasOnlyTheFaultThatItHasNone) {
    const FaultLibrary library = faultLibrary({}, PartSet::A, {}).value();
    EXPECT_EQ(library.faults.size(), 1u);
    EXPECT_TRUE(library.places.empty());
}

} // namespace
} // namespace blinkwright::study
