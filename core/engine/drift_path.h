// The way of a drifting port's voltage through one step, and what its current does meanwhile. The current of
// such a port (a comparator's input) turns on or off within a band of a few hundred millivolts. Its mean and
// moments over the step come from a quadrature along the way within that band.
//
//     StepModes<V, N> modes;
//     modes.prepare(n, h, lambda, phi);              // of this step
//     DriftPath<V, N> path;
//     path.lay(modes, uAtBase, PX, drive, known);
//     const auto drifted = path.integrate(modes, fullCurrent, currentAtBase);
// V is double or Lanes; N the most modes.
#pragma once

#include "core/devices/laws.h"
#include "core/engine/phi.h"

namespace blinkwright::engine {

inline constexpr double driftWidth = 2 * devices::thermalVoltage; ///< of a comparator input's law [V]
/// Beyond it a drifting port's law counts as off or fully on [V].
inline constexpr double driftBand = 7 * driftWidth;

template <class V>
BLINKWRIGHT_INLINE MaskOf<V> beyondDriftBand(V u) {
    return lane::magnitude(u) > V(driftBand);
}

/// A polynomial of fifth degree on 0 to 1.
template <class V>
struct Quintic {
    V coefficient[6];
    /// From its value at 0, what it gains by 1, and two derivatives at each end.
    BLINKWRIGHT_INLINE void lay(V start, V gain, V v0, V v1, V a0, V a1) {
        const V p = gain - v0 - 0.5 * a0, v = v1 - v0 - a0, a = a1 - a0;
        coefficient[0] = start;
        coefficient[1] = v0;
        coefficient[2] = 0.5 * a0;
        coefficient[3] = 10 * p - 4 * v + 0.5 * a;
        coefficient[4] = -15 * p + 7 * v - a;
        coefficient[5] = 6 * p - 3 * v + 0.5 * a;
    }
    BLINKWRIGHT_INLINE V at(V share) const {
        V x = coefficient[5];
        for (int k = 4; k >= 0; --k) x = x * share + coefficient[k];
        return x;
    }
};

/// The modes of a step, by share of the step: slow ones as polynomials, the faster ones as they are.
template <class V, int N>
struct StepModes {
    V h{};
    Quintic<V> weight[N];
    const V* lambda = nullptr;
    const Phi<V>* phi = nullptr; ///< of lambda h
    int n = 0;
    bool fast[N];

    BLINKWRIGHT_INLINE void prepare(int count, V length, const V* rates, const Phi<V>* functions) {
        n = count;
        h = length;
        lambda = rates;
        phi = functions;
        for (int k = 0; k < n; ++k) {
            const V z = h * lambda[k], w0 = phi[k][0];
            fast[k] = any(lane::magnitude(z) > V(1.2));
            if (!fast[k]) weight[k].lay(w0, 1 - w0, -z * w0, -z, z * z * w0, z * z);
        }
    }
    /// e^(z (1 - share)): by how much a current at that share counts at the end.
    BLINKWRIGHT_INLINE V weightAt(int k, V share) const {
        if (fast[k]) return lane::exponential((1 - share) * h * lambda[k]);
        return weight[k].at(share);
    }
};

/// What a drifting current is over the step, less what it is at the base.
template <class V, int N>
struct Drifted {
    V moment0{}, moment1{}; ///< by share of the step [A]
    V weighted[N];          ///< mean as each mode weighs it [A]
    V atEnd{};              ///< [A]
};

template <class V, int N>
struct DriftPath {
    V end;         ///< where the voltage ends [V]
    V endSpeed;    ///< its derivative by share there, the size [V]
    V effect;      ///< what a current does over the step to a capacitor voltage [V/A]; set by the owner
    V sensitivity; ///< of the mean current to where the path ends [A/V]
    V rough;       ///< error of the integration [A]

    BLINKWRIGHT_INLINE V at(const StepModes<V, N>& modes, V share) const {
        V x = m_slow.at(share);
        for (int k = 0; k < modes.n; ++k)
            if (modes.fast[k]) x += m_fast[k] * (lane::exponential(share * modes.h * modes.lambda[k]) - 1);
        return x;
    }

