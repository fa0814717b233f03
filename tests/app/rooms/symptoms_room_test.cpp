// "Symptoms" as people use it.
#include "app/rooms/symptoms_room.h"

#include "tests/app/rooms/room_fixture.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/rooms/check_card_view.h"
#include "widgets/rooms/suspects_view.h"
#include "widgets/rooms/symptom_form.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableWidget>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::SymptomsRoom;
using circuit::PartSet;
using study::FaultKind;

class SymptomsRoomTest : public RoomTest {
  protected:
    SymptomsRoom& symptomsRoom() { return room<SymptomsRoom>("symptoms"); }
    static void answered(SymptomsRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    }
    static void tick(SymptomsRoom& room, const char* symptom) {
        room.form().findChild<QCheckBox*>(QLatin1String(symptom))->click();
        answered(room);
    }
    /// Types into the column right of an expected figure: 0 mean, 1 least, 2 most.
    static void type(SymptomsRoom& room, const QString& place, int quantity, const QString& text) {
        auto* table = room.form().findChild<QTableWidget*>("measured");
        for (int row = 0; row < table->rowCount(); ++row)
            if (table->item(row, 0)->text().startsWith(place)) {
                table->item(row, 2 + 2 * quantity)->setText(text);
                return answered(room);
            }
        FAIL() << "no row " << place.toStdString();
    }
    static QString firstRow(SymptomsRoom& room) {
        return room.suspects().findChild<QTableWidget*>("suspects")->item(0, 1)->text();
    }
    static QString label(SymptomsRoom& room, const char* name) {
        return room.frame().findChild<QLabel*>(QLatin1String(name))->text();
    }
    static QPushButton* button(SymptomsRoom& room, const QString& text) {
        for (QPushButton* each : room.frame().findChildren<QPushButton*>())
            if (each->text().remove('&') == text) return each;
        return nullptr;
    }
};

TEST_F(SymptomsRoomTest, AlwaysLitAndTwoReadingsLeadToTheResistorThatIsMissing) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    tick(room, "always lit");
    EXPECT_TRUE(label(room, "next").startsWith("Measure next: ")) << label(room, "next").toStdString();
    // R2 open: the capacitor is not charged any further, pin 7 sits at the supply.
    type(room, "pin 7", 0, "5,9 V");
    type(room, "pin 2", 0, "1.9");
    EXPECT_TRUE(firstRow(room).startsWith("R2 is missing")) << firstRow(room).toStdString();
    EXPECT_GT(room.suspects().diagnosis().suspects.front().share, 0.5);
    EXPECT_TRUE(label(room, "chosen").contains("from pin 7 to pins 2 and 6"))
        << label(room, "chosen").toStdString();
    picture(room, "symptoms-mole-light");
}

TEST_F(SymptomsRoomTest, ThePairIsAskedAboutBothLamps) {
    open("buoy-pair");
    SymptomsRoom& room = symptomsRoom();
    EXPECT_TRUE(room.form().findChild<QCheckBox*>("one lamp only")->isVisible());
    tick(room, "one lamp only");
    type(room, "anode of D1", 0, "1.05");
    picture(room, "symptoms-buoy-pair");
    EXPECT_TRUE(firstRow(room).startsWith("C4 is bridged")) << firstRow(room).toStdString();
}

TEST_F(SymptomsRoomTest, ASingleLampIsNotAskedAboutAnother) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    EXPECT_FALSE(room.form().findChild<QCheckBox*>("one lamp only")->isVisible());
    EXPECT_FALSE(room.form().findChild<QCheckBox*>("both at once")->isVisible());
    EXPECT_TRUE(room.form().findChild<QCheckBox*>("faint")->isVisible());
}

TEST_F(SymptomsRoomTest, ChoosingARowShowsItsPlaceOnTheHookUp) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    tick(room, "always lit");
    auto* table = room.suspects().findChild<QTableWidget*>("suspects");
    QSignalSpy places(&room.suspects(), &widgets::SuspectsView::placeActivated);
    window->hookup().select({});
    table->setCurrentCell(1, 0);
    ASSERT_EQ(places.count(), 1);
    const std::string ref = places.front().front().toString().section(':', 0, 0).toStdString();
    ASSERT_TRUE(window->hookup().selected());
    EXPECT_EQ(window->document().circuit().find(*window->hookup().selected())->ref, ref);
}

TEST_F(SymptomsRoomTest, ATextThatIsNoVoltageIsMarkedAndDoesNotCount) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    type(room, "pin 7", 0, "five");
    EXPECT_TRUE(room.form().observation().readings.empty());
    auto* table = room.form().findChild<QTableWidget*>("measured");
    EXPECT_TRUE(table->item(6, 2)->font().strikeOut());
    EXPECT_EQ(table->item(6, 2)->text(), "five");
    type(room, "pin 7", 0, "5");
    EXPECT_EQ(room.form().observation().readings.size(), 1u);
    EXPECT_FALSE(table->item(6, 2)->font().strikeOut());
    type(room, "pin 7", 0, "");
    EXPECT_TRUE(room.form().observation().readings.empty());
}

