// The translation: every text that any window asks for is there, it has room, and numbers follow the
// language.
#include "app/exporter.h"
#include "app/language.h"
#include "app/save_question.h"
#include "core/units/engineering.h"
#include "tests/app/access/access_fixture.h"
#include "tests/app/access/text_fits.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QMenuBar>
#include <QTranslator>
#include <QXmlStreamReader>

#include <map>
#include <set>

namespace blinkwright::test {
namespace {

/// Asked last, so that it hears of each text that no other translator had.
class Missing : public QTranslator {
  public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* text, const char*, int) const override {
        const QByteArrayView of(context);
        if (*text && !of.startsWith('Q')) m_heard.insert(std::string(context) + ": " + text);
        return {};
    }
    const std::set<std::string>& heard() const { return m_heard; }

  private:
    mutable std::set<std::string> m_heard;
};

/// German to English, by the file of the translation.
std::map<QString, QString> sources() {
    std::map<QString, QString> all;
    QFile file(QStringLiteral(BLINKWRIGHT_TRANSLATIONS "/blinkwright_de.ts"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QString source;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) continue;
        if (xml.name() == u"source") source = xml.readElementText();
        if (xml.name() == u"translation")
            all[xml.readElementText(QXmlStreamReader::IncludeChildElements)] = source;
    }
    return all;
}

/// Before the window is made.
struct Speaking {
    Speaking() {
        QCoreApplication::installTranslator(&missing);
        app::speak(QStringLiteral("de"));
    }
    ~Speaking() {
        app::speak(QStringLiteral("en"));
        QCoreApplication::removeTranslator(&missing);
    }
    Missing missing;
    std::map<QString, QString> english = sources();
};

class German : private Speaking, public AccessTest {
  protected:
    German() : AccessTest({1280, 800}) {}
    QString english(const QString& text) const override {
        const auto found = Speaking::english.find(text);
        return found == Speaking::english.end() ? text : found->second;
    }
    const std::set<std::string>& untranslated() const { return missing.heard(); }
};

TEST_F(German, HasEveryTextThatAnyWindowAsksFor) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        picture(QString::fromStdString("german-" + name).replace(' ', '-'), shown);
    });
    for (const std::string& text : untranslated()) ADD_FAILURE() << text;
    EXPECT_EQ(window->menuBar()->actions().front()->text().remove('&'), "Datei");
}

TEST_F(German, TextsHaveTheirRoom) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        for (const QString& text : textsWithoutRoom(shown))
            ADD_FAILURE() << name << ": " << text.toStdString();
    });
}

TEST_F(German, FieldsAndReadingsHaveADecimalCommaAndTakeOne) {
    open("mole-light");
    QLineEdit& field = *row("R1").field();
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, "4,7k");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(ohms("R1"), 4700);
    EXPECT_EQ(field.text(), QStringLiteral("4,7\u00a0k\u03a9"));
    ASSERT_TRUE(waitForRun());
    const QString copied = window->findChild<widgets::ReadingsView*>()->asText();
    EXPECT_TRUE(copied.contains(QRegularExpression("\\d,\\d"))) << copied.toStdString();
    EXPECT_FALSE(copied.contains(QRegularExpression("\\d\\.\\d"))) << copied.toStdString();
}

TEST_F(German, NumbersGoToTheClipboardWithADecimalComma) {
    open("mole-light-measured");
    const QRegularExpression comma("\\d,\\d"), point("\\d\\.\\d");
    int withNumbers = 0;
    const auto check = [&](const std::string& name) {
        const QString copied = QApplication::clipboard()->text();
        EXPECT_FALSE(copied.isEmpty()) << name;
        withNumbers += copied.contains(comma);
        const QRegularExpressionMatch found = point.match(copied);
        EXPECT_FALSE(found.hasMatch())
            << name << ": "
            << copied.mid(std::max<qsizetype>(0, found.capturedStart() - 40), 80).toStdString();
        QApplication::clipboard()->clear();
    };
    window->copyNumbers();
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("time [s]\toutput [V]\t"));
    check("curves");
    inRooms([&](const std::string& name, QWidget& frame) {
        for (QPushButton* button : frame.findChildren<QPushButton*>()) {
            if (!english(button->text()).remove(u'&').startsWith(QLatin1String("Copy"))) continue;
            if (!button->isVisible() || !button->isEnabled()) continue;
            button->click();
            check(name + ", " + button->text().toStdString());
        }
    });
    EXPECT_GE(withNumbers, 7);
}

TEST_F(German, TablesHaveADecimalCommaUnlessTheUserTakesThePointAndVerbsHaveThePoint) {
    open("mole-light");
    const auto table = [&] {
        const QString path = inFolder("curves.csv");
        EXPECT_TRUE(window->exportTo(path));
        return bytesOf(path);
    };
    const QByteArray german = table();
    EXPECT_TRUE(german.startsWith("time [s];output [V];")) << german.left(80).toStdString();
    EXPECT_FALSE(german.contains('.'));
    EXPECT_TRUE(window->readyActions().exportParts(inFolder("parts.csv")));
    EXPECT_TRUE(bytesOf(inFolder("parts.csv")).startsWith("quantity;references;kind;"));
    app::setTableStyle(settings, io::pointCsv);
    const QByteArray plain = table();
    EXPECT_TRUE(plain.startsWith("time [s],output [V],"));
    EXPECT_EQ(io::inStyle(plain.toStdString(), io::commaCsv), german.toStdString());
    // As the verb `export` does it.
    app::setTableStyle(settings, io::commaCsv);
    const study::Study& study = *window->live().shown();
    EXPECT_TRUE(
        app::exportStudy(study, app::curvesPage(circuit(), circuit::PartSet::A), inFolder("verb.csv")));
    const QByteArray verb = bytesOf(inFolder("verb.csv"));
    EXPECT_TRUE(verb.startsWith("time [s],output [V],")) << verb.left(80).toStdString();
    EXPECT_FALSE(verb.contains(';'));
}

TEST_F(German, ButtonsAndBoxesOfTheToolkitAreGermanToo) {
    const QDialogButtonBox box(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    EXPECT_EQ(box.button(QDialogButtonBox::Cancel)->text().remove(u'&'), QStringLiteral("Abbrechen"));
    QDoubleSpinBox number;
    number.setValue(0.5);
    EXPECT_EQ(number.text(), QStringLiteral("0,50"));
}

TEST_F(German, FilesStayAsTheyAre) {
    open("mole-light");
    ASSERT_TRUE(window->document().saveAs(inFolder("own.blinkwright")));
    EXPECT_EQ(bytesOf(inFolder("own.blinkwright")), bytesOf(sample("mole-light")));
}

TEST(Language, TheSystemsOneIsTakenWhereThereIsATranslation) {
    EXPECT_TRUE(app::languages().contains(app::systemLanguage()));
    EXPECT_EQ(app::languages().front(), "en");
    for (const QString& code : app::languages()) EXPECT_FALSE(app::nameOf(code).isEmpty());
}

} // namespace
} // namespace blinkwright::test
