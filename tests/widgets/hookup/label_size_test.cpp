// Labels of the size that is wished for, where they find room.
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {
namespace {

class LabelSize : public testing::TestWithParam<const char*> {
  protected:
    LabelSize() { drawing.show(test::sample(GetParam())); }
    /// Pairs of texts that touch each other, and texts that a wire crosses.
    int collisions() const {
        int found = 0;
        const auto& labels = drawing.labels();
        for (std::size_t i = 0; i < labels.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) found += labels[i].rect.intersects(labels[k].rect);
            for (const Segment& s : drawing.routes().segments)
                found += !labels[i].rect.isEmpty() &&
                         labels[i].rect.intersects(
                             QRectF(QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y)).adjusted(-1, -1, 1, 1));
        }
        return found;
    }
    Drawing drawing;
};

TEST_P(LabelSize, GrowsWhereThereIsRoomAndPutsNothingOverAnything) {
    const int before = collisions();
    const QRectF bounds = drawing.bounds();
    const std::vector<Label> usual = drawing.labels();
    drawing.setTextSize(24);
    EXPECT_LE(collisions(), before);
    int larger = 0, all = 0;
    for (std::size_t i = 0; i < usual.size(); ++i) {
        const Label& now = drawing.labels()[i];
        if (now.rect.isEmpty()) continue; // a timer's stand in its outline
        EXPECT_GE(now.size, labelSize);
        EXPECT_LE(now.size, 24);
        EXPECT_TRUE(drawing.bounds().adjusted(-1, -1, 1, 1).contains(now.rect));
        larger += now.size > labelSize;
        ++all;
    }
    EXPECT_GE(2 * larger, all) << "half of them at least";
    drawing.setTextSize(labelSize);
    EXPECT_EQ(drawing.labels(), usual);
    EXPECT_EQ(drawing.bounds(), bounds);
}

INSTANTIATE_TEST_SUITE_P(Samples, LabelSize, testing::Values("mole-light", "buoy-pair"));

} // namespace
} // namespace blinkwright::widgets::hookup
