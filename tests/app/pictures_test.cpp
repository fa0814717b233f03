// Pictures of the whole window, to be looked at: build/pictures/window-*.png.
#include "tests/app/window_fixture.h"
#include "tests/case_names.h"
#include "widgets/curves/curves_view.h"

#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QTimer>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class WindowPictures : public WindowFixture,
                       public testing::WithParamInterface<std::tuple<std::string, bool>> {
  protected:
    WindowPictures() : WindowFixture(std::get<1>(GetParam()) ? app::Looks::dark : app::Looks::light) {}
};

TEST_P(WindowPictures, ShowEveryPanelFilled) {
    const auto [name, dark] = GetParam();
    open(name.c_str());
    picture(QString::fromStdString("window-" + name) + (dark ? "-dark" : "-light"));
    const QImage picture = window->grab().toImage();
    EXPECT_EQ(picture.size(), QSize(1280, 800));
    const double ground = picture.pixelColor(2, 400).lightnessF();
    if (dark)
        EXPECT_LT(ground, 0.3);
    else
        EXPECT_GT(ground, 0.7);
}

using OtherPictures = WindowFixture;

TEST_F(OtherPictures, ShowTheWindowBeforeAFileIsOpen) {
    picture("window-empty");
}

TEST_F(OtherPictures, ShowACircuitThatCannotBlink) {
    QByteArray text = bytesOf(sample("mole-light"));
    text.replace("\"U1:6\", \"U1:2\", \"R2:2\"", "\"R2:2\"");
    text.replace("\"U1:8\", \"U1:4\", ", "\"U1:4\", ");
    writeFile(inFolder("dead.blinkwright"), text);
    openPath(inFolder("dead.blinkwright"));
    EXPECT_FALSE(window->live().shown()->findings.empty());
    picture("window-cannot-blink");
}

TEST_F(OtherPictures, ShowTheEchoAndTheFindingsAfterADrag) {
    open("mole-light");
    const auto set = [&](const char* ref, double value) {
        emit window->values().valueWished({window->document().circuit().findRef(ref)->id, "resistance"},
                                          value, 1);
    };
    emit window->values().gestureBegan(1);
    set("R2", 33e3);
    set("R3", 47);
    emit window->values().gestureEnded(1);
    ASSERT_TRUE(waitFor([&] { return window->live().shown()->board.resistors.at(2).resistance == 47; }));
    EXPECT_TRUE(window->live().hasEcho());
    EXPECT_FALSE(window->live().shown()->findings.empty());
    picture("window-echo");
}

TEST_F(OtherPictures, ShowTheMenus) {
    open("mole-light");
    for (QAction* menu : window->menuBar()->actions()) {
        menu->menu()->popup({0, 0});
        picture(QStringLiteral("menu-%1").arg(menu->text().remove('&')), *menu->menu());
        menu->menu()->close();
    }
}

INSTANTIATE_TEST_SUITE_P(Samples, WindowPictures,
                         testing::Combine(testing::Values("mole-light", "buoy-pair", "winch-warning"),
                                          testing::Bool()),
                         [](const auto& row) {
                             const bool dark = std::get<1>(row.param);
                             return tests::caseName(std::get<0>(row.param) + (dark ? " dark" : " light"));
                         });

} // namespace
