// Long use leaves nothing behind. The whole hour is a figure of tests/benchmarks.
#include "tests/app/minutes_of_use.h"
#include "tests/app/window_fixture.h"

namespace blinkwright::test {

namespace {

class LongUse : public WindowFixture {};

TEST_F(LongUse, AFewMinutesMoreTakeNoMoreMemory) {
    constexpr double most_MiB = 1.5; // the hour may take 5; what one minute keeps would show by now
    useForMinutes(*window, folder.path(), BLINKWRIGHT_SAMPLES, 4);
    const std::size_t before = heapInUse_bytes();
    useForMinutes(*window, folder.path(), BLINKWRIGHT_SAMPLES, 8);
    const std::size_t after = heapInUse_bytes();
    const double grown_MiB = (static_cast<double>(after) - static_cast<double>(before)) / (1 << 20);
    EXPECT_LT(grown_MiB, most_MiB);
}

} // namespace

} // namespace blinkwright::test
