// "Spread" as people use it.
#include "app/rooms/spread_room.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/rooms/spread_plot.h"
#include "widgets/rooms/spread_view.h"

#include <QComboBox>
#include <QImage>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>

#include <numeric>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::SpreadRoom;
using circuit::PartSet;

class SpreadRoomTest : public RoomTest {
  protected:
    SpreadRoom& spread() { return room<SpreadRoom>("spread"); }
    void settle(SpreadRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    }
    void setBoards(SpreadRoom& room, int boards) {
        room.frame().findChild<QSpinBox*>("boards")->setValue(boards);
        ASSERT_TRUE(
            waitFor([&] { return room.view().outcome() && room.view().outcome()->boards == boards; }));
    }
    /// The chooser of a part's reel. Choosers of earlier answers are still about, to be deleted later.
    static QComboBox* reelOf(SpreadRoom& room, const char* ref) {
        const auto& table = room.view().partsTable();
        for (int row = 0; row < table.rowCount(); ++row)
            if (table.item(row, 0)->text() == QLatin1String(ref))
                return qobject_cast<QComboBox*>(table.cellWidget(row, 4));
        return nullptr;
    }
    static double shareOf(SpreadRoom& room, const char* ref) {
        for (const auto& share : room.view().outcome()->shares)
            if (share.ref == ref) return share.share;
        return -1;
    }
};

TEST_F(SpreadRoomTest, CountsEveryBoardAndSaysThatNoneIsBeyondTheWorstCase) {
    open("mole-light");
    SpreadRoom& room = spread();
    EXPECT_EQ(room.view().outcome()->boards, 10000);
    const auto& bars = room.view().plot().bars();
    EXPECT_EQ(std::accumulate(bars.begin(), bars.end(), 0L), 10000);
    EXPECT_TRUE(room.frame().message().contains("All 10\u00A0000 boards blink"))
        << room.frame().message().toStdString();
    EXPECT_TRUE(room.frame().message().contains("within the worst case"));
    for (const auto& figure : room.view().figures())
        EXPECT_EQ(figure.boardsBeyond(), 0) << figure.name.toStdString();
    EXPECT_EQ(room.view().plot().accessibleDescription(), room.frame().message());
}

TEST_F(SpreadRoomTest, TheTableHoldsTheFiguresThatAreChosen) {
    open("buoy-pair");
    SpreadRoom& room = spread();
    auto* figure = room.frame().findChild<QComboBox*>("figure");
    ASSERT_EQ(figure->count(), 7); // rate, cycle time, duty cycle; of each lamp lit share and mean current
    const auto& table = room.view().figuresTable();
    EXPECT_EQ(table.item(0, 1)->text(), widgets::rateText(room.view().outcome()->rate_Hz->nominal));
    figure->setCurrentIndex(4);
    emit figure->activated(4);
    EXPECT_EQ(table.item(1, 1)->text(),
              widgets::quantityText(room.view().outcome()->lamps[0].mean_A.mean, units::Unit::ampere));
    EXPECT_TRUE(room.frame().message().contains("mean current"));
    EXPECT_EQ(table.rowCount(), 10);
}

TEST_F(SpreadRoomTest, TheSameSeedGivesTheSameBoards) {
    open("mole-light");
    SpreadRoom& room = spread();
    setBoards(room, 500);
    const auto first = room.view().outcome()->periods_s;
    auto* seed = room.frame().findChild<QSpinBox*>("seed");
    seed->setValue(7);
    ASSERT_TRUE(waitFor([&] { return room.view().outcome()->seed == 7; }));
    EXPECT_NE(room.view().outcome()->periods_s, first);
    seed->setValue(1);
    ASSERT_TRUE(waitFor([&] { return room.view().outcome()->seed == 1; }));
    EXPECT_EQ(room.view().outcome()->periods_s, first);
}

TEST_F(SpreadRoomTest, ANormalDrawIsNarrowerThanAnEvenOne) {
    open("mole-light");
    SpreadRoom& room = spread();
    const double even = room.view().outcome()->rate_Hz->sd;
    auto* draw = room.frame().findChild<QComboBox*>("draw");
    draw->setCurrentIndex(1);
    emit draw->activated(1);
    settle(room);
    // Cut at three sigma, 0.329 of the tolerance; evenly 0.577 (1/sqrt 3).
    EXPECT_NEAR(room.view().outcome()->rate_Hz->sd / even, 0.329 / 0.577, 0.03);
}

