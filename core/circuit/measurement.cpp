#include "core/circuit/measurement.h"

#include "core/base/wording.h"
#include "core/circuit/circuit.h"
#include "core/circuit/refusals.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::circuit {

namespace {

constexpr int mostFlashes = 1'000'000;

struct QuantityInfo {
    MeterQuantity quantity;
    std::string_view name;
    std::optional<PartKind> of; ///< nothing: any part
};
constexpr QuantityInfo quantities[] = {
    {MeterQuantity::supplyVoltage, "supply voltage", PartKind::supply},
    {MeterQuantity::outputHigh, "output high", PartKind::timer},
    {MeterQuantity::outputLow, "output low", PartKind::timer},
    {MeterQuantity::lampCurrent, "lamp current", PartKind::lamp},
    {MeterQuantity::partValue, "part value", std::nullopt},
};
static_assert(std::size(quantities) == allMeterQuantities.size());

constexpr std::pair<TraceOf, std::string_view> traces[] = {
    {TraceOf::output, "output"}, {TraceOf::capacitor, "capacitor"}, {TraceOf::other, "other"}};
static_assert(std::size(traces) == allTracesOf.size());

Result<void> mustBeFinite(const std::string& place, double value) {
    if (!std::isfinite(value)) return Fault{place, wording::inWords("must be a finite number")};
    return {};
}
Result<void> mustNotBeNegative(const std::string& place, double value) {
    if (!std::isfinite(value) || value < 0)
        return Fault{place, wording::inWords("must be a number of at least 0")};
    return {};
}
Result<void> mustBePositive(const std::string& place, double value) {
    if (!std::isfinite(value) || value <= 0)
        return Fault{place, wording::inWords("must be a number greater than 0")};
    return {};
}

template <class Numbers>
Result<void> ascending(const std::string& place, const Numbers& times) {
    for (std::size_t i = 0; i < times.size(); ++i)
        if (!std::isfinite(times[i]) || (i > 0 && times[i] < times[i - 1]))
            return Fault{place + "[" + std::to_string(i) + "]",
                         wording::inWords("must be a number not below the one before")};
    return {};
}

Result<void> canRecord(const Record& r) {
    if (auto ok = mustBePositive("step", r.step_s); !ok) return ok;
    if (auto ok = mustNotBeNegative("time_uncertainty", r.timeUncertainty); !ok) return ok;
    if (r.time_s.size() > maxRecordSamples)
        return Fault{"time", wording::inWords("more than %1 samples are not supported", maxRecordSamples)};
    if (r.switchings_s.size() > maxRecordSwitchings)
        return Fault{"switchings",
                     wording::inWords("more than %1 switchings are not supported", maxRecordSwitchings)};
    if (auto ok = ascending("time", r.time_s); !ok) return ok;
    if (auto ok = ascending("switchings", r.switchings_s); !ok) return ok;
    if (r.traces.empty() || r.traces.size() > 2)
        return Fault{"traces", wording::inWords("must hold one or two traces")};
    for (std::size_t k = 0; k < r.traces.size(); ++k) {
        const std::string place = "traces[" + std::to_string(k) + "].values";
        if (r.traces[k].values_V.size() != r.time_s.size())
            return Fault{place, wording::inWords("must hold one value for each of the times")};
        for (std::size_t i = 0; i < r.time_s.size(); ++i)
            if (auto ok = mustBeFinite(place + "[" + std::to_string(i) + "]", r.traces[k].values_V[i]); !ok)
                return ok;
    }
    if (r.levels) {
        if (auto ok = mustBeFinite("levels.high", r.levels->high_V); !ok) return ok;
        if (auto ok = mustBeFinite("levels.low", r.levels->low_V); !ok) return ok;
    }
    return {};
}

Result<void> canRead(const Circuit& circuit, const MeterReading& m) {
    const Part* part = circuit.find(m.part);
    if (!part) return Fault{"of", noSuchPart().text};
    const QuantityInfo& quantity = *std::ranges::find(quantities, m.quantity, &QuantityInfo::quantity);
    if (quantity.of && part->kind != *quantity.of)
        return Fault{"of", wording::inWords("must be a %1, got %2",
                                            wording::inWords(info(*quantity.of).label), part->ref)};
    if (m.quantity == MeterQuantity::partValue) {
        const KeyInfo* key = findKey(info(part->kind), m.key);
        if (!key || key->shape != Shape::number)
            return Fault{"of", wording::inWords("%1 has no such number: %2", part->ref, m.key)};
        if (auto fault = rangeFault(key->range, m.value.value)) return Fault{"value", *fault};
    }
    if (auto ok = mustBeFinite("value", m.value.value); !ok) return ok;
    return mustNotBeNegative("uncertainty", m.value.uncertainty);
}

} // namespace

std::string_view name(MeterQuantity quantity) {
    return std::ranges::find(quantities, quantity, &QuantityInfo::quantity)->name;
}
std::optional<MeterQuantity> meterQuantityNamed(std::string_view name) {
    const auto* found = std::ranges::find(quantities, name, &QuantityInfo::name);
    return found == std::end(quantities) ? std::nullopt : std::optional(found->quantity);
}
std::string_view name(TraceOf of) {
    return std::ranges::find(traces, of, &std::pair<TraceOf, std::string_view>::first)->second;
}
std::optional<TraceOf> traceOfNamed(std::string_view name) {
    const auto* found = std::ranges::find(traces, name, &std::pair<TraceOf, std::string_view>::second);
    return found == std::end(traces) ? std::nullopt : std::optional(found->first);
}

Result<void> Circuit::canMeasure(const Measurement& measurement) const {
    if (const auto* count = std::get_if<Count>(&measurement.what)) {
        if (count->flashes < 1 || count->flashes > mostFlashes)
            return Fault{"flashes", wording::inWords("must be 1 to %1, got %2", mostFlashes, count->flashes)};
        if (auto ok = mustBePositive("time.value", count->time_s.value); !ok) return ok;
        return mustNotBeNegative("time.uncertainty", count->time_s.uncertainty);
    }
    if (const auto* reading = std::get_if<MeterReading>(&measurement.what)) return canRead(*this, *reading);
    if (const auto* record = std::get_if<Record>(&measurement.what)) return canRecord(*record);
    return {};
}

} // namespace blinkwright::circuit
