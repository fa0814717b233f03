// The band of simulated boards behind the curves of the real window.
#include "tests/app/window_fixture.h"

#include "app/band_behind.h"
#include "widgets/curves/curves_view.h"

namespace blinkwright::test {
namespace {

class BandInTheWindow : public WindowFixture {
  protected:
    bool bandCame() {
        return waitFor([this] { return window->band().shown() && window->curves().hasBand(); });
    }
};

TEST_F(BandInTheWindow, StandsBehindTheCurvesOverTheirWholeTime) {
    open();
    EXPECT_FALSE(window->band().shown());
    action("Band of boards").trigger();
    ASSERT_TRUE(bandCame());
    const auto band = window->band().shown();
    EXPECT_DOUBLE_EQ(band->time_s.back(), window->live().shown()->curves.time_s.back());
    EXPECT_GT(band->blinking, 190);
    picture("window-band-light");
    action("Curves when settled").trigger();
    ASSERT_TRUE(waitFor([&] { return window->band().shown() && window->band().shown() != band; }));
    picture("window-band-settled-light");
}

TEST_F(BandInTheWindow, GoesWithAChangeAndComesAgainForTheNewBoard) {
    open();
    action("Band of boards").trigger();
    ASSERT_TRUE(bandCame());
    const double before = window->band().shown()->time_s.back();
    const circuit::PartId r2 = circuit().findRef("R2")->id;
    ASSERT_TRUE(window->document().apply(
        circuit::setValue(circuit(), circuit::PartSet::A, r2, "resistance", 2 * ohms("R2"))));
    EXPECT_FALSE(window->curves().hasBand());
    ASSERT_TRUE(bandCame());
    EXPECT_GT(window->band().shown()->time_s.back(), 1.1 * before);
    // A title is no other board.
    ASSERT_TRUE(window->document().apply({circuit::edits::SetTitle{"Another title"}}));
    EXPECT_TRUE(window->curves().hasBand());
}

TEST_F(BandInTheWindow, IsTakenAwayAndTheChoiceIsRemembered) {
    open();
    action("Band of boards").trigger();
    ASSERT_TRUE(bandCame());
    action("Band of boards").trigger();
    EXPECT_FALSE(window->curves().hasBand());
    action("Band of boards").trigger();
    start();
    EXPECT_TRUE(action("Band of boards").isChecked());
    open();
    EXPECT_TRUE(bandCame());
}

TEST_F(BandInTheWindow, IsPartOfAnExport) {
    open();
    const QString without = inFolder("without.svg"), with = inFolder("with.svg");
    ASSERT_TRUE(window->exportTo(without));
    action("Band of boards").trigger();
    ASSERT_TRUE(bandCame());
    ASSERT_TRUE(window->exportTo(with));
    const auto text = [](const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    EXPECT_FALSE(text(without).contains("9 of 10 boards"));
    EXPECT_TRUE(text(with).contains("9 of 10 boards"));
}

class BandInTheDark : public BandInTheWindow {};

TEST_F(BandInTheDark, Shows) {
    settings.setLooks(app::Looks::dark);
    settings.setBandShown(true);
    start();
    open("buoy-pair");
    ASSERT_TRUE(bandCame());
    picture("window-band-dark");
}

} // namespace
} // namespace blinkwright::test
