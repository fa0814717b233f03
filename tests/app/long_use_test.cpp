// Long use leaves nothing behind. The whole hour is a figure of tests/benchmarks.
#include "tests/app/minutes_of_use.h"
#include "tests/app/window_fixture.h"

#include <QPixmapCache>

namespace blinkwright::test {

namespace {

class LongUse : public WindowFixture {};

double grownSince_KiB(std::size_t before, std::size_t now) {
    return (static_cast<double>(now) - static_cast<double>(before)) / 1024;
}

TEST_F(LongUse, AFewMinutesMoreTakeNoMoreMemory) {
    QPixmapCache::clear(); // where it is full already, what is added to it takes no more room
    useForMinutes(*window, folder.path(), BLINKWRIGHT_SAMPLES, 4);
    const std::size_t before = heapAtRest_bytes(*window, BLINKWRIGHT_SAMPLES);
    useForMinutes(*window, folder.path(), BLINKWRIGHT_SAMPLES, 8);
    EXPECT_LT(grownSince_KiB(before, heapAtRest_bytes(*window, BLINKWRIGHT_SAMPLES)), 300);
}

TEST_F(LongUse, PaintingTheWindowAgainTakesNoMoreMemory) {
    QPixmapCache::clear();
    open("mole-light-measured"); // its readings have heads of two colours
    const auto paint = [this](int times) {
        for (int k = 0; k < times; ++k) window->grab();
    };
    paint(3);
    const std::size_t before = heapInUse_bytes();
    paint(50);
    EXPECT_LT(grownSince_KiB(before, heapInUse_bytes()), 50) << "1 KiB for each painting";
}

} // namespace

} // namespace blinkwright::test