    /// @param from voltage at the base [V]. @param row what each mode does to it. @param drive what moves the
    /// modes along the way. @param known what moves them by the end beyond what `drive` does.
    BLINKWRIGHT_INLINE void lay(const StepModes<V, N>& modes, V from, const V* row, const V* drive,
                                const V* known) {
        V gain(0), v0(0), v1(0), a0(0), a1(0);
        m_from = from;
        end = from;
        for (int k = 0; k < modes.n; ++k) {
            const V z = modes.h * modes.lambda[k], phi = modes.phi[k][1];
            const V speed = row[k] * drive[k] * modes.h, whole = speed * phi + row[k] * known[k];
            end += whole;
            if (modes.fast[k]) {
                const auto moves = lane::magnitude(z) > V(1e-9);
                m_fast[k] = select(moves, speed / select(moves, z, V(1)), V(0));
                continue;
            }
            const V decayed = 1 + z * phi;
            gain += whole;
            v0 += speed;
            v1 += speed * decayed;
            a0 += speed * z;
            a1 += speed * z * decayed;
        }
        m_slow.lay(from, gain, v0, v1, a0, a1);
        endSpeed = lane::magnitude(v1);
    }

    /// @param full what the law carries when it is on [A]. @param before its current at the base [A].
    BLINKWRIGHT_INLINE Drifted<V, N> integrate(const StepModes<V, N>& modes, V full, V before) {
        Drifted<V, N> out;
        for (int k = 0; k < modes.n; ++k) out.weighted[k] = V(0);
        sensitivity = rough = V(0);
        const auto outside = beyondDriftBand(m_from), beyond = beyondDriftBand(end);
        const auto aside = outside & beyond & (m_from * end > V(0));
        if (all(aside)) return out;

        // The part of the step in which the law is between off and on.
        V begin(0), finish(1);
        if (any(outside)) begin = select(outside, shareAt(modes, m_from), begin);
        if (any(beyond)) finish = select(beyond, shareAt(modes, end), finish);
        const V width = finish - begin;
        // Where the path ends elsewhere, the law is passed at another time.
        const V gained = lane::magnitude(at(modes, finish) - at(modes, begin)) / width;
        sensitivity = select(aside, V(0), full * finish / lane::larger(gained, V(4 * driftWidth)));
        // By the quadrature, and since a port's own current bends its path a little while it turns.
        const V bend = effect * full * width / driftWidth;
        rough = select(aside, V(0), full * width * (2e-4 + 0.005 * bend));

        const auto current = [&](V u) { return devices::conductingSide(full, u).current - before; };
        // Gauss and Legendre. Both halves of the band by themselves: the law's poles lie beside its middle.
        constexpr double places[] = {0.3399810435848563, 0.8611363115940526};
        constexpr double weights[] = {0.6521451548625461, 0.3478548451374538};
        const int parts = any(outside & beyond) ? 2 : 1;
        const V half = width * (0.5 / parts);
        for (int part = 0; part < parts; ++part)
            for (int k = 0; k < 4; ++k) {
                const double place = k % 2 ? places[k / 2] : -places[k / 2];
                const V share = begin + half * V(1 + 2 * part + place);
                const V amount = current(at(modes, share)) * half * V(weights[k / 2]);
                out.moment0 += amount;
                out.moment1 += amount * share;
                for (int i = 0; i < modes.n; ++i) out.weighted[i] += amount * modes.weightAt(i, share);
            }
        const V after = current(end), rest = 1 - finish;
        out.atEnd = select(aside, V(0), after);
        out.moment0 = select(aside, V(0), out.moment0 + after * rest);
        out.moment1 = select(aside, V(0), out.moment1 + after * rest * 0.5 * (1 + finish));
        for (int k = 0; k < modes.n; ++k)
            out.weighted[k] =
                select(aside, V(0), out.weighted[k] + after * rest * phi1(rest * modes.h * modes.lambda[k]));
        return out;
    }

  private:
    /// Where the path comes into the band from `outer` or leaves it towards there, a little on the outer
    /// side.
    BLINKWRIGHT_INLINE V shareAt(const StepModes<V, N>& modes, V outer) const {
        const V goal = select(outer > V(0), V(1.05 * driftBand), V(-1.05 * driftBand));
        const V gained = select(lane::magnitude(end - m_from) > V(1e-9), end - m_from, V(1e-9));
        const auto within = [](V share) { return lane::smaller(lane::larger(share, V(0)), V(1)); };
        V share = within((goal - m_from) / gained), slope = gained;
        V x = at(modes, share);
        for (int k = 0; k < 4; ++k) { // the chord's slope, made better from step to step
            if (all(lane::magnitude(goal - x) < V(0.05 * driftBand))) break;
            const V next = within(share + (goal - x) / slope);
            const V y = at(modes, next), step = next - share;
            const auto moved = lane::magnitude(step) > V(1e-6);
            const V steeper = (y - x) / select(moved, step, V(1));
            slope = select(moved & (steeper * gained > V(0)), steeper, slope);
            share = next;
            x = y;
        }
        return share;
    }

    V m_from;
    Quintic<V> m_slow;
    V m_fast[N]; ///< amplitudes of the faster modes
};

} // namespace blinkwright::engine
