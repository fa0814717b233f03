#include "core/engine/fold_source.h"

namespace blinkwright::engine {

PortLaw<double> portLaw(const Reduced& r, int k, const StraightBand& band) {
    const Port& port = r.ports[static_cast<std::size_t>(k)];
    const auto index = static_cast<std::size_t>(port.index);
    PortLaw<double> law;
    law.kind = port.kind;
    law.low = port.low;
    law.reference = port.reference;
    law.scale = 1 - port.reference * port.series;
    const auto set = [&law](std::initializer_list<double> values) {
        std::copy(values.begin(), values.end(), law.p);
    };
    if (port.kind == PortKind::junction) {
        const auto& junction = r.board->junctions[index].law;
        set({junction.saturation, junction.nVt,
             junction.nVt *
                 std::log(std::max(band.current, 1e-12 * junction.saturation) / junction.saturation)});
        return law;
    }
    const auto& sheet = r.board->timers[index].sheet;
    switch (port.kind) {
    case PortKind::idle:
        set({sheet.idle_slope, sheet.idle_offset, port.low ? sheet.idle_low_extra : 0});
        break;
    case PortKind::threshold:
        set({sheet.threshold_current});
        break;
    case PortKind::trigger:
        set({sheet.trigger_current});
        break;
    case PortKind::resetInput:
        set({sheet.reset_current});
        break;
    case PortKind::discharge:
        if (port.low) {
            const auto pin = devices::DischargeLow<double>::of(sheet.discharge_resistance,
                                                               sheet.discharge_offset, sheet.discharge_limit);
            set({pin.resistance, pin.offset, pin.limit, pin.foot});
        } else
            set({sheet.discharge_leakage});
        break;
    case PortKind::outputHighBipolar:
        set({r.highCurves[index].saturation, r.highCurves[index].resistance, r.highCurves[index].cubic});
        break;
    case PortKind::outputLowBipolar:
        set({sheet.low_resistance, sheet.low_limit, sheet.low_knee, sheet.low_knee_resistance});
        break;
    default:
        set({port.parameter[0], port.parameter[1]});
        break;
    }
    return law;
}

std::vector<int> lampsOf(const Reduced& r) {
    std::vector<int> lamps;
    for (std::size_t k = 0; k < r.lampPort.size(); ++k)
        if (r.lampPort[k] >= 0 && r.board->junctions[k].lamp) lamps.push_back(static_cast<int>(k));
    return lamps;
}

FoldSource<double> foldSource(const Reduced& r, const StraightBand& band) {
    FoldSource<double> source;
    source.n = r.n;
    source.m = r.m;
    for (int k = 0; k < r.m; ++k) source.laws.push_back(portLaw(r, k, band));
    source.a = r.a;
    source.A = r.A;
    source.Z = r.Z;
    source.b = r.b;
    source.B = r.B;
    source.D = r.D;
    source.c0 = r.c0;
    source.Cy = r.Cy;
    source.Ci = r.Ci;
    for (const int lamp : lampsOf(r)) {
        const int port = r.lampPort[static_cast<std::size_t>(lamp)];
        const Port& p = r.ports[static_cast<std::size_t>(port)];
        // (i + g u) / (1 - g R_S) with u = a + A y - Z i
        const double over = 1 / (1 - p.reference * p.series), weight = p.reference * over;
        source.c0.push_back(weight * r.a[static_cast<std::size_t>(port)]);
        for (int j = 0; j < r.n; ++j)
            source.Cy.push_back(weight * r.A[static_cast<std::size_t>(port * r.n + j)]);
        for (int j = 0; j < r.m; ++j)
            source.Ci.push_back(weight * r.Z[static_cast<std::size_t>(port * r.m + j)] -
                                (j == port ? over : 0));
    }
    source.rows = static_cast<int>(source.c0.size());
    for (const auto& part : r.board->capacitors) source.rootC.push_back(std::sqrt(part.capacitance));
    return source;
}

} // namespace blinkwright::engine