TEST_F(SpreadRoomTest, TyingPartsToAReelIsOneUndoStep) {
    open("mole-light");
    SpreadRoom& room = spread();
    app::Document& document = window->document();
    const int before = document.undoStack().count();
    const double alone = shareOf(room, "R2");
    auto* choice = reelOf(room, "R2");
    ASSERT_NE(choice, nullptr);
    EXPECT_EQ(choice->currentText(), "none");
    const int with = choice->findText("R1");
    ASSERT_GT(with, 0);
    EXPECT_EQ(choice->findText("C1"), -1); // no reel holds two kinds
    choice->setCurrentIndex(with);
    emit choice->activated(with);
    settle(room);
    ASSERT_EQ(document.circuit().reels.size(), 1u);
    EXPECT_EQ(document.circuit().reels[0].size(), 2u);
    EXPECT_EQ(document.undoStack().count(), before + 1);
    EXPECT_GT(shareOf(room, "R2"), alone);
    choice = reelOf(room, "R1");
    EXPECT_EQ(choice->currentText(), "R2");
    choice->setCurrentIndex(0);
    emit choice->activated(0);
    settle(room);
    EXPECT_TRUE(document.circuit().reels.empty());
    document.undoStack().undo();
    EXPECT_EQ(document.circuit().reels.size(), 1u);
    document.undoStack().undo();
    settle(room);
    EXPECT_TRUE(document.circuit().reels.empty());
    EXPECT_NEAR(shareOf(room, "R2"), alone, 1e-12);
}

TEST_F(SpreadRoomTest, ALongRunShowsHowFarItIsAndCanBeCancelled) {
    open("buoy-pair");
    SpreadRoom& room = spread();
    const auto before = room.view().outcome();
    room.frame().findChild<QSpinBox*>("boards")->setValue(1000000);
    auto* cancel = room.frame().findChild<QPushButton*>("cancel");
    auto* bar = room.frame().findChild<QProgressBar*>("progress");
    ASSERT_TRUE(waitFor([&] { return cancel->isVisible() && bar->maximum() > 0 && bar->value() > 0; }));
    cancel->click();
    EXPECT_FALSE(room.isBusy());
    EXPECT_TRUE(room.frame().message().contains("Cancelled"));
    EXPECT_EQ(room.view().outcome(), before);
    QTest::qWait(100);
    EXPECT_TRUE(room.frame().message().contains("Cancelled"));
}

TEST_F(SpreadRoomTest, SetBIsAskedAboutWhenChosen) {
    open("mole-light");
    setValue(PartSet::B, "C1", "capacitance", 20e-6);
    SpreadRoom& room = spread();
    const double a = room.view().outcome()->period_s->nominal;
    room.frame().findChild<QComboBox*>("sets")->setCurrentIndex(1);
    settle(room);
    EXPECT_GT(room.view().outcome()->period_s->nominal / a, 0.9);
    EXPECT_NE(room.view().outcome()->period_s->nominal, a);
    picture(room, "spread-set-b");
}

TEST_F(SpreadRoomTest, WithoutAnyToleranceItSaysSo) {
    open("mole-light");
    app::Document& document = window->document();
    const auto parts = document.circuit().parts();
    for (const auto& part : parts) {
        const auto* key = circuit::findKey(circuit::info(part.kind), "tolerance");
        if (!key) continue;
        ASSERT_TRUE(
            document.apply(circuit::setValue(document.circuit(), PartSet::A, part.id, "tolerance", 0.0)));
    }
    const auto timer = document.circuit().findRef("U1")->id;
    ASSERT_TRUE(document.apply(
        circuit::setValue(document.circuit(), PartSet::A, timer, "device.timing_tolerance", 0.0)));
    SpreadRoom& room = spread();
    EXPECT_TRUE(room.frame().message().contains("tolerance")) << room.frame().message().toStdString();
    picture(room, "spread-none");
}

TEST_F(SpreadRoomTest, TablesAndPicturesAreWritten) {
    open("mole-light");
    SpreadRoom& room = spread();
    setBoards(room, 300);
    const QString boards = folder.filePath("b.csv"), figures = folder.filePath("f.csv");
    EXPECT_TRUE(room.writeTable(boards, SpreadRoom::Table::boards));
    EXPECT_TRUE(room.writeTable(figures, SpreadRoom::Table::figures));
    EXPECT_EQ(bytesOf(boards).count('\n'), 301);
    EXPECT_TRUE(bytesOf(figures).contains("rate [Hz],"));
    window->appearance().choose(app::Looks::dark);
    for (const char* end : {"png", "svg", "pdf"})
        EXPECT_TRUE(room.writePicture(folder.filePath(QStringLiteral("s.") + QLatin1String(end))));
    const QImage image(folder.filePath("s.png"));
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
    EXPECT_TRUE(image.save(QStringLiteral(BLINKWRIGHT_PICTURES "/room-spread-export.png")));
    room.view().setCurrentIndex(2);
    EXPECT_TRUE(room.writePicture(folder.filePath("band.png")));
    EXPECT_NE(QImage(folder.filePath("band.png")), image);
    EXPECT_FALSE(room.writePicture(folder.filePath("s.csv")));
}

TEST_F(SpreadRoomTest, LooksRightInItsSizes) {
    open("buoy-pair");
    SpreadRoom& room = spread();
    const char* pages[] = {"distribution", "parts", "curves"};
    for (int page = 0; page < 3; ++page) {
        room.view().setCurrentIndex(page);
        room.frame().resize(1000, 700);
        picture(room, QStringLiteral("spread-%1-1000").arg(QLatin1String(pages[page])).toLatin1());
        room.frame().resize(760, 520);
        picture(room, QStringLiteral("spread-%1-760").arg(QLatin1String(pages[page])).toLatin1());
    }
}

} // namespace
