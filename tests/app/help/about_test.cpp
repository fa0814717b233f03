// About: what the program is built with, and under which licences.
#include "app/help/about_dialog.h"
#include "app/help/licences.h"
#include "app/verbs/verb.h"
#include "tests/app/window_fixture.h"

#include <QDirIterator>
#include <QRegularExpression>

namespace blinkwright::test {
namespace {

using app::help::AboutDialog;
using app::help::libraries;
using app::help::Library;

QString treeFile(const QString& path) {
    return QString::fromUtf8(bytesOf(QStringLiteral(BLINKWRIGHT_SAMPLES "/../") + path));
}

TEST(About, NamesEveryLibraryThatTheBuildFinds) {
    const QDir tree(QStringLiteral(BLINKWRIGHT_SAMPLES "/.."));
    QString lists = treeFile("CMakeLists.txt");
    for (const char* folder : {"core", "widgets", "app", "tests"}) {
        QDirIterator found(tree.filePath(folder), {"CMakeLists.txt"}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (found.hasNext()) lists += QString::fromUtf8(bytesOf(found.next()));
    }
    QSet<QString> packages;
    static const QRegularExpression call("find_package\\((\\w+)");
    for (auto found = call.globalMatch(lists); found.hasNext();) packages << found.next().captured(1);
    packages.remove("Threads"); // the system's own
    QSet<QString> named;
    for (const Library& library : libraries()) named << library.package;
    EXPECT_EQ(named, packages);
}

TEST(About, NamesVersionsAndLicences) {
    const QString text = AboutDialog().text();
    for (const Library& library : libraries()) {
        EXPECT_TRUE(text.contains(library.name)) << library.name.toStdString();
        EXPECT_TRUE(text.contains(library.licence)) << library.name.toStdString();
        EXPECT_EQ(library.version.isEmpty(), library.testsOnly) << library.name.toStdString();
    }
    EXPECT_TRUE(text.contains(QString::fromStdString(std::string(app::verbs::programVersion()))));
    EXPECT_TRUE(text.contains("GPL-3.0-or-later"));
    EXPECT_TRUE(text.contains("without any warranty"));
}

// Debian's copyright files, in the words of their format 1.0, where they are installed.
TEST(About, NamesTheLicencesThatDebianNames) {
    const std::pair<const char*, const char*> known[] = {
        {"libqcustomplot-dev", "License: GPL-3+"},   {"libeigen3-dev", "License: MPL-2"},
        {"nlohmann-json3-dev", "License: Expat"},    {"libbenchmark-dev", "License: Apache-2.0"},
        {"qt6-base-dev", "License: LGPL-3"},         {"libgtest-dev", "License: BSD-C3"},
        {"libsundials-dev", "License: BSD-3-clause"}};
    for (const auto& [package, licence] : known) {
        const QByteArray text = bytesOf(QStringLiteral("/usr/share/doc/%1/copyright").arg(package));
        if (text.isEmpty()) continue;
        EXPECT_TRUE(text.contains(licence)) << package;
    }
}

using AboutTheWindow = WindowFixture;

TEST_F(AboutTheWindow, OpensFromTheMenuAndLooksRight) {
    for (const char* looks : {"Light", "Dark"}) {
        action(looks).trigger();
        action("About Blinkwright").trigger();
        auto* about = window->findChild<AboutDialog*>();
        ASSERT_TRUE(about);
        EXPECT_TRUE(about->isVisible());
        picture(QStringLiteral("about-%1").arg(QString(looks).toLower()), *about);
        delete about;
    }
    action("Light").trigger();
}

} // namespace
} // namespace blinkwright::test
