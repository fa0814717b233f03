// The Pins view in the real window, by keyboard.
#include "app/part_dialog.h"
#include "app/play_actions.h"
#include "core/study/net_voltages.h"
#include "tests/app/keyboard.h"
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/pins/pins_view.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QStatusBar>
#include <QTableView>
#include <QToolButton>
#include <algorithm>
#include <set>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class PinsInTheWindow : public WindowFixture {
  protected:
    explicit PinsInTheWindow(app::Looks looks = app::Looks::light) : WindowFixture(looks) {
        activate();
        open("mole-light");
    }

    QTableView& table() const { return *window->pins().findChild<QTableView*>(); }
    QString cell(const char* text, int column) const {
        for (int row = 0; row < table().model()->rowCount(); ++row)
            if (table().model()->index(row, 0).data() == QLatin1String(text))
                return table().model()->index(row, column).data().toString();
        return QStringLiteral("no such row");
    }
    void showPins() { press(Qt::Key_4, Qt::ControlModifier); }
    void goTo(const char* text) {
        window->pins().selectPin(pin(text));
        table().setFocus();
    }
};

TEST_F(PinsInTheWindow, AShortcutTurnsFromTheDrawingToThePinsAndBack) {
    ASSERT_TRUE(window->hookup().hasFocus());
    showPins();
    EXPECT_TRUE(window->pins().isVisible());
    EXPECT_FALSE(window->hookup().isVisible());
    EXPECT_TRUE(table().hasFocus());
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_FALSE(window->pins().isVisible());
    EXPECT_TRUE(window->hookup().hasFocus());
}

TEST_F(PinsInTheWindow, TypingAPinAndEnterPutsBothIntoOneNet) {
    showPins();
    goTo("R3:1");
    type("u1:7");
    press(Qt::Key_Escape); // closes the list that offers, not the cell
    press(Qt::Key_Escape);
    EXPECT_EQ(netOf("R3:1"), "output") << "given up";
    goTo("R3:1");
    type("U1:7");
    press(Qt::Key_Return);
    EXPECT_EQ(netOf("R3:1"), "discharge");
    EXPECT_EQ(window->document().undoStack().undoText(), "Put R3:1 into net discharge");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(netOf("R3:1"), "output");
}

TEST_F(PinsInTheWindow, ANewNameMakesANetThatTheNextCellOffers) {
    showPins();
    goTo("R3:1");
    type("mast");
    press(Qt::Key_Return);
    EXPECT_EQ(netOf("R3:1"), "mast");
    goTo("D1:cathode");
    type("mas");
    press(Qt::Key_Down);
    press(Qt::Key_Return); // takes the offer
    EXPECT_EQ(netOf("D1:cathode"), "mast");
}

TEST_F(PinsInTheWindow, TheBeginningOfANameIsANameOfItsOwn) {
    showPins();
    goTo("R3:1");
    type("out");
    press(Qt::Key_Return);
    EXPECT_EQ(netOf("R3:1"), "out");
}

TEST_F(PinsInTheWindow, EmptyingTheCellAndBackspaceTakeAPinOff) {
    showPins();
    goTo("R3:1");
    press(Qt::Key_Return);
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_EQ(netOf("R3:1"), "none");
    goTo("R3:2");
    press(Qt::Key_Backspace);
    EXPECT_EQ(netOf("R3:2"), "none");
    EXPECT_EQ(cell("R3:2", 3), "–");
    EXPECT_EQ(window->document().undoStack().count(), 2);
}

TEST_F(PinsInTheWindow, AWholeNetIsRemovedInOneStep) {
    const std::vector<circuit::PinRef> pins = circuit().findNet("supply")->pins;
    ASSERT_GT(pins.size(), 3U);
    showPins();
    goTo("R1:1");
    press(Qt::Key_Backspace, Qt::ControlModifier);
    for (const circuit::PinRef pin : pins) EXPECT_FALSE(circuit().netOf(pin)) << circuit().pinText(pin);
    EXPECT_EQ(window->document().undoStack().undoText(), "Remove net supply");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(circuit().findNet("supply")->pins, pins);
    EXPECT_FALSE(window->document().undoStack().canUndo());
}

TEST_F(PinsInTheWindow, TheMenusNameTheNetOfTheChosenPin) {
    showPins();
    goTo("U1:7");
    const auto names = [](const QMenu& menu, const char* text) {
        return std::ranges::any_of(menu.actions(), [&](const QAction* entry) {
            return entry->text().remove('&') == QLatin1String(text) && entry->isEnabled();
        });
    };
    QContextMenuEvent event(QContextMenuEvent::Keyboard, {5, 5}, window->mapToGlobal(QPoint(50, 200)));
    QApplication::sendEvent(table().viewport(), &event);
    const auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_TRUE(names(*menu, "Remove net discharge"));
    picture("menu-pins", *QApplication::activePopupWidget());
    press(Qt::Key_Escape);
    press(Qt::Key_P, Qt::AltModifier);
    menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_TRUE(names(*menu, "Remove net discharge"));
    type("e");
    EXPECT_EQ(netOf("U1:7"), "none");
}

