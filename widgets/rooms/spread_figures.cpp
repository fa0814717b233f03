#include "widgets/rooms/spread_figures.h"

#include "widgets/text/words.h"

#include <algorithm>

namespace blinkwright::widgets {

QString SpreadFigureView::text(double value) const {
    switch (kind) {
    case Kind::rate:
        return rateText(value);
    case Kind::period:
        return secondsText(value);
    case Kind::duty:
    case Kind::lampLit:
        return shareText(value);
    case Kind::lampMean:
        break;
    }
    return quantityText(value, unit);
}

double SpreadFigureView::sensitivity(const study::SpreadSensitivity& part) const {
    switch (kind) {
    case Kind::rate:
        return -part.period;
    case Kind::period:
        return part.period;
    case Kind::duty:
        return part.duty;
    case Kind::lampLit:
        return lamp < part.lits.size() ? part.lits[lamp] : 0;
    case Kind::lampMean:
        break;
    }
    return lamp < part.lamps.size() ? part.lamps[lamp] : 0;
}

long SpreadFigureView::boardsBeyond() const {
    // Rates are turned over from cycle times: the last digit may differ.
    const double slack = 1e-12;
    return std::ranges::count_if(values, [&](double v) {
        return v < statistics.worstLow * (1 - slack) || v > statistics.worstHigh * (1 + slack);
    });
}

std::vector<SpreadFigureView> spreadFigures(const study::SpreadOutcome& outcome) {
    using Kind = SpreadFigureView::Kind;
    using units::Unit;
    std::vector<SpreadFigureView> list;
    if (!outcome.rate_Hz || !outcome.period_s || !outcome.duty) return list;
    std::vector<double> rates = outcome.periods_s;
    for (double& rate : rates) rate = 1 / rate;
    list.push_back({Kind::rate, 0, Words::tr("Flash rate"), Unit::hertz, *outcome.rate_Hz, std::move(rates)});
    list.push_back(
        {Kind::period, 0, Words::tr("Cycle time"), Unit::second, *outcome.period_s, outcome.periods_s});
    list.push_back({Kind::duty, 0, Words::tr("Duty cycle"), Unit::none, *outcome.duty, outcome.duties});
    for (std::size_t l = 0; l < outcome.lamps.size(); ++l) {
        const study::SpreadLamp& lamp = outcome.lamps[l];
        const QString ref = QString::fromStdString(lamp.ref);
        if (!lamp.lits.empty())
            list.push_back(
                {Kind::lampLit, l, Words::tr("%1 lit share").arg(ref), Unit::none, lamp.lit, lamp.lits});
        list.push_back({Kind::lampMean, l, Words::tr("%1 mean current").arg(ref), Unit::ampere, lamp.mean_A,
                        lamp.values_A});
    }
    return list;
}

} // namespace blinkwright::widgets
