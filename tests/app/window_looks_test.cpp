// How the real window looks, what can be reached in it, and how it comes back.
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QSplitter>
#include <QTableView>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MainWindow;
using app::Settings;

using LooksOfTheWindow = WindowFixture;

TEST_F(LooksOfTheWindow, TheViewMenuChoosesHowSymbolsAreDrawnAndRemembersIt) {
    using namespace widgets::hookup;
    open();
    const auto shown = [&] { return window->hookup().viewport()->grab().toImage(); };
    const QImage first = shown();
    EXPECT_TRUE(action("IEC 60617").isChecked());
    EXPECT_TRUE(action("Package from above").isChecked());
    action("IEEE 315").trigger();
    const QImage zigzag = shown();
    EXPECT_NE(zigzag, first);
    action("Function block").trigger();
    EXPECT_NE(shown(), zigzag);
    EXPECT_EQ(window->hookup().symbolStyle(), (SymbolStyle{Shapes::ieee315, TimerLook::block}));
    EXPECT_FALSE(window->isWindowModified()) << "looks are no part of the circuit";

    MainWindow next(settings);
    EXPECT_EQ(next.hookup().symbolStyle(), (SymbolStyle{Shapes::ieee315, TimerLook::block}));
    action("IEC 60617").trigger();
    action("Package from above").trigger();
    EXPECT_EQ(shown(), first);
}

TEST_F(LooksOfTheWindow, ADragDoesNotLayTheWindowOutAnew) {
    /// Counts how often the window is asked to.
    class Asked : public QObject {
      public:
        int times = 0;
        bool eventFilter(QObject*, QEvent* event) override {
            if (event->type() == QEvent::LayoutRequest) ++times;
            return false;
        }
    } asked;
    open("buoy-pair");
    const circuit::PartId r2 = window->document().circuit().findRef("R2")->id;
    const double begin_ohm = ohms("R2");
    emit window->values().gestureBegan(1);
    const auto change = [&](int k) {
        emit window->values().valueWished({r2, "resistance"}, begin_ohm * (1 + 0.001 * k), 1);
        ASSERT_TRUE(waitForRun());
        QCoreApplication::processEvents();
    };
    for (int k = 1; k <= 3; ++k) change(k);
    window->installEventFilter(&asked);
    constexpr int changes = 20;
    for (int k = 1; k <= changes; ++k) change(3 + k);
    emit window->values().gestureEnded(1);
    EXPECT_LE(asked.times, changes / 4) << "a line that grows longer than any before it may ask";
}

TEST_F(LooksOfTheWindow, ComesBackAsItWasLeft) {
    window->resize(1111, 777);
    auto* top = window->findChild<QSplitter*>("top");
    ASSERT_NE(top, nullptr);
    top->setSizes({300, 800});
    const QList<int> sizes = top->sizes();
    action("Dark").trigger();
    ASSERT_TRUE(window->close());
    Settings again(folder.filePath("settings.ini"));
    MainWindow other(again);
    other.show();
    EXPECT_EQ(other.size(), QSize(1111, 777));
    EXPECT_EQ(other.findChild<QSplitter*>("top")->sizes(), sizes);
    EXPECT_EQ(other.appearance().looks(), app::Looks::dark);
    action("Light").trigger();
}

TEST_F(LooksOfTheWindow, TheFirstWindowFitsTheScreen) {
    QTemporaryDir fresh;
    Settings first(fresh.filePath("settings.ini"));
    const MainWindow other(first);
    EXPECT_LE(other.width(), other.screen()->availableSize().width());
    EXPECT_LE(other.height(), other.screen()->availableSize().height());
}

TEST_F(LooksOfTheWindow, TheMainReadingsAreSeenWithoutScrolling) {
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"}) {
        open(name);
        QTest::qWait(20);
        const auto* table = window->readings().findChild<QTableView*>();
        ASSERT_NE(table, nullptr);
        constexpr int lastMain = 6; // rate, a minute, cycle, high, low, duty, first flash
        const QModelIndex last = table->model()->index(lastMain, 0);
        EXPECT_EQ(last.data().toString(), QStringLiteral("First flash"));
        EXPECT_TRUE(table->viewport()->rect().contains(table->visualRect(last)))
            << name << ": " << table->viewport()->height() << " pixels high";
    }
}

TEST_F(LooksOfTheWindow, SaysNoFindingsOnlyOnceThereIsAResult) {
    ASSERT_TRUE(window->openFile(sample("mole-light")));
    ASSERT_EQ(window->live().shown(), nullptr);
    EXPECT_FALSE(window->findings().isVisible());
    ASSERT_TRUE(waitForRun());
    EXPECT_TRUE(window->findings().isVisible());
}

