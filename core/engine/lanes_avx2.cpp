// The lanes in AVX2 and FMA: 4 boards at once.
//
// Headers that hold more than templates on the lane type come first, so that what they may leave behind for
// other sources to be linked to is code for any processor. The rest is compiled after the pragma.
#include "core/engine/lane_plan.h"

#if defined(__x86_64__)
#include "core/devices/sheets.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <initializer_list>
#include <limits>
#include <memory>
#include <new>
#include <type_traits>
#include <utility>
#include <vector>

#pragma GCC target("avx2,fma")

#include "core/engine/lane_run.h"

namespace blinkwright::engine {

std::unique_ptr<LaneGroup> makeAvx2Lanes(const LanePlan& plan) {
    return std::make_unique<LaneRun<Lanes<4>>>(plan);
}

} // namespace blinkwright::engine
#else
namespace blinkwright::engine {
std::unique_ptr<LaneGroup> makeAvx2Lanes(const LanePlan&) {
    return nullptr;
}
} // namespace blinkwright::engine
#endif
