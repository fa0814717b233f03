#include "app/settings.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright::app;

class SettingsTest : public testing::Test {
  protected:
    QTemporaryDir folder;
    QString file = folder.filePath("settings.ini");
};

TEST_F(SettingsTest, KeepsTheTenNewestFilesNewestFirstAndNoneTwice) {
    Settings settings(file);
    for (int k = 1; k <= 12; ++k) settings.addRecentFile(QString("/harbour/%1.blinkwright").arg(k));
    settings.addRecentFile("/harbour/7.blinkwright");
    const QStringList files = settings.recentFiles();
    ASSERT_EQ(files.size(), 10);
    EXPECT_EQ(files[0], "/harbour/7.blinkwright");
    EXPECT_EQ(files[1], "/harbour/12.blinkwright");
    EXPECT_EQ(files.count("/harbour/7.blinkwright"), 1);
}

TEST_F(SettingsTest, OutlivesTheProgram) {
    {
        Settings settings(file);
        settings.addRecentFile("/harbour/mole.blinkwright");
        settings.setLooks(Looks::dark);
        settings.setLastFolder(folder.path());
        settings.setExportEnding("svg");
        settings.setWindowState("top", "abc");
        settings.sync();
    }
    const Settings settings(file);
    EXPECT_EQ(settings.recentFiles(), QStringList{"/harbour/mole.blinkwright"});
    EXPECT_EQ(settings.looks(), Looks::dark);
    EXPECT_EQ(settings.lastFolder(), folder.path());
    EXPECT_EQ(settings.exportEnding(), "svg");
    EXPECT_EQ(settings.windowState("top"), "abc");
}

TEST_F(SettingsTest, StartsWithTheLooksOfTheSystem) {
    EXPECT_EQ(Settings(file).looks(), Looks::system);
}

TEST_F(SettingsTest, KeepsHowSymbolsAreDrawn) {
    using namespace blinkwright::widgets::hookup;
    EXPECT_EQ(Settings(file).symbolStyle(), SymbolStyle());
    for (const Shapes shapes : {Shapes::ieee315, Shapes::iec60617})
        for (const TimerLook timer : {TimerLook::block, TimerLook::package}) {
            {
                Settings settings(file);
                settings.setSymbolStyle({shapes, timer});
                settings.sync();
            }
            EXPECT_EQ(Settings(file).symbolStyle(), (SymbolStyle{shapes, timer}));
        }
}

TEST_F(SettingsTest, ForgetsALastFolderThatIsGone) {
    Settings settings(file);
    settings.setLastFolder(folder.filePath("gone"));
    EXPECT_NE(settings.lastFolder(), folder.filePath("gone"));
}

} // namespace
