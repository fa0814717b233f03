// "What is this?": every control and every command says what it is for, by key and by pointer.
#include "app/what_is_this.h"
#include "tests/app/access/access_fixture.h"
#include "tests/app/hand.h"
#include "tests/app/keyboard.h"
#include "widgets/pins/pins_view.h"

#include <QAction>
#include <QContextMenuEvent>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QSpinBox>
#include <QTabBar>
#include <QTableView>
#include <QWhatsThis>

namespace blinkwright::test {
namespace {

constexpr int fewestLetters = 20;

std::string told(const QWidget& control) {
    return std::string(control.metaObject()->className()) + " \"" + control.objectName().toStdString() +
           "\" named \"" + control.accessibleName().toStdString() + "\"";
}

class WhatIsThis : public AccessTest {
  protected:
    ~WhatIsThis() override {
        QWhatsThis::leaveWhatsThisMode();
        QWhatsThis::hideText();
    }
    /// What the bubble says, and away with it.
    static QString bubble() {
        const QWidget* shown = QApplication::activePopupWidget();
        const QString text = shown ? shown->accessibleName() : QString();
        QWhatsThis::hideText();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return text;
    }
    QString askByKey(QWidget& control) {
        control.window()->activateWindow();
        control.setFocus();
        EXPECT_TRUE(waitFor([&] { return QApplication::focusWidget() == &control; })) << told(control);
        press(Qt::Key_F1, Qt::ShiftModifier);
        return bubble();
    }
    template <class Kind>
    static Kind& named(QWidget& in, const char* name) {
        auto* found = in.findChild<Kind*>(QLatin1String(name));
        if (!found) throw std::runtime_error(name);
        return *found;
    }
    void expectMeanings(const QMenu& menu, const QString& way) {
        for (QAction* action : menu.actions()) {
            if (action->isSeparator()) continue;
            const QString name = action->text().section(u'\t', 0, 0).remove(u'&');
            const QString here = way + QStringLiteral(" > ") + name;
            if (action->menu()) expectMeanings(*action->menu(), here);
            EXPECT_GE(action->whatsThis().size(), fewestLetters) << here.toStdString();
            EXPECT_NE(action->whatsThis(), name) << here.toStdString();
            ++count;
        }
    }
    /// Of the menu that is open, and away with it.
    void expectMeaningsOfPopup(const QString& way) {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr) << way.toStdString();
        expectMeanings(*menu, way);
        menu->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void expectMeaningsAt(QWidget& on, QPoint at, const char* way) {
        QContextMenuEvent event(QContextMenuEvent::Mouse, at, on.mapToGlobal(at));
        QApplication::sendEvent(&on, &event);
        expectMeaningsOfPopup(QLatin1String(way));
    }
    /// The same of a menu that the toolkit runs a loop of its own for.
    void expectMeaningsInLoopAt(QWidget& on, QPoint at, const char* way) {
        QTimer poll;
        poll.setInterval(5);
        bool came = false;
        QObject::connect(&poll, &QTimer::timeout, [&] {
            if (!qobject_cast<QMenu*>(QApplication::activePopupWidget())) return;
            poll.stop();
            came = true;
            expectMeaningsOfPopup(QLatin1String(way));
        });
        poll.start();
        QContextMenuEvent event(QContextMenuEvent::Mouse, at, on.mapToGlobal(at));
        QApplication::sendEvent(&on, &event);
        EXPECT_TRUE(came) << way;
    }
    int count = 0;
};

TEST_F(WhatIsThis, IsAnsweredByEveryControlOfEveryWindow) {
    inEveryWindow([this](const std::string& name, QWidget& shown) {
        for (const QWidget* control : shown.findChildren<QWidget*>()) {
            if (control->window() != &shown || !(control->focusPolicy() & Qt::TabFocus)) continue;
            if (control->focusProxy()) continue; // a part of the control that it points to
            const QString text = app::purposeOf(*control);
            EXPECT_GE(text.size(), fewestLetters) << name << ": " << told(*control);
            EXPECT_NE(text, control->accessibleName()) << name << ": " << told(*control);
            ++count;
        }
        for (const QTabBar* tabs : shown.findChildren<QTabBar*>())
            for (int k = 0; k < tabs->count(); ++k)
                EXPECT_GE(tabs->tabWhatsThis(k).size(), fewestLetters)
                    << name << ": " << tabs->tabText(k).toStdString();
    });
    EXPECT_GE(count, 200);
    RecordProperty("controls", count);
}

TEST_F(WhatIsThis, IsAnsweredByEveryCommandOfTheMenus) {
    open();
    for (QAction* top : window->menuBar()->actions()) {
        emit top->menu()->aboutToShow(); // some are filled then
        for (QAction* inner : top->menu()->actions())
            if (inner->menu()) emit inner->menu()->aboutToShow();
        expectMeanings(*top->menu(), top->text().remove(u'&'));
    }
    EXPECT_GE(count, 80);
    RecordProperty("commands", count);
}

TEST_F(WhatIsThis, IsAnsweredByEveryEntryOfTheMenusOfTheRightButton) {
    open();
    activate();
    Hand hand(*window);
    QWidget& paper = *window->hookup().viewport();
    expectMeaningsAt(paper, hand.pin("U1:7"), "pin");
    expectMeaningsAt(paper, hand.middle("R2"), "part");
    expectMeaningsAt(paper, hand.at(hand.pinPlace("D1:anode") - QPointF(0, 14)), "wire");
    expectMeaningsAt(paper, QPoint(5, 5), "ground");
    action("Compare with Set B").trigger();
    expectMeaningsAt(row("R2"), QPoint(5, 5), "value");
    expectMeaningsAt(*row("R2").field(), QPoint(5, 5), "text of a value");
    expectMeaningsInLoopAt(named<QSpinBox>(*window, "flashes"), QPoint(5, 5), "number");
    action("Pins of the Hook-up").trigger();
    expectMeaningsAt(*window->pins().findChild<QTableView*>()->viewport(), QPoint(20, 20), "pins");
    EXPECT_GE(count, 40);
    RecordProperty("entries", count);
}

TEST_F(WhatIsThis, IsAnsweredByEveryEntryOfTheMenusOfButtons) {
    open();
    inRooms([this](const std::string& name, QWidget& shown) {
        for (const QPushButton* button : shown.findChildren<QPushButton*>())
            if (button->menu()) expectMeanings(*button->menu(), QString::fromStdString(name));
    });
    EXPECT_GE(count, 3) << "that of the spread at least";
}

TEST_F(WhatIsThis, IsAnsweredByKeyInTheMenuThatIsOpen) {
    open();
    activate();
    window->hookup().setFocus();
    const std::size_t parts = circuit().parts().size();
    press(Qt::Key_A); // the list of kinds
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    const QString wanted = menu->activeAction()->whatsThis();
    press(Qt::Key_F1, Qt::ShiftModifier);
    QWidget* shown = nullptr;
    ASSERT_TRUE(waitFor([&] {
        for (QWidget* top : QApplication::topLevelWidgets())
            if (top->isVisible() && top->inherits("QWhatsThat")) shown = top;
        return shown != nullptr;
    }));
    EXPECT_GE(wanted.size(), fewestLetters);
    EXPECT_EQ(circuit().parts().size(), parts) << "asking adds nothing";
}

TEST_F(WhatIsThis, IsAnsweredByKeyInEveryWindow) {
    inEveryWindow([this](const std::string& name, QWidget& shown) {
        for (QWidget* control : shown.findChildren<QWidget*>()) {
            if (control->window() != &shown || !control->isVisible() || !control->isEnabled()) continue;
            if (!(control->focusPolicy() & Qt::TabFocus) || control->focusProxy()) continue;
            const QString text = askByKey(*control);
            EXPECT_GE(text.size(), fewestLetters) << name << ": " << told(*control);
            ++count;
        }
    });
    EXPECT_GE(count, 150);
}

TEST_F(WhatIsThis, TellsPurposeRangeAndKeyOfTheControlInFocus) {
    open();
    const QString text = askByKey(named<QSpinBox>(*window, "flashes"));
    EXPECT_TRUE(text.startsWith(QStringLiteral("Number of flashes shown"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("take longer to simulate"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Range: 1 to 10000"))) << text.toStdString(); // RunSettings
    EXPECT_TRUE(text.contains(QStringLiteral("Key: Alt+L"))) << text.toStdString();
}

TEST_F(WhatIsThis, WorksInAWindowThatHasNoMenu) {
    open();
    QWidget& spread = window->rooms().open(QStringLiteral("spread")).frame();
    const QString text = askByKey(named<QSpinBox>(spread, "seed"));
    EXPECT_TRUE(text.contains(QStringLiteral("Which random boards"))) << text.toStdString();
    // What has no answer of its own is answered by its window.
    const QWidget& message = named<QLabel>(spread, "message");
    EXPECT_TRUE(app::purposeOf(message).isEmpty());
    EXPECT_TRUE(app::answerFor(message, QPoint(2, 2)).contains(QStringLiteral("thousands of boards")));
}

TEST_F(WhatIsThis, NamesTheRangeThatCounts) {
    open();
    inDialogs([](const std::string& name, QWidget& shown) {
        if (name != "ready") return;
        // The bipolar timer's own range, 4.5 to 16 V, is narrower than what the box takes.
        const QString text = app::answerFor(named<QWidget>(shown, "supply"));
        EXPECT_TRUE(text.contains(QStringLiteral("4.5 to 16\u00A0V"))) << text.toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("99"))) << text.toStdString();
    });
}

TEST_F(WhatIsThis, NamesTheRangeOfABoxWithDecimals) {
    open();
    inDialogs([](const std::string& name, QWidget& shown) {
        if (name != "addReading") return;
        const QString text = app::answerFor(named<QDoubleSpinBox>(shown, "percent"));
        EXPECT_TRUE(text.contains(QStringLiteral("Range: 0"))) << text.toStdString();
        EXPECT_TRUE(text.contains(QStringLiteral(" to 100"))) << text.toStdString();
    });
}

TEST_F(WhatIsThis, AnswersForTheCellThatIsClicked) {
    open("mole-light-measured");
    QWidget& measure = window->rooms().open(QStringLiteral("measure")).frame();
    for (const QTableView* list : measure.findChildren<QTableView*>()) {
        const QAbstractItemModel& rows = *list->model();
        for (int row = 0; row < rows.rowCount(); ++row)
            for (int column = 0; column < rows.columnCount(); ++column) {
                const QModelIndex cell = rows.index(row, column);
                if (!cell.data(Qt::ToolTipRole).toString().startsWith("The cycle time that the record"))
                    continue;
                ++count;
                EXPECT_TRUE(app::answerFor(*list->viewport(), list->visualRect(cell).center())
                                .contains("The cycle time that the record"));
            }
    }
    EXPECT_GT(count, 0);
}

TEST_F(WhatIsThis, AnswersForTheControlThatIsClicked) {
    open();
    activate();
    action("What is this?").trigger();
    ASSERT_TRUE(QWhatsThis::inWhatsThisMode());
    const QSpinBox& flashes = named<QSpinBox>(*window, "flashes");
    QLabel* label = nullptr;
    for (QLabel* each : window->findChildren<QLabel*>())
        if (each->buddy() == &flashes) label = each;
    ASSERT_NE(label, nullptr);
    QTest::mouseClick(label, Qt::LeftButton);
    EXPECT_TRUE(bubble().contains(QStringLiteral("take longer to simulate"))) << "the label is of that field";
    EXPECT_FALSE(QWhatsThis::inWhatsThisMode());
}

TEST_F(WhatIsThis, LooksAsItShould) {
    for (const char* looks : {"Light", "Dark"}) {
        open();
        action(looks).trigger();
        QSpinBox& flashes = named<QSpinBox>(*window, "flashes");
        flashes.setFocus();
        activate();
        press(Qt::Key_F1, Qt::ShiftModifier);
        QWidget* shown = QApplication::activePopupWidget();
        ASSERT_NE(shown, nullptr);
        QTest::qWait(300); // it is faded in
        picture(QStringLiteral("what-is-this-%1").arg(QString::fromLatin1(looks).toLower()), *shown);
        (void)bubble();
    }
    action("Light").trigger();
}

} // namespace
} // namespace blinkwright::test
