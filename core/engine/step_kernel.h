// What the march asks of a step of the exponential method; kernel.h is the step itself.
//
//   auto kernel = makeKernel<double, PlainBuild>(fold, basis);
//   kernel->begin(fold, y, guess, close);
//   const double error = kernel->attempt(h);     // [V]
//   kernel->endAt(0.7 * h);
//   kernel->accept(true);
// V is double, or Lanes for a board a lane.
#pragma once

#include "core/engine/eigenbasis.h"
#include "core/engine/folded.h"

#include <array>
#include <memory>

namespace blinkwright::engine {

inline constexpr int mostBent = 24;    ///< bent ports of such a board
inline constexpr int mostDrifting = 8; ///< drifting ports of such a board

/// What a step is at: capacitor voltages and the kept ports' voltages, currents and slopes. A drifting port's
/// slope counts as 0.
template <class V>
struct StepPoint {
    std::array<V, mostStates> y;
    std::array<V, mostBent + mostDrifting> u, i, slope;
};

/// A charge during a step and its error estimate [C].
template <class V>
struct ChargeOf {
    V value, error;
};

/// A watched row as a function of the time within the last attempt.
template <class V>
struct RowModel {
    V start;
    std::array<V, mostStates> byMode;
    std::array<V, mostBent + mostDrifting> byRemainder;
};

template <class V>
class StepKernel {
  public:
    using Mask = MaskOf<V>;
    virtual ~StepKernel() = default;

    /// Begins at capacitor voltages y with a guess of the kept ports' voltages: solves the port equations.
    /// @param close Newton's steps below this end the iteration [V]. @return lanes where it found a solution.
    virtual Mask begin(const Folded<V>& folded, const V* y, const V* guess, double close) = 0;
    /// A step of length h [s] from the base, whose end is not valid before endAt(). @return the largest error
    /// estimate of a capacitor voltage [V], infinite where a stage had no solution.
    virtual V attempt(V h) = 0;
    /// Error of a capacitor voltage by a drifting port, given by its place among the kept ones, at the
    /// present end of the last attempt [V]. It falls no faster than the step, so that it is not part of what
    /// attempt() gives.
    virtual V driftError(int kept) const = 0;
    /// Error of a capacitor voltage if the last attempt is ended at time t [s] instead [V].
    virtual V endError(V t) const = 0;
    /// Ends the last attempt at time t [s] instead. @return lanes where the port equations were solved.
    virtual Mask endAt(V t) = 0;
    /// The end becomes the base where `moved` says so. @return lanes where the next step can be prepared.
    virtual Mask accept(Mask moved) = 0;
    virtual RowModel<V> model(int row) const = 0;
    /// The same from the linear part alone, before an attempt.
    virtual V foresee(const RowModel<V>& model, V t, V& rate) const = 0;
    /// A row and its derivative by time, at time t [s] of the last attempt.
    virtual V value(const RowModel<V>& model, V t, V& rate) const = 0;
    /// Integral of a row from the base to time t [s] of the last attempt.
    virtual ChargeOf<V> charge(const RowModel<V>& model, V t) const = 0;
    /// Numbers of the dense output, for keeping (see DenseOutput).
    virtual void keep(double* numbers) const = 0;
    /// dy/dt at the base.
    virtual const V* rate() const = 0;

    StepPoint<V> base, end;
};

/// By which instructions a kernel is built: a name in its type, so that the linker keeps the builds apart.
struct PlainBuild;
struct FusedBuild;

/// A kernel of doubles by fused multiplications and additions, or nothing where the processor has none.
std::unique_ptr<StepKernel<double>> makeFusedKernel(const Folded<double>& fold, Eigenbasis<double>& basis);

} // namespace blinkwright::engine
