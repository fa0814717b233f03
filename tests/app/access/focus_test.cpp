// The way of the focus, in every window: Tab comes round through everything, forwards and back, in the order
// in which the window is read, and what has the focus shows it.
#include "tests/app/access/access_fixture.h"
#include "tests/app/keyboard.h"
#include "widgets/curves/curve_colours.h"

#include <QComboBox>
#include <QRadioButton>
#include <QScrollArea>
#include <QTableView>
#include <QToolButton>

#include <set>

namespace blinkwright::test {
namespace {

QString nameOf(const QWidget& widget) {
    const QString own =
        widget.accessibleName().isEmpty() ? widget.property("text").toString() : widget.accessibleName();
    return QStringLiteral("%1 %2 \"%3\"")
        .arg(QLatin1String(widget.metaObject()->className()), widget.objectName(), own);
}

/// What Tab is to reach, as the toolkit's own rules have it.
std::set<QWidget*> reachable(QWidget& window) {
    std::set<QWidget*> out;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->window() != &window || !widget->isVisible() || !widget->isEnabled()) continue;
        if ((widget->focusPolicy() & Qt::TabFocus) == 0 || widget->focusProxy()) continue;
        // Of radio buttons Tab reaches the one that is chosen, the arrows the rest.
        if (const auto* radio = qobject_cast<QRadioButton*>(widget); radio && !radio->isChecked()) continue;
        out.insert(widget);
    }
    return out;
}

/// Whether `next` comes after `last` for the eye: below it, or beside it on the right. Groups stand for what
/// is in them.
bool inReadingOrder(QWidget* last, QWidget* next) {
    std::set<QWidget*> above;
    for (QWidget* at = last; at; at = at->parentWidget()) above.insert(at);
    QWidget* common = next;
    while (common && !above.contains(common)) common = common->parentWidget();
    if (!common || common == next) return false;
    if (common == last) return true; // into it
    const auto childOf = [common](QWidget* widget) {
        while (widget->parentWidget() != common) widget = widget->parentWidget();
        return widget->geometry();
    };
    const QRect a = childOf(last), b = childOf(next);
    const int shared = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top());
    const bool sameLine = 2 * shared > std::min(a.height(), b.height());
    return sameLine ? b.left() >= a.left() : b.top() >= a.top() || b.left() > a.right();
}

/// Pixels that are plainly others: WCAG 2.2, 2.4.13, counts those whose contrast between both states is 3
/// to 1.
int plainlyChanged(const QImage& before, const QImage& after) {
    int count = 0;
    for (int y = 0; y < before.height(); ++y)
        for (int x = 0; x < before.width(); ++x)
            if (before.pixel(x, y) != after.pixel(x, y) &&
                widgets::contrast(before.pixelColor(x, y), after.pixelColor(x, y)) >= 3)
                ++count;
    return count;
}

