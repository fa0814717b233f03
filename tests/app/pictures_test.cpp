// Pictures of the whole window, to be looked at: build/pictures/window-*.png.
#include "app/main_window.h"
#include "tests/app/support.h"
#include "widgets/curves/curves_view.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class WindowPictures : public testing::TestWithParam<std::tuple<const char*, bool>> {};

TEST_P(WindowPictures, ShowEveryPanelFilled) {
    const auto [name, dark] = GetParam();
    QTemporaryDir folder;
    app::Settings settings(folder.filePath("settings.ini"));
    settings.setLooks(dark ? app::Looks::dark : app::Looks::light);
    app::MainWindow window(settings);
    window.resize(1280, 800);
    window.show();
    ASSERT_TRUE(window.openFile(sample(name)));
    ASSERT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
    QTest::qWait(50);
    const QImage picture = window.grab().toImage();
    ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
    const QString path =
        QStringLiteral(BLINKWRIGHT_PICTURES "/window-%1-%2.png").arg(name, dark ? "dark" : "light");
    ASSERT_TRUE(picture.save(path));
    EXPECT_EQ(picture.size(), QSize(1280, 800));
    const double ground = picture.pixelColor(2, 400).lightnessF();
    if (dark)
        EXPECT_LT(ground, 0.3);
    else
        EXPECT_GT(ground, 0.7);
}

INSTANTIATE_TEST_SUITE_P(Samples, WindowPictures,
                         testing::Combine(testing::Values("mole-light", "buoy-pair", "winch-warning"),
                                          testing::Bool()));

} // namespace