TEST_F(PinsInTheWindow, CtrlBackspaceInACellRemovesNoNet) {
    showPins();
    goTo("R3:1");
    press(Qt::Key_Return);
    press(Qt::Key_Backspace, Qt::ControlModifier);
    press(Qt::Key_Escape);
    press(Qt::Key_Escape);
    EXPECT_EQ(netOf("R3:1"), "output");
    EXPECT_EQ(window->document().undoStack().count(), 0)
        << window->document().undoStack().undoText().toStdString();
}

TEST_F(PinsInTheWindow, ASlipIsToldInTheStatusBarAndChangesNothing) {
    showPins();
    goTo("R3:1");
    type("U1:9");
    press(Qt::Key_Return);
    EXPECT_EQ(netOf("R3:1"), "output");
    EXPECT_TRUE(window->statusBar()->currentMessage().contains("U1"))
        << window->statusBar()->currentMessage().toStdString();
    EXPECT_EQ(cell("R3:1", 3), "output");
}

TEST_F(PinsInTheWindow, TheVoltagesAreThoseUnderTheMomentLine) {
    showPins();
    const auto volts = [&](const char* text) {
        const auto now = study::netVoltages(*window->live().shown(), window->curves().moment_s());
        return now.at(*circuit().netOf(pin(text)));
    };
    const auto shown = [&](const char* text) {
        return units::parseQuantity(cell(text, 4).toStdString(), units::Unit::volt).value();
    };
    for (int step = 0; step < 4; ++step) {
        press(Qt::Key_F8);
        for (const char* text : {"U1:2", "U1:3", "U1:8", "D1:anode"})
            EXPECT_NEAR(shown(text), volts(text), 1e-3 * std::abs(volts(text)) + 1e-6) << text << step;
    }
    const double before = shown("U1:2");
    press(Qt::Key_F8);
    EXPECT_NE(shown("U1:2"), before);
    EXPECT_EQ(cell("U1:1", 4), QStringLiteral("0\u00A0V"));
}

TEST_F(PinsInTheWindow, ChoosingAPinChoosesItsPartOnTheDrawingAndTheOtherWayRound) {
    showPins();
    table().setFocus();
    press(Qt::Key_End, Qt::ControlModifier);
    ASSERT_TRUE(window->pins().selectedPin());
    EXPECT_EQ(window->hookup().selected(), window->pins().selectedPin()->part);
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_Home);
    EXPECT_EQ(window->pins().selectedPin()->part, circuit().parts().front().id);
}

TEST_F(PinsInTheWindow, TabReachesTheToolBarTheStripAndTheSwitchAndComesRound) {
    window->activateWindow();
    press(Qt::Key_F6);
    std::set<QString> visited;
    const QWidget* first = QApplication::focusWidget();
    ASSERT_NE(first, nullptr);
    for (int times = 0; times < 200; ++times) {
        press(Qt::Key_Tab);
        const QWidget* now = QApplication::focusWidget();
        ASSERT_NE(now, nullptr);
        if (const auto* button = qobject_cast<const QToolButton*>(now))
            visited.insert(button->defaultAction()->iconText());
        visited.insert(now->objectName());
        if (now == first && window->hookup().selected() == circuit().parts().front().id) break;
    }
    for (const char* wanted : {"Open…", "From power-on", "When settled", "flashes", "Pins", "ratio"})
        EXPECT_TRUE(visited.contains(QString::fromUtf8(wanted))) << wanted;
    EXPECT_TRUE(std::ranges::any_of(visited, [](const QString& text) { return text.startsWith("Play"); }));
}

TEST_F(PinsInTheWindow, InsertDeleteAndCtrlEnterServeThePartOfThePin) {
    showPins();
    goTo("R3:2");
    press(Qt::Key_Delete);
    EXPECT_EQ(circuit().findRef("R3"), nullptr);
    press(Qt::Key_Insert);
    ASSERT_NE(QApplication::activePopupWidget(), nullptr);
    type("r");
    ASSERT_NE(circuit().findRef("R3"), nullptr);
    EXPECT_EQ(window->pins().selectedPin(), pin("R3:1")) << "the new part is chosen";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(window->findChild<app::PartDialog*>(), nullptr);
}

TEST_F(PinsInTheWindow, LooksAsMeant) {
    showPins();
    goTo("R2:2");
    picture("window-pins-light");
    press(Qt::Key_Return);
    QWidget* editor = QApplication::focusWidget();
    ASSERT_NE(editor, nullptr);
    picture("window-pins-editing");
}

class DarkPins : public PinsInTheWindow {
  protected:
    DarkPins() : PinsInTheWindow(app::Looks::dark) {}
};

TEST_F(DarkPins, LookAsMeant) {
    showPins();
    goTo("U1:3");
    picture("window-pins-dark");
}

} // namespace
