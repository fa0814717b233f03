// The looks reach whatever is drawn, in windows that are open already and in those that come later.
#include "tests/app/access/access_fixture.h"
#include "widgets/rooms/room_plot.h"

#include <qcustomplot.h>

#include <set>

namespace blinkwright::test {
namespace {

class LooksReach : public AccessTest {
  protected:
    ~LooksReach() override { window->appearance().choose(app::Looks::light); }

    /// Pages are white in both: previews of what goes on paper.
    static bool isPage(const QWidget& widget) {
        for (const QWidget* at = &widget; at; at = at->parentWidget())
            if (at->objectName().contains(QStringLiteral("preview"), Qt::CaseInsensitive) ||
                QString::fromLatin1(at->metaObject()->className()).contains(QStringLiteral("Preview")))
                return true;
        return false;
    }
    static bool isDrawn(const QWidget& widget) {
        return qobject_cast<const QCustomPlot*>(&widget) || qobject_cast<const widgets::HookupView*>(&widget);
    }
    void expectGrounds(const std::string& name, QWidget& shown, std::set<std::string>& met) const {
        QTest::qWait(40);
        const widgets::Theme& theme = window->appearance().theme();
        for (QWidget* widget : shown.findChildren<QWidget*>()) {
            if (!isDrawn(*widget) || !widget->isVisible() || isPage(*widget)) continue;
            const QImage image = widget->grab().toImage();
            // Inside a focus frame, in a corner where nothing is drawn.
            EXPECT_EQ(image.pixelColor(5, image.height() - 6), theme.paper)
                << name << ": " << widget->metaObject()->className();
            met.insert(name + " " + widget->metaObject()->className());
        }
        const QColor ground = shown.grab().toImage().pixelColor(2, shown.height() - 3);
        EXPECT_NEAR(ground.lightnessF(), theme.window.lightnessF(), 0.15) << name;
        double sum = 0;
        int count = 0;
        const QImage image = shown.grab().toImage();
        for (int y = 0; y < image.height(); y += 7)
            for (int x = 0; x < image.width(); x += 7, ++count) sum += image.pixelColor(x, y).lightnessF();
        if (name == "export" || name == "labSheet") return; // mostly page
        if (theme.mode == widgets::Theme::Mode::dark)
            EXPECT_LT(sum / count, 0.35) << name;
        else
            EXPECT_GT(sum / count, 0.8) << name;
    }
    std::set<std::string> seen;
};

TEST_F(LooksReach, EveryPlotAndDrawingOfANewWindow) {
    for (const char* looks : {"Dark", "Light"}) {
        action(looks).trigger();
        inEveryWindow([this](const std::string& name, QWidget& shown) { expectGrounds(name, shown, seen); });
    }
    EXPECT_GE(seen.size(), 8U); // Hook-up and Curves, trend, spread's two, choose, ready, record
}

TEST_F(LooksReach, EveryPlotAndDrawingOfAnOpenWindow) {
    inEveryWindow([](const std::string&, QWidget&) {});
    for (const char* looks : {"Dark", "Light"}) {
        action(looks).trigger();
        inMain([this](const std::string& name, QWidget& shown) { expectGrounds(name, shown, seen); });
        inRooms([this](const std::string& name, QWidget& shown) { expectGrounds(name, shown, seen); });
    }
    EXPECT_GE(seen.size(), 6U);
}

TEST_F(LooksReach, AnOpenDialogToo) {
    open("mole-light-measured");
    inDialogs([this](const std::string& name, QWidget& shown) {
        if (name == "record") return; // it has the looks of its opening; the window is out of reach meanwhile
        window->appearance().choose(app::Looks::dark);
        expectGrounds(name, shown, seen);
        window->appearance().choose(app::Looks::light);
        expectGrounds(name, shown, seen);
    });
}

} // namespace
} // namespace blinkwright::test
