// The law of one port with its parameters at hand: what the inner loop evaluates. V is double or Lanes.
//
//   PortLaw<double> law = portLaw(reduced, k);
//   law.evaluate(u, inner, i, slope);            // current, less what the lent conductance carries
//   law.regime(u, band)                          // 0: bends here; else the straight piece it is on
#pragma once

#include "core/devices/laws.h"
#include "core/engine/port_kind.h"

namespace blinkwright::engine {

template <class V>
struct PortLaw {
    PortKind kind{};
    bool low = false; ///< timer output low
    V reference{};    ///< lent conductance [S]
    V scale{};        ///< 1 - reference x series resistance, of a junction
    V p[4]{};         ///< parameters of the law, in the order of its struct in laws.h; of a junction its
                      ///< saturation, nVt and the voltage below which it counts as dark

    /// @param u port voltage [V]. @param inner warm start, updated. @param i, slope current and its
    /// derivative, less what the lent conductance carries [A, S].
    BLINKWRIGHT_INLINE void evaluate(V u, V& inner, V& i, V& slope) const {
        devices::LawOf<V> law;
        switch (kind) {
        case PortKind::junction:
            law = devices::junction(p[0], p[1], u);
            law.current *= scale;
            law.slope *= scale;
            break;
        case PortKind::idle:
            law = devices::idle(devices::Idle<V>{p[0], p[1], p[2]}, u);
            break;
        case PortKind::threshold:
        case PortKind::trigger:
            law = devices::conductingSide(p[0], u);
            break;
        case PortKind::resetInput:
            law = devices::leak(p[0], u);
            break;
        case PortKind::discharge:
            law = low ? devices::dischargeLow(devices::DischargeLow<V>{p[0], p[1], p[2], p[3]}, u)
                      : devices::leak(p[0], u);
            break;
        case PortKind::outputHighBipolar:
            law = devices::outputHighBipolar(devices::OutputHighCurveOf<V>{p[0], p[1], p[2]}, u, inner);
            break;
        case PortKind::outputLowBipolar:
            law = devices::outputLowBipolar(devices::OutputLow<V>{p[0], p[1], p[2], p[3]}, u);
            break;
        case PortKind::outputCmos:
            law = devices::outputCmos(p[0], p[1], u);
            break;
        }
        i = law.current - reference * u;
        slope = law.slope - reference;
    }

    /// The straight piece that every lane is on at u, or 0 where one bends. A junction has its dark side, a
    /// saturating law its two ends, the own current its rise.
    BLINKWRIGHT_INLINE int regime(V u, const StraightBand& band) const {
        switch (kind) {
        case PortKind::junction:
            return all(u < p[2]) ? 1 : 0;
        case PortKind::idle: {
            const double reach = band.widths * devices::detail::idleWidth;
            return all((u > p[1] + reach) & (u > V(1 + reach))) ? 1 : 0;
        }
        case PortKind::threshold:
        case PortKind::trigger: {
            const V reach(band.widths * 2 * devices::thermalVoltage);
            return all(u < -reach) ? 1 : all(u > reach) ? 2 : 0;
        }
        case PortKind::resetInput:
            return saturated(u, band);
        case PortKind::discharge:
            return low ? 0 : saturated(u, band);
        default:
            return 0;
        }
    }

    /// Lanes in which u is on the given straight piece.
    BLINKWRIGHT_INLINE MaskOf<V> on(int piece, V u, const StraightBand& band) const {
        switch (kind) {
        case PortKind::junction:
            return u < p[2];
        case PortKind::idle: {
            const double reach = band.widths * devices::detail::idleWidth;
            return (u > p[1] + reach) & (u > V(1 + reach));
        }
        default: {
            const bool pair = kind == PortKind::threshold || kind == PortKind::trigger;
            const V reach(pair ? band.widths * 2 * devices::thermalVoltage
                               : (0.5 * band.widths + 1) * devices::detail::leakWidth);
            return piece == 1 ? u < -reach : u > reach;
        }
        }
    }

    /// The straight piece: current + slope u, lent conductance taken off as in evaluate().
    BLINKWRIGHT_INLINE void straight(int piece, V& current, V& slope) const {
        current = V(0);
        slope = V(0);
        switch (kind) {
        case PortKind::junction:
            current = -p[0] * scale;
            slope = scale * devices::junctionShunt;
            break;
        case PortKind::idle:
            current = p[2] - p[1] * p[0];
            slope = p[0];
            break;
        case PortKind::threshold:
        case PortKind::trigger:
            if (piece == 2) current = p[0];
            break;
        default:
            current = piece == 1 ? -p[0] : p[0];
            break;
        }
        slope -= reference;
    }

    /// The width of a law that turns on like a junction, for cutting Newton's steps [V]; 0 for others.
    BLINKWRIGHT_INLINE V turnOnWidth() const {
        if (kind == PortKind::junction) return p[1];
        if (kind == PortKind::outputLowBipolar) return V(devices::detail::lowWidth);
        if (kind == PortKind::outputHighBipolar) return V(devices::OutputHighCurveOf<V>::nVt);
        return V(0);
    }

  private:
    BLINKWRIGHT_INLINE int saturated(V u, const StraightBand& band) const {
        const V reach((0.5 * band.widths + 1) * devices::detail::leakWidth);
        return all(u < -reach) ? 1 : all(u > reach) ? 2 : 0;
    }
};

} // namespace blinkwright::engine
