// The pages of the help by themselves: all there, in both languages, with nothing missing.
#include "app/help/help_browser.h"
#include "app/help/help_formulas.h"
#include "app/help/help_pages.h"
#include "app/language.h"

#include <QAbstractTextDocumentLayout>
#include <QDirIterator>
#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QTest>
#include <QTextBlock>

#include <gtest/gtest.h>

namespace blinkwright::app::help {
namespace {

const QStringList spoken{"en", "de"};

QStringList all(const QString& text, const char* expression) {
    QStringList found;
    auto matches = QRegularExpression(QLatin1String(expression)).globalMatch(text);
    while (matches.hasNext()) found << matches.next().captured(1);
    return found;
}

TEST(HelpPages, AreThereInBothLanguages) {
    ASSERT_GT(pageNames().size(), 25);
    for (const QString& language : spoken)
        for (const QString& page : pageNames()) {
            const QString text = pageText(page, language);
            EXPECT_EQ(all(text, "<h1>(.+)</h1>").size(), 1)
                << page.toStdString() << " " << language.toStdString();
            EXPECT_GT(text.size(), 300) << page.toStdString() << " " << language.toStdString();
        }
}

TEST(HelpPages, AreAllInTheList) {
    for (const QString& language : spoken) {
        QStringList files;
        QDirIterator found(QStringLiteral(":/help/") + language);
        while (found.hasNext()) files << QFileInfo(found.next()).completeBaseName();
        QStringList names = pageNames();
        files.sort();
        names.sort();
        EXPECT_EQ(files, names);
    }
}

TEST(HelpPages, LinkOnlyToPagesThatAreThere) {
    for (const QString& language : spoken)
        for (const QString& page : pageNames())
            for (const QString& link : all(pageText(page, language), "href=\"([^\"]*)\"")) {
                EXPECT_TRUE(link.startsWith("help:") && pageNames().contains(link.mid(5)))
                    << link.toStdString() << " in " << page.toStdString();
                EXPECT_NE(link.mid(5), page) << "a link to the page itself";
            }
}

TEST(HelpPages, AreEachReachedByALinkFromAnother) {
    QSet<QString> reached;
    for (const QString& page : pageNames())
        for (const QString& link : all(pageText(page, "en"), "href=\"help:([^\"]*)\"")) reached << link;
    for (const QString& page : pageNames())
        EXPECT_TRUE(page == "window" || reached.contains(page)) << page.toStdString();
}

TEST(HelpPages, HaveTheSamePicturesFormulasAndKeysInBothLanguages) {
    for (const QString& page : pageNames())
        for (const char* what : {"src=\"([^\"]*)\"", "<kbd>(.*?)</kbd>", "href=\"([^\"]*)\""}) {
            QStringList english = all(pageText(page, "en"), what), german = all(pageText(page, "de"), what);
            english.sort(); // a sentence may put them in another order
            german.sort();
            EXPECT_EQ(english, german) << page.toStdString();
        }
}

TEST(HelpPages, HaveTheirPicturesAndFormulas) {
    HelpBrowser browser([] { return QString(); });
    for (const QString& page : pageNames())
        for (const QString& source : all(pageText(page, "en"), "src=\"([^\"]*)\"")) {
            const QVariant resource = browser.loadResource(QTextDocument::ImageResource, QUrl(source));
            const auto image = resource.value<QImage>();
            EXPECT_FALSE(image.isNull()) << source.toStdString() << " in " << page.toStdString();
            if (source.startsWith("picture:")) {
                EXPECT_GE(image.width(), 300) << source.toStdString();
            }
        }
}

TEST(HelpPages, HavePicturesOfAtMost60kB) {
    QDirIterator found(QStringLiteral(":/help/pictures"));
    while (found.hasNext()) {
        QFile file(found.next());
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_LE(file.size(), 60 * 1024) << file.fileName().toStdString();
    }
}

TEST(HelpPages, AreReadInTheLanguageOfTheWindow) {
    speak("de");
    EXPECT_EQ(pageLanguage(), "de");
    EXPECT_EQ(pageTitle("values"), "Werte");
    speak("en");
    EXPECT_EQ(pageTitle("values"), "Values");
    QLocale::setDefault(QLocale(QLocale::Finnish));
    EXPECT_EQ(pageLanguage(), "en") << "where there are no pages in a language";
    speak("en");
}

TEST(HelpFormulas, AreAllShownSomewhere) {
    QString whole;
    for (const QString& page : pageNames()) whole += pageText(page, "en");
    for (const QString& name : formulaNames())
        EXPECT_TRUE(whole.contains("formula:" + name + "\"")) << name.toStdString();
}

TEST(HelpFormulas, AreTheTextbooks) {
    const auto words = [](const char* name) {
        QString text = plainText(*formulaNamed(name));
        return text.remove(QChar(0x2009)).toStdString();
    };
    // The exact formulas for thresholds at a third and two thirds; with pin 5 at k of the supply, the
    // capacitor goes from k/2 to k: ln((1 - k/2) / (1 - k)).
    EXPECT_EQ(words("high"), "tH = ln 2(R1 + R2)C");
    EXPECT_EQ(words("low"), "tL = ln 2R2C");
    EXPECT_EQ(words("period"), "T = tH + tL");
    EXPECT_EQ(words("duty"), "D = tH/T");
    EXPECT_EQ(words("first"), "t1 = ln 3(R1 + R2)C");
    EXPECT_EQ(words("high-diode"), "tH = ln 2R1C");
    EXPECT_EQ(words("high-single"), "tH = ln 2R2C");
    EXPECT_EQ(words("high-control"), "tH = (R1 + R2)Cln (1 − k/2)/(1 − k)");
    EXPECT_EQ(words("rectangle"), "u = a/√3");
}

TEST(HelpFormulas, AreSharpAndInTheColourOfTheText) {
    QFont font;
    font.setPixelSize(18);
    const auto formula = *formulaNamed("charge");
    const QImage once = formulaImage(formula, font, Qt::red, 1),
                 twice = formulaImage(formula, font, Qt::red, 2);
    EXPECT_NEAR(twice.width(), 2 * once.width(), 2);
    EXPECT_NEAR(twice.deviceIndependentSize().width(), once.width(), 1);
    int inked = 0;
    for (int y = 0; y < twice.height(); ++y)
        for (int x = 0; x < twice.width(); ++x) {
            const QColor dot = twice.pixelColor(x, y);
            if (dot.alpha() < 250) continue;
            ++inked;
            EXPECT_EQ(dot.rgb(), QColor(Qt::red).rgb());
        }
    EXPECT_GT(inked, 100);
}

TEST(HelpBrowser, LaysPicturesOnALightCardInDarkLooksToo) {
    using widgets::Theme;
    HelpBrowser browser([] { return QString(); });
    const QImage picture(":/help/pictures/curves.png");
    for (const Theme::Mode mode : {Theme::Mode::light, Theme::Mode::dark}) {
        browser.setTheme(Theme::of(mode));
        const auto card =
            browser.loadResource(QTextDocument::ImageResource, QUrl("picture:curves")).value<QImage>();
        const QSize edges = card.size() - picture.size();
        ASSERT_GE(edges.width(), 8);
        const QPoint left(edges.width() / 4, card.height() / 2);
        EXPECT_EQ(card.pixelColor(left), Theme::of(Theme::Mode::light).window);
        EXPECT_EQ(card.pixelColor(0, card.height() / 2), Theme::of(mode).frame);
        const QPoint within(picture.width() / 2, 3);
        EXPECT_EQ(card.pixelColor(within + QPoint(edges.width(), edges.height()) / 2),
                  picture.pixelColor(within));
    }
}

TEST(HelpBrowser, LeavesNoGapUnderAPicture) {
    HelpBrowser browser([] { return QString(); });
    browser.resize(900, 600);
    browser.setTheme(widgets::Theme::of(widgets::Theme::Mode::light));
    int pictures = 0;
    for (const QString& page : pageNames()) {
        browser.setSource(QUrl("help:" + page));
        for (QTextBlock block = browser.document()->begin(); block.isValid(); block = block.next())
            for (auto part = block.begin(); !part.atEnd(); ++part) {
                const QString name = part.fragment().charFormat().toImageFormat().name();
                if (!name.startsWith("picture:")) continue;
                const auto image =
                    browser.loadResource(QTextDocument::ImageResource, QUrl(name)).value<QImage>();
                EXPECT_LE(browser.document()->documentLayout()->blockBoundingRect(block).height(),
                          image.height() + browser.fontMetrics().lineSpacing())
                    << page.toStdString();
                ++pictures;
            }
    }
    EXPECT_GT(pictures, 15);
}

TEST(HelpBrowser, GivesFormulasInWordsToThoseWhoCannotSeeThem) {
    HelpBrowser browser([] { return QString(); });
    browser.setSource(QUrl("help:works"));
    QStringList words;
    for (QTextBlock block = browser.document()->begin(); block.isValid(); block = block.next())
        for (auto part = block.begin(); !part.atEnd(); ++part) {
            const QTextImageFormat image = part.fragment().charFormat().toImageFormat();
            if (image.name().startsWith("formula:"))
                words << image.property(QTextFormat::ImageAltText).toString();
        }
    ASSERT_GT(words.size(), 8);
    for (const QString& one : words) EXPECT_TRUE(one.contains('=')) << one.toStdString();
}

} // namespace
} // namespace blinkwright::app::help
