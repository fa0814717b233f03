// The lanes in the instructions that every processor of the kind has: 2 boards at once.
#include "core/engine/lane_plan.h"

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

#include "core/engine/lane_run.h"

namespace blinkwright::engine {

std::unique_ptr<LaneGroup> makePortableLanes(const LanePlan& plan) {
    return std::make_unique<LaneRun<Lanes<2>>>(plan);
}

} // namespace blinkwright::engine
