#include "widgets/findings/findings_view.h"

#include "tests/widgets/pictures.h"
#include "widgets/findings/finding_row.h"

#include <QLabel>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;
using study::Finding;
using study::Severity;

namespace {

std::vector<Finding> someFindings() {
    return {
        {"control-unbypassed",
         Severity::note,
         {"U1:5"},
         "Pin 5 is in no net.",
         "Put 10 nF from pin 5 to ground.",
         {},
         {},
         "common practice, no source"},
        {"reset-open",
         Severity::doubt,
         {"U1:4"},
         "The reset pin is open.",
         "Join pin 4 to pin 8.",
         {},
         {},
         ""},
        {"lamp-overdriven",
         Severity::overstress,
         {"D1", "R3"},
         "The lamp D1 takes 31 mA effective; it is rated for 20 mA, and a longer sentence has to wrap in a "
         "narrow "
         "panel.",
         "Raise R3 to 270 Ω or more.",
         0.031,
         0.02,
         "lamp sheet, red"},
        {"flicker",
         Severity::caution,
         {"D1"},
         "The lamp D1 flashes 8.2 times a second.",
         "Between 3 and 60 flashes a second can harm people with photosensitive epilepsy: slow it down.",
         8.2,
         3.0,
         "WCAG 2.1, 2.3.1"},
        {"output-shorted",
         Severity::fault,
         {"U1:3"},
         "Pin 3 is joined straight to ground.",
         "Take the wire away.",
         {},
         {},
         ""},
    };
}

TEST(FindingsView, PutsTheWorstFirst) {
    FindingsView view;
    view.setFindings(someFindings());
    QStringList spoken;
    for (FindingRow* row : view.findChildren<FindingRow*>())
        spoken << row->accessibleName().section(':', 0, 0);
    EXPECT_EQ(spoken.join(' ').toStdString(), "Fault Overstress Doubt Caution Note");
}

TEST(FindingsView, ListsWhatOnlyTheOtherSetHasUnderItsNameAndWhatBothHaveOnce) {
    FindingsView view;
    std::vector<study::Finding> own = someFindings(), other = someFindings();
    own.erase(own.begin());
    other.back().text = "Pin 3 is joined straight to ground, in other words.";
    const auto spoken = [&] {
        QStringList out;
        for (FindingRow* row : view.findChildren<FindingRow*>())
            if (!row->isHidden()) out << row->accessibleName().section(':', 0, 0);
        return out.join(';').toStdString();
    };
    view.setFindings(own);
    const std::string alone = spoken();
    view.setSecond(other, QStringLiteral("Set B"));
    const QString word = severityWord(other.front().severity);
    EXPECT_EQ(QString::fromStdString(spoken()).count(QStringLiteral("Set B, ")), 1);
    EXPECT_TRUE(QString::fromStdString(spoken()).contains(QStringLiteral("Set B, ") + word));
    view.setSecond({}, {});
    EXPECT_EQ(spoken(), alone);
}

TEST(FindingsView, SaysThatThereIsNothingToSay) {
    FindingsView view;
    view.resize(400, 200);
    view.show();
    view.setFindings({});
    QApplication::processEvents();
    const auto labels = view.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](QLabel* l) {
        return l->isVisible() && l->text() == QStringLiteral("No findings.");
    }));
    view.setFindings(someFindings());
    EXPECT_FALSE(labels.first()->isVisible());
}

TEST(FindingsView, RowsAreUsedAgainWhenANumberChanges) {
    FindingsView view;
    std::vector<Finding> findings = someFindings();
    view.setFindings(findings);
    const auto before = view.findChildren<FindingRow*>();
    findings[3].text = "The lamp D1 flashes 8.3 times a second.";
    view.setFindings(findings);
    EXPECT_EQ(view.findChildren<FindingRow*>(), before);
    EXPECT_TRUE(before[3]->accessibleName().contains(QStringLiteral("8.3")));
}

TEST(FindingsView, ReturnShowsThePlaceAndSpaceTheSource) {
    FindingsView view;
    view.resize(400, 500);
    view.show();
    view.setFindings(someFindings());
    QApplication::processEvents();
    QSignalSpy activated(&view, &FindingsView::placeActivated);
    FindingRow* row = view.findChildren<FindingRow*>().at(1);
    row->setFocus();
    QTest::keyClick(row, Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(activated.first().first().toString(), QStringLiteral("D1"));
    const auto shown = [&] {
        const auto labels = row->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](QLabel* l) {
            return l->isVisible() && l->text().contains(QStringLiteral("lamp sheet, red"));
        });
    };
    EXPECT_FALSE(shown());
    QTest::keyClick(row, Qt::Key_Space);
    EXPECT_TRUE(shown());
    QTest::keyClick(row, Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget(), view.findChildren<FindingRow*>().at(2));
}

TEST(FindingsView, EveryLinkNamesItsPlace) {
    FindingsView view;
    view.setFindings(someFindings());
    QSignalSpy activated(&view, &FindingsView::placeActivated);
    FindingRow* row = view.findChildren<FindingRow*>().at(1);
    const auto labels = row->findChildren<QLabel*>();
    const auto head = std::find_if(labels.begin(), labels.end(), [](QLabel* l) {
        return l->text().contains(QStringLiteral("href=\"R3\""));
    });
    ASSERT_NE(head, labels.end());
    emit(*head)->linkActivated(QStringLiteral("R3"));
    EXPECT_EQ(activated.last().first().toString(), QStringLiteral("R3"));
}

TEST(FindingSymbols, DifferInOutlineAndNotOnlyInColour) {
    Theme grey = Theme::of(Theme::Mode::light);
    grey.fault = grey.overstress = grey.doubt = grey.caution = grey.note = Qt::black;
    std::vector<QImage> drawn;
    for (Severity s :
         {Severity::fault, Severity::overstress, Severity::doubt, Severity::caution, Severity::note}) {
        QImage image(16, 16, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintSeverity(painter, QRectF(0, 0, 16, 16), s, grey);
        painter.end();
        for (const QImage& other : drawn) {
            int different = 0;
            for (int y = 0; y < 16; ++y)
                for (int x = 0; x < 16; ++x)
                    different += std::abs(qGray(image.pixel(x, y)) - qGray(other.pixel(x, y))) > 100;
            EXPECT_GT(different, 25);
        }
        drawn.push_back(image);
    }
}

TEST(FindingsView, LooksAsItShould) {
    FindingsView view;
    view.setFindings(someFindings());
    view.show();
    QApplication::processEvents();
    view.findChildren<FindingRow*>().at(1)->setFocus();
    view.findChildren<FindingRow*>().at(1)->setExpanded(true);
    test::savePictures(view, QStringLiteral("findings"), {400, 400});
}

} // namespace
