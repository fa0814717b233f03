// The mole light, built from an empty window by keyboard alone: parts from the menu, nets in the Pins view,
// values in their rows and in the dialogs of the parts. What comes out is the sample to the last digit.
#include "app/part_dialog.h"
#include "tests/app/keyboard.h"
#include "tests/app/program.h"
#include "tests/app/window_fixture.h"
#include "widgets/pins/pins_view.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QTimer>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class BuildByKeyboard : public WindowFixture {
  protected:
    BuildByKeyboard() { activate(); }

    /// Presses a key until something is so. @return false after so many times that it never will be.
    template <class Condition>
    static bool pressUntil(Qt::Key key, Condition isSo, int most = 200) {
        for (int times = 0; !isSo() && times < most; ++times) press(key);
        return isSo();
    }
    void addByMenu(QChar letter) {
        press(Qt::Key_P, Qt::AltModifier);
        ASSERT_NE(QApplication::activePopupWidget(), nullptr) << "the Part menu";
        type("a");
        type(letter);
        EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    }
    void addFromPins(QChar letter) {
        press(Qt::Key_Insert);
        ASSERT_NE(QApplication::activePopupWidget(), nullptr);
        type(letter);
        EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    }
    void goTo(const std::string& pin) {
        const circuit::PinRef wanted = circuit().pinNamed(pin).value();
        press(Qt::Key_Home, Qt::ControlModifier);
        ASSERT_TRUE(pressUntil(Qt::Key_Down, [&] { return window->pins().selectedPin() == wanted; })) << pin;
    }
    void joinByName(const std::string& pin, const std::string& net) {
        goTo(pin);
        type(QString::fromStdString(net));
        press(Qt::Key_Return);
        const auto now = circuit().netOf(circuit().pinNamed(pin).value());
        ASSERT_TRUE(now) << pin;
        ASSERT_EQ(circuit().find(*now)->name, net) << pin;
    }
    /// Ctrl+Enter, from field to field by Tab, Enter.
    void editPart(const char* pin, const std::vector<std::pair<const char*, const char*>>& values) {
        goTo(pin);
        press(Qt::Key_Return, Qt::ControlModifier);
        const QPointer<app::PartDialog> dialog = window->findChild<app::PartDialog*>();
        ASSERT_NE(dialog, nullptr) << pin;
        dialog->activateWindow(); // a window manager does that
        ASSERT_TRUE(waitFor([&] { return dialog->isActiveWindow(); }));
        for (const auto& [key, value] : values) {
            const QWidget* wanted = dialog->field(key);
            if (!wanted) wanted = dialog->choice(key);
            ASSERT_TRUE(pressUntil(
                Qt::Key_Tab, [&, w = wanted] { return QApplication::focusWidget() == w; }, 30))
                << key;
            type(value);
        }
        press(Qt::Key_Return);
        EXPECT_TRUE(!dialog || !dialog->isVisible()) << pin;
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        comeBack();
    }
    void typeValue(const char* ref, const char* value) {
        const auto inField = [&] { return row(ref).field() == QApplication::focusWidget(); };
        ASSERT_TRUE(pressUntil(Qt::Key_Tab, inField)) << ref;
        press(Qt::Key_A, Qt::ControlModifier);
        type(value);
        press(Qt::Key_Return);
    }
    void saveAs(const QString& file) {
        QTimer::singleShot(50, window.get(), [file] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            auto* name = dialog->findChild<QLineEdit*>();
            name->selectAll();
            QTest::keyClicks(name, file);
            QTest::keyClick(name, Qt::Key_Return);
            if (dialog->isVisible()) QTest::keyClick(name, Qt::Key_Return); // a list of names took the first
        });
        press(Qt::Key_S, Qt::ControlModifier);
        comeBack();
    }
    /// After a dialog: a window manager would do it.
    void comeBack() {
        window->activateWindow();
        ASSERT_TRUE(waitFor([&] { return window->isActiveWindow(); }));
    }
};

TEST_F(BuildByKeyboard, TheMoleLightReadsAsTheSampleAndUndoAndRedoGiveTheSameFiles) {
    const circuit::Circuit sample =
        io::readCircuit(bytesOf(test::sample("mole-light")).toStdString()).value();
    const QByteArray nothing = text();

    addByMenu('s'); // BT1
    press(Qt::Key_4, Qt::ControlModifier);
    for (const char letter : {'t', 'r', 'r', 'c', 'c', 'c', 'r', 'l'}) addFromPins(QLatin1Char(letter));
    ASSERT_EQ(circuit().parts().size(), sample.parts().size());
    for (const circuit::Part& part : sample.parts())
        ASSERT_NE(circuit().findRef(part.ref), nullptr) << part.ref;
    for (const circuit::Net& net : sample.nets())
        for (const circuit::PinRef& pin : net.pins) joinByName(sample.pinText(pin), net.name);

    editPart("BT1:plus",
             {{"voltage", "6 V"}, {"resistance", "0.6"}, {"capacity", "2300 mAh"}, {"end_voltage", "4.5"}});
    editPart("C1:plus",
             {{"esr", "2"}, {"leakage_resistance", "10M"}, {"rated_voltage", "25"}, {"polarised", "yes"}});
    editPart("C2:plus", {{"tolerance", "10 %"}});
    editPart("C3:plus", {{"esr", "0.5"}, {"rated_voltage", "16"}, {"polarised", "yes"}});
    const auto inValues = [&] { return window->values().isAncestorOf(QApplication::focusWidget()); };
    ASSERT_TRUE(pressUntil(Qt::Key_F6, inValues));
    typeValue("R1", "10k");
    typeValue("R2", "68k");
    typeValue("C1", "10u");
    typeValue("C2", "10n");
    typeValue("C3", "100u");
    typeValue("R3", "270");

    const QString file = inFolder("mine.blinkwright");
    saveAs(file);
    ASSERT_FALSE(window->isWindowModified());
    const QByteArray mine = headlessReadings(file);
    EXPECT_EQ(mine.toStdString(), headlessReadings(test::sample("mole-light")).toStdString());
    EXPECT_TRUE(mine.contains("\"blinks\""));

    press(Qt::Key_4, Qt::ControlModifier); // a field of values would take its own typing back
    // All the way back and all the way forth, each state the same file as before.
    std::vector<QByteArray> states{text()};
    while (undo().canUndo()) {
        press(Qt::Key_Z, Qt::ControlModifier);
        states.push_back(text());
        ASSERT_LT(states.size(), 100U);
    }
    EXPECT_EQ(states.back(), nothing);
    EXPECT_TRUE(circuit().parts().empty());
    for (auto state = states.rbegin() + 1; state != states.rend(); ++state) {
        press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_EQ(text().toStdString(), state->toStdString());
    }
    EXPECT_FALSE(undo().canRedo());
    const QByteArray first = bytesOf(file);
    EXPECT_EQ(text(), first);
    ASSERT_TRUE(window->document().save());
    EXPECT_EQ(bytesOf(file), first);
}

} // namespace