TEST_F(SymptomsRoomTest, ACountedRateCounts) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    tick(room, "too slow");
    auto* rate = room.form().findChild<QLineEdit*>("rate");
    rate->setText("5.9"); // a tenth of what is drawn
    emit rate->editingFinished();
    answered(room);
    EXPECT_NEAR(room.form().observation().rate_Hz.value(), 5.9 / 60, 1e-12);
    const QString first = firstRow(room);
    // C1 and C3 in each other's place look the same: C3 is ten times as large.
    EXPECT_TRUE(first.contains("C1 ten times too large") || first.startsWith("C1 is ten times too large") ||
                first.startsWith("R2 is ten times too large"))
        << first.toStdString();
}

TEST_F(SymptomsRoomTest, ReadingsStayWhileTheCircuitChangesAndGoWithAnotherFile) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    type(room, "pin 7", 0, "5");
    setValue(PartSet::A, "R2", "resistance", 50e3);
    answered(room);
    EXPECT_EQ(room.form().observation().readings.size(), 1u);
    open("winch-warning");
    answered(room);
    EXPECT_TRUE(room.form().observation().readings.empty());
}

TEST_F(SymptomsRoomTest, TheCheckCardIsWrittenAsAPageAndAsText) {
    open("buoy-pair");
    SymptomsRoom& room = symptomsRoom();
    room.frame().findChild<QTabWidget*>("pages")->setCurrentIndex(1);
    picture(room, "symptoms-check-card");
    auto* table = room.card().findChild<QTableWidget*>("card");
    ASSERT_EQ(table->rowCount(), 8 + 2 * 3);
    EXPECT_EQ(table->item(0, 1)->text(), QStringLiteral("0\u00A0V"));
    const QString page = folder.filePath("card.pdf"), text = folder.filePath("card.txt");
    ASSERT_TRUE(room.writeCard(page));
    ASSERT_TRUE(room.writeCard(text));
    QFile file(text);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString words = QString::fromUtf8(file.readAll());
    EXPECT_TRUE(words.contains("pin 7 of U1 (discharge)"));
    EXPECT_TRUE(words.contains("they can fail with force"));
    QProcess pdf;
    pdf.start("pdftotext", {"-layout", page, "-"});
    ASSERT_TRUE(pdf.waitForFinished());
    const auto plain = [](QString from) { return from.replace(QChar(QChar::Nbsp), u' '); };
    const QString printed = plain(QString::fromUtf8(pdf.readAllStandardOutput()));
    EXPECT_TRUE(printed.contains("pin 7 of U1 (discharge)"));
    EXPECT_TRUE(printed.contains(plain(table->item(6, 2)->text())));
    EXPECT_TRUE(printed.contains("Page 1 of 1"));
    QProcess picture; // to be looked at
    picture.start("pdftoppm",
                  {"-r", "60", "-png", "-singlefile", page, BLINKWRIGHT_PICTURES "/check-card-page"});
    ASSERT_TRUE(picture.waitForFinished());
}

TEST_F(SymptomsRoomTest, TheCardIsReadWithAMeterOrAProbe) {
    open("winch-warning");
    SymptomsRoom& room = symptomsRoom();
    auto* table = room.card().findChild<QTableWidget*>("card");
    const auto& rows = room.card().expected().rows;
    EXPECT_EQ(table->item(1, 2)->text().toStdString(), readingText(rows[1].place, rows[1].meter.mean));
    room.card().findChild<QComboBox*>("instrument")->setCurrentIndex(1);
    EXPECT_EQ(table->item(1, 2)->text().toStdString(), readingText(rows[1].place, rows[1].probe.mean));
}

TEST_F(SymptomsRoomTest, CopyTakesThePageInFront) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    tick(room, "stays dark");
    button(room, "Copy as text")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("1. "));
    EXPECT_TRUE(QApplication::clipboard()->text().contains("Take the battery off"));
    room.frame().findChild<QTabWidget*>("pages")->setCurrentIndex(1);
    button(room, "Copy as text")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("Harbour mole light"));
}

TEST_F(SymptomsRoomTest, CautionsAreShownOnBothPages) {
    open("mole-light");
    SymptomsRoom& room = symptomsRoom();
    EXPECT_TRUE(label(room, "cautions").contains("take it off before the wiring"));
    EXPECT_TRUE(label(room, "cautions").contains("wrong way round they can fail"));
    room.frame().findChild<QTabWidget*>("pages")->setCurrentIndex(1);
    EXPECT_TRUE(room.frame().findChild<QLabel*>("cautions")->isVisible());
}

TEST_F(SymptomsRoomTest, AnEmptyHookUpIsAskedNothing) {
    SymptomsRoom& room = symptomsRoom();
    EXPECT_TRUE(room.frame().message().contains("add parts"));
    EXPECT_TRUE(room.suspects().diagnosis().suspects.empty());
    EXPECT_FALSE(button(room, "Export card…")->isEnabled());
}

TEST_F(SymptomsRoomTest, EscapeCancelsAndOpeningAsksAnew) {
    open("buoy-pair");
    SymptomsRoom& room = symptomsRoom();
    setValue(PartSet::A, "R2", "resistance", 50e3);
    ASSERT_TRUE(waitFor([&] { return room.frame().findChild<QPushButton*>("cancel")->isVisible(); }));
    QTest::keyClick(&room.frame(), Qt::Key_Escape);
    EXPECT_TRUE(room.frame().message().contains("Cancelled"));
    QTest::keyClick(&room.frame(), Qt::Key_Escape);
    EXPECT_FALSE(room.frame().isVisible());
    EXPECT_FALSE(symptomsRoom().frame().message().contains("Cancelled"));
}

} // namespace
