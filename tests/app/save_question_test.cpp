// How a table is written: what the dialog offers, what it remembers, and what files then hold.
#include "app/language.h"
#include "app/save_question.h"
#include "tests/app/support.h"

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace blinkwright::test {
namespace {

using namespace app;

class SaveQuestionTest : public testing::Test {
  protected:
    SaveQuestionTest() { settings.setLastFolder(folder.path()); }
    ~SaveQuestionTest() override { speak(QStringLiteral("en")); }
    SaveQuestion question() const {
        return {.title = QStringLiteral("Export the trend"),
                .name = QStringLiteral("pier"),
                .kinds = {{QStringLiteral("Picture"), QStringLiteral("png")},
                          {QStringLiteral("Table"), QStringLiteral("csv")}}};
    }
    /// Answers the dialog by a kind of file and its own name.
    QString answered(const SaveQuestion& asked, const QString& filter) {
        QTimer::singleShot(0, qApp, [&] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            ASSERT_TRUE(dialog->nameFilters().contains(filter)) << filter.toStdString();
            dialog->selectNameFilter(filter);
            emit dialog->filterSelected(filter); // as by hand
            QTest::keyClick(dialog->findChild<QLineEdit*>(), Qt::Key_Return);
        });
        return askWhere(nullptr, asked, settings);
    }
    QByteArray written() {
        const QString path = folder.filePath(QStringLiteral("t.csv"));
        EXPECT_TRUE(writeTable(path, "a,b\r\n0.5,1\r\n", settings));
        return bytesOf(path);
    }
    QTemporaryDir folder;
    Settings settings{folder.filePath(QStringLiteral("settings.ini"))};
};

TEST_F(SaveQuestionTest, BeforeAnyChoiceTablesAreAsTheLanguageWritesNumbers) {
    EXPECT_EQ(written(), "a,b\r\n0.5,1\r\n");
    EXPECT_EQ(
        filtersOf(question(), tableStyle(settings)),
        QStringList({"Picture (*.png)", "Table, decimal point (*.csv)", "Table, decimal comma (*.csv)"}));
    speak(QStringLiteral("de"));
    EXPECT_EQ(written(), "a;b\r\n0,5;1\r\n");
    EXPECT_EQ(filtersOf(question(), tableStyle(settings)),
              QStringList({"Picture (*.png)", "Table, Dezimalkomma (*.csv)", "Table, Dezimalpunkt (*.csv)"}));
}

TEST_F(SaveQuestionTest, TheChoiceIsRememberedWhateverTheLanguage) {
    const QString path = answered(question(), QStringLiteral("Table, decimal comma (*.csv)"));
    EXPECT_EQ(path, folder.filePath(QStringLiteral("pier.csv")));
    EXPECT_EQ(written(), "a;b\r\n0,5;1\r\n");
    speak(QStringLiteral("de"));
    EXPECT_EQ(answered(question(), QStringLiteral("Table, Dezimalpunkt (*.csv)")), path);
    EXPECT_EQ(written(), "a,b\r\n0.5,1\r\n");
    settings.sync();
    EXPECT_EQ(tableStyle(Settings(folder.filePath(QStringLiteral("settings.ini")))), io::pointCsv);
}

TEST_F(SaveQuestionTest, APictureLeavesTheStyleOfTablesAlone) {
    setTableStyle(settings, io::commaCsv);
    EXPECT_EQ(answered(question(), QStringLiteral("Picture (*.png)")),
              folder.filePath(QStringLiteral("pier.png")));
    EXPECT_EQ(tableStyle(settings), io::commaCsv);
}

} // namespace
} // namespace blinkwright::test
