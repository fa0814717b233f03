// A circuit: parts, the nets that join their pins, two sets of values, and where the parts are drawn.
//
//   Circuit c;
//   PartId r1 = c.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}).value();
//   NetId n = c.addNet("supply").value();
//   c.join({r1, 0}, n);
//   c.netOf({r1, 0});     // n
// Everything after building goes through apply(Circuit&, Edit) (edit.h), which returns the way back.
#pragma once

#include "core/base/result.h"
#include "core/circuit/circuit_ids.h"
#include "core/circuit/kinds.h"
#include "core/circuit/measurement.h"

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace blinkwright::circuit {

/// One pin of one part; `pin` counts from 0 in the order of KindInfo::pins.
struct PinRef {
    PartId part;
    int pin = 0;
    auto operator<=>(const PinRef&) const = default;
};

struct Null {
    bool operator==(const Null&) const = default;
};
using Interval = std::array<double, 2>;
using Intervals = std::vector<Interval>;
using Overrides = std::map<std::string, double, std::less<>>;
/// One value of a part, in the alternative that its KeyInfo::shape says.
using Value = std::variant<Null, double, bool, std::string, Interval, Intervals, Overrides>;
using Values = std::map<std::string, Value, std::less<>>;

struct Part {
    PartId id;
    PartKind kind = PartKind::resistor;
    std::string ref;
    Values values; ///< only what is stated; the rest takes its default (core/devices)
    Extras extras;
    bool operator==(const Part&) const = default;
};

struct Net {
    NetId id;
    std::string name;
    std::vector<PinRef> pins;
    Extras extras;
    bool operator==(const Net&) const = default;
};

/// Where a part stands on the drawing: grid units, turn in degrees clockwise (0, 90, 180, 270).
struct Placement {
    double x = 0;
    double y = 0;
    int turn = 0;
    bool mirror = false;
    Extras extras;
    bool operator==(const Placement&) const = default;
};

enum class PartSet { A, B };
enum class Begin { powerOn, settled };

struct RunSettings {
    int flashes = 6; ///< 1 to 10,000
    Begin begin = Begin::powerOn;
    Extras extras;
    bool operator==(const RunSettings&) const = default;
};

/// One value of one part: `R1.resistance`.
struct ValueRef {
    PartId part;
    std::string key;
    bool operator==(const ValueRef&) const = default;
};

/// Limits of what a circuit may hold; a file beyond them is refused.
inline constexpr std::size_t maxParts = 2000;
inline constexpr std::size_t maxPins = 10000;
inline constexpr Range flashesRange{1, 10000};

class Circuit {
  public:
    // --- reading
    const std::vector<Part>& parts() const { return m_parts; }
    const std::vector<Net>& nets() const { return m_nets; }
    const Part* find(PartId id) const;
    const Net* find(NetId id) const;
    const Part* findRef(std::string_view ref) const;
    const Net* findNet(std::string_view name) const;
    std::optional<NetId> netOf(PinRef pin) const;
    /// `R1:1`, `BT1:plus`.
    std::string pinText(PinRef pin) const;
    /// Reads `REF:PIN`.
    Result<PinRef> pinNamed(std::string_view text) const;
    /// The value stated for a part in a set: its override there, else the part's own, else nothing.
    /// Overrides of `device` merge parameter by parameter; the key may be `device.NAME` for one of them.
    std::optional<Value> value(PartSet set, PartId part, std::string_view key) const;
    /// What a set overrides, or an empty map.
    const Values& overrides(PartSet set, PartId part) const;
    /// Unknown keys among a set's overrides of a part, or an empty list.
    const Extras& overrideExtras(PartSet set, PartId part) const;
    const Placement* placement(PartId part) const;
    /// First free designator of a kind: `R3`.
    std::string freeRef(PartKind kind) const;
    /// The ids that the next new part or net will get: for edits that add one and go on with it.
    PartId nextPartId() const { return {m_nextId}; }
    NetId nextNetId() const { return {m_nextId}; }

    // --- legality; the model says what is legal
    Result<void> canName(std::string_view ref, std::optional<PartId> except = {}) const;
    Result<void> canJoin(PinRef pin, NetId net) const;
    /// A free and well-formed net name.
    Result<void> canNameNet(std::string_view name, std::optional<NetId> except = {}) const;
    /// Ties hold values of one unit, reels hold parts; nothing stands in two of them. The fault's place is
    /// `ties[0][1]` or `reels[0][1]`.
    Result<void> canTie(const std::vector<std::vector<ValueRef>>& wanted) const;
    Result<void> canReel(const std::vector<std::vector<PartId>>& wanted) const;
    /// Numbers in their ranges, samples in order, parts of the right kind. The fault's place is a key of the
    /// measurement in a file: `time.value`.
    Result<void> canMeasure(const Measurement& measurement) const;
    /// Checks one value against its KeyInfo: shape, range, finiteness. The key may be `device.NAME`; the
    /// fault's place is the key, more exactly where it can be (`presses[1]`, `device.delay`).
    static Result<void> canSet(PartKind kind, std::string_view key, const Value& value);

    // --- building (files, ready blinkers, tests)
    Result<PartId> addPart(PartKind kind, std::string ref, Values values = {}, Extras extras = {});
    Result<NetId> addNet(std::string name, Extras extras = {});
    Result<void> join(PinRef pin, NetId net);
    Result<void> setOverride(PartSet set, PartId part, std::string key, Value value);
    void setOverrideExtras(PartSet set, PartId part, Extras unknown);
    void place(PartId part, Placement placement);

    std::string title;
    std::string notes;
    RunSettings run;
    std::vector<std::vector<ValueRef>> ties;
    std::vector<std::vector<PartId>> reels;
    Measurements measurements; ///< never null
    Extras extras;
    Extras partSetExtras; ///< unknown keys under `part_sets`

    /// Same content; ids, which are the program's own, are compared through designators and net names.
    bool sameAs(const Circuit& other) const;

  private:
    Result<void> checkNewPart(const Part& part) const;
    friend class Editor; // edit.cpp: the one place that changes a circuit after it is built
    std::vector<Part> m_parts;
    std::vector<Net> m_nets;
    std::array<std::map<PartId, Values>, 2> m_overrides;
    std::array<std::map<PartId, Extras>, 2> m_overrideExtras;
    std::map<PartId, Placement> m_drawing;
    std::uint32_t m_nextId = 1;
};

} // namespace blinkwright::circuit
