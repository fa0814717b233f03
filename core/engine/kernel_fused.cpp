// The step of doubles once more, for processors that multiply and add in one. What kernel.h takes from other
// headers comes before the #pragma, so that these instructions are in nothing that the linker could give to
// the rest of the program.
#include "core/engine/drift_path.h"
#include "core/engine/step_kernel.h"

#include <limits>

#if defined(__x86_64__) && defined(__OPTIMIZE__)

#pragma GCC target("avx2,fma")
#include "core/engine/kernel.h"

namespace blinkwright::engine {

std::unique_ptr<StepKernel<double>> makeFusedKernel(const Folded<double>& fold, Eigenbasis<double>& basis) {
    static const bool can = __builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma");
    return can ? makeKernel<double, FusedBuild>(fold, basis) : nullptr;
}

} // namespace blinkwright::engine

#else

namespace blinkwright::engine {

std::unique_ptr<StepKernel<double>> makeFusedKernel(const Folded<double>&, Eigenbasis<double>&) {
    return nullptr;
}

} // namespace blinkwright::engine

#endif
