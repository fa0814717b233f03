// The help as people use it in the window.
#include "app/help/help_window.h"

#include "app/help/help_browser.h"
#include "app/help/help_desk.h"
#include "app/help/help_keys.h"
#include "app/help/help_pages.h"
#include "app/pane.h"
#include "app/rooms/drawer_desk.h"
#include "app/rooms/room_actions.h"
#include "tests/app/keyboard.h"
#include "tests/app/window_fixture.h"
#include "widgets/choose/drawer_dialog.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/pins/pins_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QToolButton>

namespace blinkwright::test {
namespace {

using app::help::HelpWindow;

class HelpOfTheWindow : public WindowFixture {
  protected:
    HelpWindow* shownHelp() const {
        for (HelpWindow* help : window->findChildren<HelpWindow*>())
            if (help->isVisible()) return help;
        return nullptr;
    }
    /// What F1 opens where the focus is on a widget.
    QString pageFrom(QWidget& widget) {
        widget.window()->activateWindow();
        EXPECT_TRUE(waitFor([&] { return widget.isActiveWindow(); }));
        widget.setFocus();
        QTest::keyClick(&widget, Qt::Key_F1);
        const HelpWindow* help = shownHelp();
        return help ? help->page() : QString();
    }
    HelpWindow& help(const char* page) {
        HelpWindow& shown = window->help().show(QLatin1String(page));
        EXPECT_TRUE(waitFor([&] { return shown.isActiveWindow(); })); // its keys work only then
        return shown;
    }
    template <class Kind>
    static Kind& part(HelpWindow& help, const char* name) {
        return *help.findChild<Kind*>(QLatin1String(name));
    }
};

TEST_F(HelpOfTheWindow, F1OpensThePageOfThePanelThatHasTheFocus) {
    open();
    activate();
    EXPECT_EQ(pageFrom(*window->centralWidget()), "window");
    EXPECT_EQ(pageFrom(window->hookup()), "hookup");
    EXPECT_EQ(pageFrom(*row("R2").field()), "values");
    const std::pair<const QWidget*, const char*> others[] = {
        {&window->curves(), "curves"}, {&window->readings(), "readings"}, {&window->findings(), "findings"}};
    for (const auto& [panel, page] : others) EXPECT_EQ(app::help::pageOf(panel), page);
    action("Pins of the Hook-up").trigger();
    EXPECT_EQ(pageFrom(window->pins()), "pins");
}

TEST_F(HelpOfTheWindow, F1OpensThePageOfEveryRoom) {
    open();
    int rooms = 0;
    for (const char* menuText : {"Ask", "File"})
        for (QAction* entry : window->findChildren<QAction*>()) {
            const auto* menu = qobject_cast<QMenu*>(entry->parent());
            if (!menu || menu->title().remove('&') != menuText || entry->objectName().isEmpty()) continue;
            const QString name = entry->objectName();
            if (name == "drawer") continue; // no room; below
            app::Room& room = window->rooms().open(name);
            ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
            EXPECT_EQ(pageFrom(room.frame()), name);
            EXPECT_TRUE(app::help::pageNames().contains(name)) << name.toStdString();
            shownHelp()->close();
            room.frame().findChild<QPushButton*>(QStringLiteral("help"))->click();
            ASSERT_TRUE(shownHelp());
            EXPECT_EQ(shownHelp()->page(), name) << "by its button too";
            room.frame().close();
            ++rooms;
        }
    EXPECT_EQ(rooms, 9);
    window->rooms().drawer().open();
    EXPECT_EQ(pageFrom(window->rooms().drawer().dialog()), "drawer");
}

TEST_F(HelpOfTheWindow, CanBeReadBesideADialogThatBlocksTheWindow) {
    open();
    bool came = false;
    QTimer::singleShot(0, window.get(), [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        ASSERT_TRUE(dialog);
        QTest::keyClick(dialog, Qt::Key_F1);
        auto* help = dialog->findChild<HelpWindow*>();
        ASSERT_TRUE(help);
        came = true;
        EXPECT_EQ(help->page(), "export");
        QTest::mouseClick(&part<QToolButton>(*help, "back"), Qt::LeftButton);
        part<QListWidget>(*help, "pages").setCurrentRow(1);
        EXPECT_EQ(help->page(), "window") << "it takes its own clicks and keys";
        help->close();
        EXPECT_TRUE(dialog->isVisible());
        dialog->close();
    });
    action("Export curves").trigger();
    EXPECT_TRUE(came);
}

TEST_F(HelpOfTheWindow, BlocksNothing) {
    open();
    EXPECT_FALSE(help("trend").isModal());
    row("R2").field()->selectAll();
    QTest::keyClicks(row("R2").field(), "33k\r");
    EXPECT_DOUBLE_EQ(ohms("R2"), 33e3);
}

TEST_F(HelpOfTheWindow, GoesBackAndForwardAndTheListFollows) {
    HelpWindow& shown = help("trend");
    auto& list = part<QListWidget>(shown, "pages");
    EXPECT_EQ(list.currentItem()->data(Qt::UserRole).toString(), "trend");
    emit shown.browser().anchorClicked(QUrl("help:spread"));
    EXPECT_EQ(shown.page(), "spread");
    EXPECT_EQ(list.currentItem()->data(Qt::UserRole).toString(), "spread");
    shown.activateWindow(); // keys of a window work where it is the active one
    ASSERT_TRUE(waitFor([&] { return shown.isActiveWindow(); }));
    press(Qt::Key_Left, Qt::AltModifier); // a button's key shows the button pressed before it acts
    EXPECT_TRUE(waitFor([&] { return shown.page() == u"trend"; }));
    press(Qt::Key_Right, Qt::AltModifier);
    EXPECT_TRUE(waitFor([&] { return shown.page() == u"spread"; }));
    EXPECT_EQ(shown.windowTitle(), "Spread – Help");
}

TEST_F(HelpOfTheWindow, TheListIsWalkedByArrowsPastItsHeadings) {
    HelpWindow& shown = help("window");
    auto& list = part<QListWidget>(shown, "pages");
    list.setFocus();
    QStringList read{shown.page()};
    for (int k = 0; k < list.count(); ++k) {
        QTest::keyClick(&list, Qt::Key_Down);
        if (shown.page() != read.constLast()) read << shown.page();
    }
    EXPECT_EQ(read, app::help::pageNames());
}

TEST_F(HelpOfTheWindow, FindsInThePageRoundItsEnd) {
    HelpWindow& shown = help("works");
    shown.activateWindow();
    ASSERT_TRUE(waitFor([&] { return shown.isActiveWindow(); }));
    press(Qt::Key_F, Qt::ControlModifier);
    auto& field = part<QLineEdit>(shown, "find");
    ASSERT_TRUE(waitFor([&] { return field.isVisible(); }));
    QTest::keyClicks(&field, "pin 7");
    EXPECT_EQ(shown.browser().textCursor().selectedText().toLower(), "pin 7");
    const int first = shown.browser().textCursor().position();
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(shown.browser().textCursor().position(), first) << "the only one, found again from the top";
    EXPECT_FALSE(part<QLabel>(shown, "found").text().isEmpty());
    field.clear();
    QTest::keyClicks(&field, "elephant");
    EXPECT_TRUE(part<QLabel>(shown, "found").text().contains("elephant"));
    QTest::keyClick(&field, Qt::Key_Escape);
    EXPECT_FALSE(field.isVisible());
    EXPECT_TRUE(shown.isVisible());
    QTest::keyClick(&shown, Qt::Key_Escape);
    EXPECT_FALSE(shown.isVisible());
}

TEST_F(HelpOfTheWindow, RemembersItsSize) {
    help("trend").resize(777, 555);
    window->findChild<HelpWindow*>()->close();
    start();
    EXPECT_EQ(help("trend").size(), QSize(777, 555));
}

TEST_F(HelpOfTheWindow, ThePageOfKeysHasEveryKeyOfTheMenus) {
    const QString text = help("keys").browser().toPlainText();
    int keys = 0;
    for (const QAction* entry : window->findChildren<QAction*>()) {
        if (!qobject_cast<QMenu*>(entry->parent()) || entry->shortcut().isEmpty()) continue;
        EXPECT_TRUE(text.contains(entry->shortcut().toString(QKeySequence::NativeText)))
            << entry->text().toStdString();
        ++keys;
    }
    EXPECT_GT(keys, 30);
}

TEST_F(HelpOfTheWindow, KeysThatPagesNameAreThere) {
    // What the panels themselves take, and their tests prove.
    QSet<QString> known{"Shift",     "Ctrl",     "Tab",       "Shift+Tab", "Home", "End",      "Page Up",
                        "Page Down", "Enter",    "Esc",       "Space",     "Left", "Right",    "F",
                        "Backspace", "Alt+Left", "Alt+Right", "Ctrl+F",    "F3",   "Shift+F3", "A"};
    window->rooms().open("measure");
    for (const QAction* entry : window->findChildren<QAction*>())
        for (const QKeySequence& keys : entry->shortcuts())
            known << keys.toString(QKeySequence::PortableText);
    static const QRegularExpression marked("<kbd>(.*?)</kbd>");
    for (const QString& page : app::help::pageNames()) {
        auto found = marked.globalMatch(app::help::pageText(page, "en"));
        while (found.hasNext()) {
            const QString key = found.next().captured(1);
            EXPECT_TRUE(known.contains(key)) << key.toStdString() << " on " << page.toStdString();
        }
    }
}

TEST_F(HelpOfTheWindow, MenusThatPagesNameAreThere) {
    QSet<QString> known;
    const QRegularExpression marks("&|…|\t.*");
    for (const QAction* entry : window->findChildren<QAction*>()) known << entry->text().remove(marks);
    for (const QMenu* menu : window->findChildren<QMenu*>()) known << menu->title().remove(marks);
    static const QRegularExpression path("<b>(File|View|Ask|Sets|Help) &gt; (.*?)</b>");
    int paths = 0;
    for (const QString& page : app::help::pageNames()) {
        auto found = path.globalMatch(app::help::pageText(page, "en"));
        for (; found.hasNext(); ++paths) {
            const QRegularExpressionMatch one = found.next();
            EXPECT_TRUE(known.contains(one.captured(2))) << one.captured().toStdString();
        }
    }
    EXPECT_GT(paths, 15);
}

TEST_F(HelpOfTheWindow, EntriesOfTheMenuOpenTheirPages) {
    for (const auto& [entry, page] : {std::pair("How the blinker works", "works"), {"Keys", "keys"}}) {
        action(entry).trigger();
        ASSERT_NE(shownHelp(), nullptr) << entry;
        EXPECT_EQ(shownHelp()->page().toStdString(), page) << entry;
    }
}

TEST_F(HelpOfTheWindow, CautionsAreInTheMenuAndOnTheirKey) {
    EXPECT_EQ(action("Cautions").shortcut(), QKeySequence("Ctrl+Shift+F1"));
    action("Cautions").trigger();
    ASSERT_TRUE(shownHelp());
    EXPECT_EQ(shownHelp()->page(), "cautions");
    for (const char* said :
         {"mains", "plus and a minus", "short circuit", "strong lamp", "2.3.1", "local rules"})
        EXPECT_TRUE(shownHelp()->browser().toPlainText().contains(said)) << said;
}

TEST_F(HelpOfTheWindow, LooksLight) {
    for (const char* page : {"window", "works", "keys", "cautions", "account"}) {
        help(page);
        picture(QStringLiteral("help-%1-light").arg(page), *shownHelp());
    }
}

TEST_F(HelpOfTheWindow, LooksDark) {
    HelpWindow& shown = help("works");
    action("Dark").trigger();
    picture("help-works-dark", shown);
    EXPECT_LT(shown.browser().viewport()->grab().toImage().pixelColor(3, 3).lightnessF(), 0.4);
    for (const char* page : {"trend", "keys"}) {
        help(page);
        picture(QStringLiteral("help-%1-dark").arg(page), shown);
    }
    action("Light").trigger();
}

} // namespace
} // namespace blinkwright::test
