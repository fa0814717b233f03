// The way of the focus: Tab comes round through everything in reading order, and what has it shows it.
#include "tests/app/access/access_fixture.h"
#include "tests/app/keyboard.h"

#include <QAbstractScrollArea>
#include <QRadioButton>

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
bool inReadingOrder(const QWidget& window, QWidget* last, QWidget* next) {
    std::set<QWidget*> above;
    for (QWidget* at = last; at; at = at->parentWidget()) above.insert(at);
    QWidget* common = next;
    while (common && !above.contains(common)) common = common->parentWidget();
    if (!common || common == next || common == last) return true;
    const auto childOf = [common](QWidget* widget) {
        while (widget->parentWidget() != common) widget = widget->parentWidget();
        return QRect(widget->mapTo(common, QPoint(0, 0)), widget->size());
    };
    (void)window;
    const QRect a = childOf(last), b = childOf(next);
    const int shared = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top());
    const bool sameLine = 2 * shared > std::min(a.height(), b.height());
    return sameLine ? b.left() >= a.left() : b.top() >= a.top() || b.left() > a.right();
}

class Focus : public AccessTest {
  protected:
    static void activate(QWidget& shown) {
        shown.activateWindow();
        ASSERT_TRUE(waitFor([&] { return shown.isActiveWindow(); }));
    }
    static std::vector<QWidget*> way(QWidget& shown, std::size_t most) {
        std::vector<QWidget*> visited;
        if (!QApplication::focusWidget() || QApplication::focusWidget()->window() != &shown)
            press(Qt::Key_Tab);
        QWidget* first = QApplication::focusWidget();
        if (!first) return visited;
        if ((first->focusPolicy() & Qt::TabFocus) == 0) { // the empty ground that a new window begins with
            press(Qt::Key_Tab);
            first = QApplication::focusWidget();
        }
        do {
            visited.push_back(QApplication::focusWidget());
            press(Qt::Key_Tab);
        } while (QApplication::focusWidget() && QApplication::focusWidget() != first &&
                 visited.size() <= most);
        return visited;
    }
};

TEST_F(Focus, TabComesRoundThroughEverything) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        activate(shown);
        const std::set<QWidget*> all = reachable(shown);
        const std::vector<QWidget*> visited = way(shown, 2 * all.size() + 5);
        for (QWidget* widget : all)
            EXPECT_NE(std::ranges::find(visited, widget), visited.end())
                << name << ": Tab never reaches " << nameOf(*widget).toStdString();
        EXPECT_LE(visited.size(), all.size() + 2) << name << " goes round in a part of it";
    });
}

TEST_F(Focus, TabGoesInReadingOrder) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        activate(shown);
        const std::size_t count = reachable(shown).size();
        const std::vector<QWidget*> visited = way(shown, 2 * count + 5);
        int back = 0; // the end of the round goes back to the beginning once
        std::string where;
        for (std::size_t k = 0; k < visited.size(); ++k) {
            QWidget *here = visited[k], *next = visited[(k + 1) % visited.size()];
            if (inReadingOrder(shown, here, next)) continue;
            ++back;
            where += "\n  " + nameOf(*here).toStdString() + " -> " + nameOf(*next).toStdString();
        }
        EXPECT_LE(back, 1) << name << where;
    });
}

TEST_F(Focus, IsSeenOnWhateverHasIt) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        activate(shown);
        for (QWidget* widget : reachable(shown)) {
            QWidget* pane = widget; // a frame may be drawn just outside
            while (pane->parentWidget() && pane != &shown && pane->size() == widget->size())
                pane = pane->parentWidget();
            if (QWidget* now = QApplication::focusWidget()) now->clearFocus();
            QTest::qWait(5);
            const QImage before = pane->grab().toImage();
            widget->setFocus(Qt::TabFocusReason);
            if (QApplication::focusWidget() != widget) continue;
            QTest::qWait(5);
            EXPECT_NE(pane->grab().toImage(), before)
                << name << ": " << nameOf(*widget).toStdString() << " looks as without the focus";
        }
    });
}

} // namespace
} // namespace blinkwright::test
