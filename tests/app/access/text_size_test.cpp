// Larger texts (WCAG 2.2, 1.4.4: up to 200 % without loss of content): by the View menu, by the desktop's
// font, and by the toolkit's scaling (ctest runs the first test at 125, 150 and 200 % too).
#include "tests/app/access/access_fixture.h"
#include "tests/app/access/text_fits.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/hookup/part_palette.h"
#include "widgets/readings/readings_view.h"
#include "widgets/rooms/room_plot.h"

#include <QAbstractSpinBox>
#include <QCheckBox>
#include <QComboBox>
#include <QFontInfo>
#include <QLineEdit>
#include <QStyle>
#include <QToolButton>

namespace blinkwright::test {
namespace {

class TextsFit : public AccessTest {
  protected:
    // The least screen that is asked for at twice the size of texts: 1920 by 1080, without its bars.
    static constexpr QSize screen{1920, 1020};

    ~TextsFit() override { window->appearance().setTextSize(100); }
    static void expectRoom(const std::string& name, QWidget& shown) {
        QTest::qWait(60);
        (void)waitFor([&] { return textsWithoutRoom(shown).isEmpty(); }, 1500); // layouts take their time
        for (const QString& one : textsWithoutRoom(shown)) ADD_FAILURE() << name << ": " << one.toStdString();
        EXPECT_LE(shown.width(), screen.width()) << name;
        EXPECT_LE(shown.height(), screen.height()) << name;
    }
    static std::vector<int> rowHeights(const QWidget& shown) {
        std::vector<int> heights;
        for (const QTableView* table : shown.findChildren<QTableView*>())
            for (int row = 0; row < table->model()->rowCount(); ++row)
                heights.push_back(table->rowHeight(row));
        return heights;
    }
    /// Heights of boxes and fields, by the names of those that have one.
    static std::map<QString, int> fieldHeights(const QWidget& shown) {
        std::map<QString, int> heights;
        for (const QWidget* field : shown.findChildren<QWidget*>())
            if (field->isVisible() && !field->objectName().isEmpty() &&
                (qobject_cast<const QComboBox*>(field) || qobject_cast<const QLineEdit*>(field) ||
                 qobject_cast<const QAbstractSpinBox*>(field)))
                heights[field->objectName()] = field->height();
        return heights;
    }
};

TEST_F(TextsFit, InEveryWindowAtTheUsualSize) {
    inEveryWindow(expectRoom);
}

TEST_F(TextsFit, InEveryWindowAt125Percent) {
    action("125 %").trigger();
    inEveryWindow(expectRoom);
}

TEST_F(TextsFit, InEveryWindowAt150Percent) {
    action("150 %").trigger();
    inEveryWindow(expectRoom);
}

TEST_F(TextsFit, InEveryWindowAt200Percent) {
    action("200 %").trigger();
    inEveryWindow([](const std::string& name, QWidget& shown) {
        expectRoom(name, shown);
        picture(QStringLiteral("at-200-") + QString::fromStdString(name).replace(u' ', u'-'), shown);
    });
}

TEST_F(TextsFit, InWindowsThatAreOpenWhileTheSizeChanges) {
    inEveryWindow([this](const std::string& name, QWidget& shown) {
        const std::vector<int> rows = rowHeights(shown);
        const std::map<QString, int> usual = fieldHeights(shown);
        const QSize size = shown.size();
        for (const char* percent : {"125 %", "150 %", "200 %", "100 %"}) {
            action(percent).trigger();
            expectRoom(name + " at " + percent, shown);
            picture(
                QStringLiteral("while-open-%1-%2").arg(QString::fromStdString(name), percent).remove(u' '),
                shown);
        }
        const std::vector<int> back = rowHeights(shown);
        ASSERT_EQ(back.size(), rows.size()) << name;
        for (std::size_t k = 0; k < rows.size(); ++k)
            EXPECT_LE(back[k], rows[k]) << name << ": a row stays high after the large texts";
        EXPECT_TRUE(waitFor([&] { return shown.width() <= size.width(); }))
            << name << ": " << shown.width() << " for " << size.width();
        (void)waitFor([&] { return fieldHeights(shown) == usual; }, 1500);
        for (const auto& [field, height] : fieldHeights(shown))
            if (usual.contains(field)) {
                EXPECT_LE(height, usual.at(field)) << name << ": " << field.toStdString();
            }
    });
}

TEST_F(TextsFit, AWindowGoesBackToItsOwnSizeWithTheTexts) {
    open();
    QWidget& eye = window->rooms().open(QStringLiteral("eye")).frame();
    QTest::qWait(50);
    const QSize usual = eye.size();
    for (int times = 0; times < 2; ++times) {
        action("200 %").trigger();
        EXPECT_TRUE(waitFor([&] { return eye.width() >= 3 * usual.width() / 2; }));
        QTest::qWait(600); // it has settled
        action("100 %").trigger();
        EXPECT_TRUE(waitFor([&] { return eye.size() == usual; }))
            << eye.width() << " x " << eye.height() << " after " << times;
        QTest::qWait(600);
    }
}

TEST_F(TextsFit, WithALargeFontOfTheDesktop) {
    QFont large = QApplication::font();
    const QFont usual = large;
    large.setPointSizeF(large.pointSizeF() * 1.5);
    QApplication::setFont(large);
    inEveryWindow(expectRoom);
    QApplication::setFont(usual);
}

class TextSize : public TextsFit {};

TEST_F(TextSize, IsChosenInTheViewMenuTakesEffectAtOnceAndIsRemembered) {
    open();
    const double usual = QFontInfo(window->readings().font()).pointSizeF();
    EXPECT_TRUE(action("100 %").isChecked());
    for (const int percent : app::Appearance::textSizes) {
        action(qPrintable(QStringLiteral("%1 %").arg(percent))).trigger();
        QCoreApplication::processEvents();
        EXPECT_NEAR(QFontInfo(window->readings().font()).pointSizeF(), usual * percent / 100, 0.51);
    }
    start();
    EXPECT_TRUE(action("200 %").isChecked());
    EXPECT_EQ(window->appearance().textSize(), 200);
    EXPECT_FALSE(window->isWindowModified());
    settings.setTextSize(123456); // by hand, or by a program to come
    start();
    EXPECT_EQ(window->appearance().textSize(), 100);
}

TEST_F(TextSize, ReachesTheTextsOfEveryPlot) {
    inEveryWindow([](const std::string&, QWidget&) {});
    const auto fonts = [this] {
        std::map<const QCustomPlot*, int> found;
        for (const QWidget* top : QApplication::topLevelWidgets())
            for (const QCustomPlot* plot : top->findChildren<QCustomPlot*>())
                if (top->isVisible() && plot->axisRect())
                    found[plot] =
                        QFontInfo(plot->axisRect()->axis(QCPAxis::atBottom)->labelFont()).pixelSize();
        return found;
    };
    const auto before = fonts();
    ASSERT_GE(before.size(), 4U); // curves, trend, spread's two
    action("200 %").trigger();
    QTest::qWait(50);
    for (const auto& [plot, size] : fonts())
        EXPECT_NEAR(size, 2 * before.at(plot), 1) << plot->metaObject()->className();
}

TEST_F(TextSize, ReachesBoxesToTickAndTheSymbolsOfParts) {
    open();
    QWidget& symptoms = window->rooms().open(QStringLiteral("symptoms")).frame();
    auto* box = symptoms.findChild<QCheckBox*>();
    auto* part = window->findChild<widgets::PartPalette*>()->button(circuit::PartKind::lamp);
    ASSERT_TRUE(box);
    const auto mark = [&] { return box->style()->pixelMetric(QStyle::PM_IndicatorWidth, nullptr, box); };
    const int usualMark = mark(), usualBox = box->sizeHint().height();
    const QSize usualIcon = part->iconSize();
    action("200 %").trigger();
    QTest::qWait(50);
    EXPECT_NEAR(mark(), 2 * usualMark, 1);
    EXPECT_GE(box->sizeHint().height(), mark());
    EXPECT_GT(box->sizeHint().height(), 3 * usualBox / 2);
    EXPECT_GE(part->iconSize().width(), 4 * usualIcon.width() / 3);
    EXPECT_FALSE(part->icon().isNull());
    action("100 %").trigger();
    QTest::qWait(50);
    EXPECT_EQ(mark(), usualMark);
    EXPECT_EQ(part->iconSize(), usualIcon);
}

} // namespace
} // namespace blinkwright::test
