// Ready blinkers: whole circuits from a few answers, with parts that exist, placed on the drawing, ready to
// run.
//
//   ReadyAnswers answers = defaultAnswers(ReadyKind::lampToGround);
//   answers.perMinute = 40;
//   Result<circuit::Circuit> made = makeReady(answers);     // or one sentence that says which answer is
//   amiss
#pragma once

#include "core/base/result.h"
#include "core/circuit/circuit.h"
#include "core/devices/sheets.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::study {

enum class ReadyKind {
    lampToGround,
    lampToRail,
    takingTurns,
    lampToEachRail,
    shortFlash,
    equalHalves,
    controlledRate,
    gatedGroups
};

inline constexpr ReadyKind allReadyKinds[] = {
    ReadyKind::lampToGround, ReadyKind::lampToRail,  ReadyKind::takingTurns,    ReadyKind::lampToEachRail,
    ReadyKind::shortFlash,   ReadyKind::equalHalves, ReadyKind::controlledRate, ReadyKind::gatedGroups};

/// Numbers that an answer may be, both ends allowed; nothing asked where they are one.
struct Bounds {
    double low = 0, high = 0;
    bool asked() const { return low < high; }
};

struct ReadyInfo {
    ReadyKind kind;
    std::string_view id;       ///< for settings, e.g. `lamp-to-ground`
    std::string_view label;    ///< e.g. `One lamp to ground`
    std::string_view sentence; ///< what it does and why one would take it
    std::string_view title;    ///< of the circuit, a fitting of the model harbour
    bool secondLamp = false;   ///< asks for the colour of a second lamp
    bool sources = false;      ///< the lamp's current comes out of pin 3
    Bounds perMinute;
    Bounds lit;    ///< share of the cycle that the first lamp is lit
    Bounds groups; ///< groups of flashes a minute
};
const ReadyInfo& info(ReadyKind kind);
std::optional<ReadyKind> readyKindNamed(std::string_view id);

struct ReadyAnswers {
    ReadyKind kind = ReadyKind::lampToGround;
    devices::TimerFamily family = devices::TimerFamily::bipolar;
    double supply_V = 9;
    std::string colour = "red";
    std::string secondColour = "green"; ///< where info() asks for it
    double lampCurrent_A = 0.008;
    double perMinute = 60; ///< flashes a minute of each lamp; within a group where there are groups
    double lit = 0.55;     ///< share of the cycle, 0 to 1, where info() asks for it
    double groups = 8;     ///< groups a minute, where info() asks for it
};

ReadyAnswers defaultAnswers(ReadyKind kind);

/// Colours that a ready blinker may have: those that can be seen.
std::vector<std::string> readyColours();
Bounds supplyBounds(devices::TimerFamily family);
/// Currents that the lamps may be asked to have; less where a CMOS timer has to source them.
Bounds currentBounds(ReadyKind kind, devices::TimerFamily family);

/// The answer that is out of range, or that the others leave no room for; each in one sentence.
Result<void> checkAnswers(const ReadyAnswers& answers);

/// Builds the circuit. Its values are of E24 (resistors) and E6 (capacitors); they are corrected by studies
/// of the circuit itself, so that the simulated blinker, not the formula, meets the wish as nearly as the
/// series allow.
Result<circuit::Circuit> makeReady(const ReadyAnswers& answers);

} // namespace blinkwright::study
