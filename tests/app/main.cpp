// Runs the tests of the program itself, always offscreen.
#include <QApplication>
#include <QStandardPaths>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true); // never the user's own settings
    const QApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