class Focus : public AccessTest {
  protected:
    static void activate(QWidget& shown) {
        shown.activateWindow();
        ASSERT_TRUE(waitFor([&] { return shown.isActiveWindow(); }));
    }
    /// Once round, and the first again.
    static std::vector<QWidget*> way(QWidget& shown, Qt::Key key = Qt::Key_Tab) {
        activate(shown);
        std::vector<QWidget*> visited;
        const QWidget* begun = QApplication::focusWidget();
        if (!begun || begun->window() != &shown || (begun->focusPolicy() & Qt::TabFocus) == 0) press(key);
        // The drawing keeps the focus from part to part, and a page of the help from link to link.
        constexpr int mostPresses = 400;
        for (int presses = 0; presses < mostPresses; ++presses) {
            QWidget* now = QApplication::focusWidget();
            if (!now) break;
            if (visited.empty() || visited.back() != now) visited.push_back(now);
            if (visited.size() > 1 && now == visited.front()) break;
            press(key);
        }
        return visited;
    }
    static void expectRound(const std::string& name, QWidget& shown, Qt::Key key) {
        const std::vector<QWidget*> visited = way(shown, key);
        const std::set<QWidget*> all = reachable(shown);
        for (QWidget* widget : all)
            EXPECT_TRUE(std::ranges::find(visited, widget) != visited.end())
                << name << ": it never comes to " << nameOf(*widget).toStdString();
        EXPECT_LE(visited.size(), all.size() + 1) << name << " is passed through twice in parts";
    }
    /// In sight, and without the focus.
    static QRect bringIntoSight(QWidget& shown, QWidget& control) {
        for (QWidget* at = control.parentWidget(); at && at != &shown; at = at->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(at)) area->ensureWidgetVisible(&control);
        if (QWidget* now = QApplication::focusWidget()) now->clearFocus();
        QTest::qWait(5);
        QRect seen(control.mapTo(&shown, QPoint(0, 0)), control.size());
        for (QWidget* at = control.parentWidget(); at && at != &shown; at = at->parentWidget())
            seen &= QRect(at->mapTo(&shown, QPoint(0, 0)), at->size());
        return seen;
    }
    static void expectSeen(const std::string& name, QWidget& shown) {
        activate(shown);
        for (QWidget* control : reachable(shown)) {
            const QRect at = bringIntoSight(shown, *control);
            if (!control->isVisible()) continue; // it was there only while another had the focus
            ASSERT_FALSE(at.isEmpty()) << name << ": " << nameOf(*control).toStdString();
            const QRect around = at.adjusted(-4, -4, 4, 4) & shown.rect();
            const QImage before = shown.grab(around).toImage();
            control->setFocus(Qt::TabFocusReason);
            QTest::qWait(5);
            ASSERT_EQ(QApplication::focusWidget(), control) << name;
            // 2.4.13 asks for a line of two pixels around it.
            EXPECT_GE(plainlyChanged(before, shown.grab(around).toImage()),
                      2 * (at.width() + at.height()) * 3 / 2)
                << name << ": " << nameOf(*control).toStdString() << " looks as without the focus";
        }
    }
    void pictures(const char* name, QWidget& shown, QWidget& control) {
        for (const app::Looks looks : {app::Looks::light, app::Looks::dark}) {
            window->appearance().choose(looks);
            activate(shown);
            control.setFocus(Qt::TabFocusReason);
            picture(
                QStringLiteral("focus-%1-%2")
                    .arg(QLatin1String(name), QLatin1String(looks == app::Looks::dark ? "dark" : "light")),
                shown);
        }
        window->appearance().choose(app::Looks::light);
    }
};

TEST_F(Focus, IsOnTheHookUpWhenTheWindowOpens) {
    activate(*window);
    EXPECT_TRUE(window->hookup().hasFocus());
    open();
    EXPECT_TRUE(window->hookup().hasFocus());
    press(Qt::Key_Home);
    EXPECT_EQ(window->hookup().selected(), circuit().parts().front().id) << "the keyboard works at once";
}

TEST_F(Focus, TabComesRoundThroughEverything) {
    inEveryWindow([](const std::string& name, QWidget& shown) { expectRound(name, shown, Qt::Key_Tab); });
}

TEST_F(Focus, ShiftAndTabComeRoundThroughEverythingToo) {
    inEveryWindow([](const std::string& name, QWidget& shown) { expectRound(name, shown, Qt::Key_Backtab); });
}

TEST_F(Focus, TabGoesInReadingOrder) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        const std::vector<QWidget*> visited = way(shown);
        int back = 0; // from the end to the beginning
        std::string where;
        for (std::size_t k = 0; k + 1 < visited.size(); ++k) {
            if (inReadingOrder(visited[k], visited[k + 1])) continue;
            ++back;
            where +=
                "\n  " + nameOf(*visited[k]).toStdString() + " -> " + nameOf(*visited[k + 1]).toStdString();
        }
        EXPECT_LE(back, 1) << name << where;
    });
}

TEST_F(Focus, IsSeenOnWhateverHasIt) {
    inEveryWindow(&expectSeen);
}

TEST_F(Focus, IsSeenInTheDarkToo) {
    action("Dark").trigger();
    inEveryWindow(&expectSeen);
    action("Light").trigger();
}

TEST_F(Focus, LooksAsItShould) {
    open("mole-light-measured");
    waitForRun();
    for (auto* button : window->findChildren<QToolButton*>())
        if (button->defaultAction() == &action("Export curves") && button->isVisible())
            pictures("tool-button", *window, *button);
    inRooms([this](const std::string& name, QWidget& shown) {
        if (name != "why") return;
        pictures("combo-box", shown, *shown.findChild<QComboBox*>(QStringLiteral("quantity")));
        pictures("table", shown, *shown.findChild<QTableView*>(QStringLiteral("bridge")));
    });
    inDialogs([this](const std::string& name, QWidget& shown) {
        if (name == "drawer") pictures("drawer", shown, *shown.findChild<QTableView*>());
        if (name == "help") pictures("help", shown, *shown.findChild<QToolButton*>());
        if (name == "export") pictures("export", shown, *shown.findChild<QComboBox*>());
    });
}

} // namespace
} // namespace blinkwright::test