TEST_F(LooksOfTheWindow, DarkReachesEveryPanel) {
    open();
    action("Dark").trigger();
    for (QWidget* panel :
         std::initializer_list<QWidget*>{&window->hookup(), &window->curves(), &window->readings(),
                                         &window->values(), &window->findings()}) {
        const QImage image = panel->grab().toImage();
        double sum = 0;
        int count = 0;
        for (int y = 0; y < image.height(); y += 3)
            for (int x = 0; x < image.width(); x += 3, ++count) sum += image.pixelColor(x, y).lightnessF();
        EXPECT_LT(sum / count, 0.35) << panel->metaObject()->className();
    }
    action("Light").trigger();
}

TEST_F(LooksOfTheWindow, TheGradesOfFindingsHaveTheColoursOfTheTheme) {
    open();
    emit window->values().valueWished({window->document().circuit().findRef("R3")->id, "resistance"}, 33, 0);
    ASSERT_TRUE(waitForRun());
    const auto& findings = window->live().shown()->findings;
    ASSERT_TRUE(std::ranges::any_of(
        findings, [](const auto& found) { return found.severity == study::Severity::overstress; }));
    const auto has = [&](const QColor& colour) {
        const QImage image = window->findings().grab().toImage();
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (image.pixelColor(x, y) == colour) return true;
        return false;
    };
    using widgets::Theme;
    const QColor light = Theme::of(Theme::Mode::light).overstress,
                 dark = Theme::of(Theme::Mode::dark).overstress;
    EXPECT_TRUE(waitFor([&] { return has(light); })); // the panel is painted after the run
    action("Dark").trigger();
    EXPECT_TRUE(waitFor([&] { return has(dark); }));
    EXPECT_FALSE(has(light));
    action("Light").trigger();
}

TEST_F(LooksOfTheWindow, F6GoesThroughThePanels) {
    open();
    QSet<QWidget*> visited;
    for (int k = 0; k < 5; ++k) {
        action("Next panel").trigger();
        if (QApplication::focusWidget()) visited.insert(QApplication::focusWidget());
    }
    EXPECT_GE(visited.size(), 3);
}

TEST_F(LooksOfTheWindow, F6PassesAPanelThatHasNothingToFocus) {
    open();
    ASSERT_TRUE(window->live().shown()->findings.empty());
    row("R2").field()->setFocus();
    action("Next panel").trigger();
    EXPECT_TRUE(window->hookup().hasFocus());
    action("Previous panel").trigger();
    EXPECT_TRUE(window->values().isAncestorOf(QApplication::focusWidget()));
}

TEST_F(LooksOfTheWindow, BeforeAFileIsOpenOffersWhatMakesSenseOnly) {
    EXPECT_TRUE(action("Save").isEnabled()); // an empty Hook-up is a beginning
    EXPECT_FALSE(action("Export curves").isEnabled());
    EXPECT_FALSE(action("Copy readings").isEnabled());
    EXPECT_FALSE(action("Undo").isEnabled());
    EXPECT_FALSE(action("Duplicate").isEnabled());
    EXPECT_FALSE(action("Join two pins").isEnabled());
    open();
    EXPECT_TRUE(action("Export curves").isEnabled());
}

TEST_F(LooksOfTheWindow, EveryShortcutStandsForOneActionOnly) {
    QMap<QString, QString> taken;
    for (const QAction* found : window->findChildren<QAction*>())
        for (const QKeySequence& keys : found->shortcuts()) {
            const QString text = keys.toString();
            EXPECT_FALSE(taken.contains(text) && taken[text] != found->text())
                << text.toStdString() << ": " << taken[text].toStdString() << ", "
                << found->text().toStdString();
            taken[text] = found->text();
        }
    EXPECT_GE(taken.size(), 12);
}

TEST_F(LooksOfTheWindow, EveryAltKeyStandsForOneMenuOrFieldOnly) {
    QStringList texts;
    for (const QAction* menu : window->menuBar()->actions()) texts << menu->text();
    for (const QLabel* label : window->findChildren<QLabel*>())
        if (label->buddy()) texts << label->text();
    QSet<QString> taken;
    for (const QString& text : texts) {
        const QString keys = QKeySequence::mnemonic(text).toString();
        EXPECT_FALSE(taken.contains(keys))
            << text.toStdString() << " takes " << keys.toStdString() << " again";
        taken.insert(keys);
    }
    EXPECT_GE(taken.size(), 5);
}

} // namespace
