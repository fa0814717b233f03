// Pictures of the whole window, to be looked at: build/pictures/window-*.png.
#include "app/main_window.h"
#include "places.h"
#include "tests/app/support.h"
#include "tests/case_names.h"
#include "widgets/curves/curves_view.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QMenu>
#include <QMenuBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class WindowPictures : public testing::TestWithParam<std::tuple<std::string, bool>> {};

TEST_P(WindowPictures, ShowEveryPanelFilled) {
    const auto [name, dark] = GetParam();
    QTemporaryDir folder;
    app::Settings settings(folder.filePath("settings.ini"));
    settings.setLooks(dark ? app::Looks::dark : app::Looks::light);
    app::MainWindow window(settings);
    window.resize(1280, 800);
    window.show();
    ASSERT_TRUE(window.openFile(sample(name.c_str())));
    ASSERT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
    QTest::qWait(50);
    const QImage picture = window.grab().toImage();
    ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
    const QString path = QStringLiteral(BLINKWRIGHT_PICTURES "/window-%1-%2.png")
                             .arg(QString::fromStdString(name), dark ? "dark" : "light");
    ASSERT_TRUE(picture.save(path));
    EXPECT_EQ(picture.size(), QSize(1280, 800));
    const double ground = picture.pixelColor(2, 400).lightnessF();
    if (dark)
        EXPECT_LT(ground, 0.3);
    else
        EXPECT_GT(ground, 0.7);
}

class OtherPictures : public testing::Test {
  protected:
    OtherPictures() : settings(folder.filePath("settings.ini")) {
        settings.setLooks(app::Looks::light);
        window = std::make_unique<app::MainWindow>(settings);
        window->resize(1280, 800);
        window->show();
    }
    void open(const QString& path) {
        ASSERT_TRUE(window->openFile(path));
        ASSERT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
    }
    void picture(const char* name) {
        QTest::qWait(50);
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        EXPECT_TRUE(window->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/window-%1.png").arg(name)));
    }
    QTemporaryDir folder;
    app::Settings settings;
    std::unique_ptr<app::MainWindow> window;
};

TEST_F(OtherPictures, ShowTheWindowBeforeAFileIsOpen) {
    picture("empty");
}

TEST_F(OtherPictures, ShowACircuitThatCannotBlink) {
    QByteArray text = bytesOf(sample("mole-light"));
    text.replace("\"U1:6\", \"U1:2\", \"R2:2\"", "\"R2:2\"");
    text.replace("\"U1:8\", \"U1:4\", ", "\"U1:4\", ");
    writeFile(folder.filePath("dead.blinkwright"), text);
    open(folder.filePath("dead.blinkwright"));
    EXPECT_FALSE(window->live().shown()->findings.empty());
    picture("cannot-blink");
}

TEST_F(OtherPictures, ShowTheEchoAndTheFindingsAfterADrag) {
    open(sample("mole-light"));
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
    picture("echo");
}

TEST_F(OtherPictures, ShowTheHelpDialogs) {
    for (const char* text : {"Cautions", "About"}) {
        bool seen = false;
        QTimer::singleShot(50, window.get(), [&] {
            QWidget* dialog = QApplication::activeModalWidget();
            ASSERT_NE(dialog, nullptr);
            seen = dialog->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/dialog-%1.png").arg(text));
            dialog->close();
        });
        for (QAction* found : window->findChildren<QAction*>())
            if (found->text().remove('&').startsWith(text)) found->trigger();
        EXPECT_TRUE(seen) << text;
    }
}

TEST_F(OtherPictures, ShowTheMenus) {
    open(sample("mole-light"));
    for (QAction* menu : window->menuBar()->actions()) {
        menu->menu()->popup({0, 0});
        EXPECT_TRUE(menu->menu()->grab().save(
            QStringLiteral(BLINKWRIGHT_PICTURES "/menu-%1.png").arg(menu->text().remove('&'))));
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
