// The way of the focus: Tab comes round through everything in the main window.
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

class Focus : public AccessTest {
  protected:
    void inTheMainWindow(const Work& work) {
        open("mole-light-measured");
        inMain(work);
    }
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
        // The drawing keeps the focus from part to part.
        constexpr int mostPresses = 400;
        for (int presses = 0; presses < mostPresses && visited.size() <= most; ++presses) {
            QWidget* now = QApplication::focusWidget();
            if (!now || (visited.size() > 1 && now == first)) break;
            if (visited.empty() || visited.back() != now) visited.push_back(now);
            press(Qt::Key_Tab);
        }
        return visited;
    }
};

TEST_F(Focus, TabComesRoundThroughEverything) {
    inTheMainWindow([](const std::string& name, QWidget& shown) {
        activate(shown);
        const std::set<QWidget*> all = reachable(shown);
        const std::vector<QWidget*> visited = way(shown, 2 * all.size() + 5);
        for (QWidget* widget : all)
            EXPECT_TRUE(std::ranges::find(visited, widget) != visited.end())
                << name << ": Tab never reaches " << nameOf(*widget).toStdString();
        EXPECT_LE(visited.size(), all.size() + 2) << name << " goes round in a part of it";
    });
}

} // namespace
} // namespace blinkwright::test
