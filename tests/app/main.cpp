// Runs the tests of the program itself, always offscreen, on a screen of 1920 by 1080 in the toolkit's
// pixels.
#include <QApplication>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

/// Without it the platform takes a screen of 800 by 800, on which hardly a window has room.
bool makeScreen(const QString& file) {
    bool scaled = false;
    const double factor = qEnvironmentVariable("QT_SCALE_FACTOR").toDouble(&scaled);
    const double scale = scaled ? factor : 1;
    QFile screen(file);
    if (!screen.open(QIODevice::WriteOnly)) return false;
    screen.write(QStringLiteral(R"({"screens": [{"name": "large", "x": 0, "y": 0, "width": %1, "height": %2,
                                    "logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1}]})")
                     .arg(qRound(1920 * scale))
                     .arg(qRound(1080 * scale))
                     .toUtf8());
    qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + file.toLocal8Bit());
    return true;
}

} // namespace

int main(int argc, char** argv) {
    const QTemporaryDir folder;
    if (!makeScreen(folder.filePath(QStringLiteral("screen.json")))) return 1;
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true); // never the user's own settings
    const QApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
