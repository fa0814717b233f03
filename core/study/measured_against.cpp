#include "core/study/measured_against.h"

#include "core/devices/board.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::Measured;

namespace {

/// Mean of the output over the times in which it is above the middle of its range, or below.
std::optional<double> meanLevel(const engine::Curves& curves, bool high) {
    const std::vector<double>&time = curves.time_s, &output = curves.output_V;
    if (output.size() < 2) return {};
    const auto [least, most] = std::ranges::minmax_element(output);
    const double middle = (*least + *most) / 2;
    double area = 0, length = 0;
    for (std::size_t k = 1; k < output.size(); ++k) {
        if ((output[k] > middle) != high || (output[k - 1] > middle) != high) continue;
        const double step = time[k] - time[k - 1];
        area += step * (output[k] + output[k - 1]) / 2;
        length += step;
    }
    return length > 0 ? std::optional(area / length) : std::nullopt;
}

/// What the simulation says; each figure worked out only when asked for.
class Prediction {
  public:
    explicit Prediction(const Study* study) : m_study(study) {
        if (study && study->readings.verdict == Verdict::blinks && !study->readings.timers.empty())
            m_timer = &study->readings.timers.front();
    }

    std::optional<double> period() const { return of(&Phase::period_s); }
    std::optional<double> rate() const { return of(&Phase::rate_Hz); }
    std::optional<double> duty() const { return of(&Phase::duty); }
    std::optional<double> high() const {
        return settled() ? std::optional(m_timer->settled->high_s) : std::nullopt;
    }
    std::optional<double> low() const {
        return settled() ? std::optional(m_timer->settled->low_s) : std::nullopt;
    }
    std::optional<double> firstHigh() const { return m_timer ? m_timer->firstHigh_s : std::nullopt; }
    std::optional<double> level(bool high) const {
        return m_timer ? outputLevel(*m_study, high) : std::nullopt;
    }
    std::optional<double> supply() const { return m_timer ? terminalVoltage(*m_study) : std::nullopt; }
    std::optional<double> lamp(circuit::PartId part) const {
        if (!m_timer) return {};
        for (const LampReading& lamp : m_study->readings.lamps)
            if (lamp.id == part) return litCurrent(lamp);
        return {};
    }

  private:
    bool settled() const { return m_timer && m_timer->settled; }
    std::optional<double> of(double (Phase::*figure)() const) const {
        return settled() ? std::optional((*m_timer->settled.*figure)()) : std::nullopt;
    }

    const Study* m_study;
    const TimerReading* m_timer = nullptr; ///< the first, where it blinks
};

} // namespace

std::optional<double> outputLevel(const Study& study, bool high) {
    return study.readings.verdict == Verdict::blinks ? meanLevel(study.curves, high) : std::nullopt;
}

std::optional<double> terminalVoltage(const Study& study) {
    if (study.board.supplies.empty() || !study.readings.supply || !study.readings.supply->mean_A) return {};
    const devices::Supply& supply = study.board.supplies.front();
    return supply.voltage - supply.resistance * *study.readings.supply->mean_A;
}

std::optional<double> litCurrent(const LampReading& lamp) {
    if (!lamp.charge_C || !lamp.litTime_s || !(*lamp.litTime_s > 0)) return {};
    return *lamp.charge_C / *lamp.litTime_s;
}

std::optional<double> MeasuredAgainst::difference() const {
    return predicted ? std::optional(measured.value - *predicted) : std::nullopt;
}

std::optional<double> MeasuredAgainst::multiples() const {
    if (!predicted || !(measured.uncertainty > 0)) return {};
    return *difference() / measured.uncertainty;
}

std::vector<MeasuredAgainst> measuredAgainst(const circuit::Circuit& circuit, circuit::PartSet set,
                                             const MeasuredReadings& m, const Study* study) {
    using Figure = MeasuredFigure;
    const Prediction p(study);
    std::vector<MeasuredAgainst> all;
    const auto add = [&](Figure figure, const std::optional<Measured>& value, auto predicted) {
        if (value) all.push_back({.figure = figure, .measured = *value, .predicted = predicted()});
    };
    const auto minute = [](const std::optional<double>& rate) {
        return rate ? std::optional(60 * *rate) : std::nullopt;
    };
    add(Figure::rate, m.rate_Hz, [&] { return p.rate(); });
    if (m.rate_Hz)
        add(Figure::perMinute, Measured{60 * m.rate_Hz->value, 60 * m.rate_Hz->uncertainty},
            [&] { return minute(p.rate()); });
    add(Figure::period, m.period_s, [&] { return p.period(); });
    add(Figure::high, m.high_s, [&] { return p.high(); });
    add(Figure::low, m.low_s, [&] { return p.low(); });
    add(Figure::duty, m.duty, [&] { return p.duty(); });
    add(Figure::firstHigh, m.firstHigh_s, [&] { return p.firstHigh(); });
    add(Figure::outputHigh, m.outputHigh_V, [&] { return p.level(true); });
    add(Figure::outputLow, m.outputLow_V, [&] { return p.level(false); });
    add(Figure::supplyVoltage, m.supply_V, [&] { return p.supply(); });
    for (const MeasuredLamp& lamp : m.lamps)
        all.push_back({.figure = Figure::lampCurrent,
                       .part = lamp.part,
                       .measured = lamp.current_A,
                       .predicted = p.lamp(lamp.part)});
    for (const MeasuredPart& part : m.parts) {
        MeasuredAgainst one{
            .figure = Figure::partValue, .part = part.part, .key = part.key, .measured = part.value};
        if (const auto value = devices::effectiveValue(circuit, set, part.part, part.key))
            if (const double* number = std::get_if<double>(&*value)) one.predicted = *number;
        all.push_back(std::move(one));
    }
    return all;
}

} // namespace blinkwright::study
