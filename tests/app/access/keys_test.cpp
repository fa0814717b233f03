// Every command by the keyboard: menus, shortcuts, tool buttons.
#include "tests/app/access/access_fixture.h"
#include "tests/app/keyboard.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QShortcut>
#include <QToolBar>
#include <QToolButton>

#include <set>

namespace blinkwright::test {
namespace {

/// Actions of a menu and the menus in it, with the way to each: `View > Text size > 150 %`.
void walk(const QMenu& menu, const QString& way, std::map<const QAction*, QString>& out) {
    for (QAction* action : menu.actions()) {
        if (action->isSeparator()) continue;
        const QString here = way + QStringLiteral(" > ") + action->text().section(u'\t', 0, 0).remove(u'&');
        if (action->menu())
            walk(*action->menu(), here, out);
        else
            out[action] = here;
    }
}

class Keys : public AccessTest {
  protected:
    std::map<const QAction*, QString> inMenus() const {
        std::map<const QAction*, QString> all;
        for (QAction* top : window->menuBar()->actions())
            if (top->menu()) {
                emit top->menu()->aboutToShow(); // some are filled then
                walk(*top->menu(), top->text().remove(u'&'), all);
            }
        return all;
    }
};

TEST_F(Keys, EveryCommandOfTheMenusHasAShortcut) {
    open();
    // Choices that are made once and kept: four letters lead to each (Alt+V, then a letter for the list, then
    // one for the choice), and keys for all would leave none for what is done every minute. Files and kinds
    // of parts have their own letter in a list that opens by one key.
    const QStringList without{"View > Appearance > ",     "View > Text size > ", "View > Symbols > ",
                              "View > Timer drawn as > ", "View > Language > ",  "File > Open recent > ",
                              "File > Exports hold > ",   "Part > Add a part > "};
    int count = 0;
    for (const auto& [action, way] : inMenus()) {
        const bool choice =
            std::ranges::any_of(without, [&](const QString& start) { return way.startsWith(start); });
        if (choice) {
            EXPECT_FALSE(QKeySequence::mnemonic(action->text()).isEmpty() &&
                         !way.startsWith(QStringLiteral("View > Language > ")))
                << way.toStdString() << " has no letter";
            continue;
        }
        ++count;
        const bool told =
            action->text().contains(u'\t'); // a key that means several things by turns, as Esc does
        EXPECT_TRUE(told || !action->shortcut().isEmpty()) << way.toStdString();
    }
    EXPECT_GE(count, 50);
}

TEST_F(Keys, EveryActionOfTheWindowIsInAMenu) {
    open();
    const auto all = inMenus();
    std::set<QString> texts;
    for (const auto& [action, way] : all) texts.insert(action->text().section(u'\t', 0, 0));
    // The key that opens the list of kinds, and the same for the table of pins: the menu has the list itself.
    const QStringList lists{"Choose a part to add"};
    for (const QAction* action : window->findChildren<QAction*>()) {
        if (action->isSeparator() || action->text().isEmpty() || action->menu()) continue;
        if (action->shortcut().isEmpty() || lists.contains(action->text())) continue;
        EXPECT_TRUE(all.contains(action) || texts.contains(action->text())) << action->text().toStdString();
    }
}

TEST_F(Keys, EveryToolButtonIsInAMenuToo) {
    open();
    const auto all = inMenus();
    int count = 0;
    for (const QToolButton* button : window->findChildren<QToolButton*>()) {
        const QAction* action = button->defaultAction();
        if (!action || !button->isVisible()) continue;
        ++count;
        EXPECT_TRUE(all.contains(action)) << action->text().toStdString();
    }
    EXPECT_GE(count, 12);
    // Those of the strip of symbols are the entries of Part, Add a part.
    const auto* strip = window->findChild<QWidget*>(QStringLiteral("palette"));
    ASSERT_NE(strip, nullptr);
    std::set<QString> kinds;
    for (const auto& [action, way] : all)
        if (way.startsWith(QStringLiteral("Part > Add a part > ")))
            kinds.insert(way.section(u'>', 2).trimmed());
    EXPECT_EQ(kinds.size(), static_cast<std::size_t>(strip->findChildren<QToolButton*>().size()));
}

TEST_F(Keys, NoShortcutIsTakenTwice) {
    inEveryWindow([this](const std::string& name, QWidget& shown) {
        std::map<QString, QString> taken;
        for (const QAction* action : shown.findChildren<QAction*>()) {
            if (action->shortcutContext() != Qt::WindowShortcut && &shown == window.get()) continue;
            for (const QKeySequence& keys : action->shortcuts()) {
                const auto [at, fresh] = taken.try_emplace(keys.toString(), action->text());
                EXPECT_TRUE(fresh || at->second == action->text())
                    << name << ": " << keys.toString().toStdString() << " for " << at->second.toStdString()
                    << " and " << action->text().toStdString();
            }
        }
        for (const QShortcut* shortcut : shown.findChildren<QShortcut*>()) {
            if (shortcut->context() != Qt::WindowShortcut) continue;
            const QString keys = shortcut->key().toString();
            EXPECT_TRUE(taken.try_emplace(keys, QStringLiteral("a shortcut")).second ||
                        &shown != window.get())
                << name << ": " << keys.toStdString();
        }
    });
}

TEST_F(Keys, TheLettersOfAMenuDiffer) {
    open();
    const std::function<void(const QMenu&, const QString&)> check = [&](const QMenu& menu,
                                                                        const QString& way) {
        std::map<QString, QString> taken;
        for (QAction* action : menu.actions()) {
            if (action->isSeparator()) continue;
            const QString keys = QKeySequence::mnemonic(action->text()).toString();
            if (action->menu()) check(*action->menu(), way + u'>' + action->text());
            if (keys.isEmpty()) continue;
            const auto [at, fresh] = taken.try_emplace(keys, action->text());
            EXPECT_TRUE(fresh) << way.toStdString() << ": " << at->second.toStdString() << " and "
                               << action->text().toStdString();
        }
    };
    (void)inMenus(); // fills them
    for (const QAction* top : window->menuBar()->actions()) check(*top->menu(), top->text());
}

TEST_F(Keys, TheLettersOfARoomDiffer) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        if (qobject_cast<app::MainWindow*>(&shown)) return; // has a test of its own
        std::map<QString, QString> taken;
        const auto take = [&](const QString& text) {
            const QString keys = QKeySequence::mnemonic(text).toString();
            if (keys.isEmpty()) return;
            const auto [at, fresh] = taken.try_emplace(keys, text);
            EXPECT_TRUE(fresh) << name << ": " << at->second.toStdString() << " and " << text.toStdString();
        };
        for (const QAbstractButton* button : shown.findChildren<QAbstractButton*>())
            if (button->isVisible() && button->window() == &shown) take(button->text());
        for (const QLabel* label : shown.findChildren<QLabel*>())
            if (label->isVisible() && label->buddy() && label->window() == &shown) take(label->text());
    });
}

} // namespace
} // namespace blinkwright::test
