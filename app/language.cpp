#include "app/language.h"

#include "core/base/wording.h"

#include <QCoreApplication>
#include <QFile>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace blinkwright::app {

namespace {

const QString english = QStringLiteral("en");

std::string translated(std::string_view text) {
    const QByteArray source(text.data(), static_cast<qsizetype>(text.size()));
    return QCoreApplication::translate("wording", source.constData()).toStdString();
}

/// The collector files a text by the class or the namespace around it, which outside the toolkit's own
/// classes is not always the name that it is asked for by: such a text is looked for under all names.
class OwnTexts : public QTranslator {
  public:
    explicit OwnTexts(QObject* parent) : QTranslator(parent) {
        QFile names(QStringLiteral(":/i18n/filed_under.txt"));
        if (names.open(QIODevice::ReadOnly)) m_names = names.readAll().split('\n');
    }
    QString translate(const char* context, const char* text, const char* comment, int n) const override {
        QString found = QTranslator::translate(context, text, comment, n);
        if (!found.isEmpty() || QByteArrayView(context).startsWith('Q')) return found; // the toolkit's own
        for (const QByteArray& name : m_names) {
            found = QTranslator::translate(name.constData(), text, comment, n);
            if (!found.isEmpty()) return found;
        }
        return found;
    }

  private:
    QList<QByteArray> m_names;
};

/// The translators in use; a change of language takes them away again.
QList<QTranslator*>& translators() {
    static QList<QTranslator*> all;
    return all;
}

void install(QTranslator* translator, const QString& name, const QString& folder) {
    if (translator->load(name, folder)) QCoreApplication::installTranslator(translator);
    translators().append(translator);
}

} // namespace

QList<QString> languages() {
    return {english, QStringLiteral("de")};
}

QString nameOf(const QString& language) {
    return language == english ? QStringLiteral("English") : QStringLiteral("Deutsch");
}

QString systemLanguage() {
    for (const QString& wanted : QLocale::system().uiLanguages()) {
        const QString code = wanted.section(u'-', 0, 0);
        if (languages().contains(code)) return code;
    }
    return english;
}

void speak(const QString& language) {
    const QString code = language.isEmpty() ? systemLanguage() : language;
    qDeleteAll(translators()); // a translator that goes takes its words along
    translators().clear();
    if (code == english) {
        QLocale::setDefault(QLocale(QLocale::English));
        wording::setTongue({});
        return;
    }
    // A region that the desktop states decides on dates; the language alone on signs in numbers.
    const QLocale desktop = QLocale::system();
    const QLocale locale = desktop.name().startsWith(code) ? desktop : QLocale(code);
    QLocale::setDefault(locale);
    QObject* owner = QCoreApplication::instance();
    install(new QTranslator(owner), QStringLiteral("qtbase_") + code,
            QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(new OwnTexts(owner), QStringLiteral("blinkwright_") + code, QStringLiteral(":/i18n"));
    wording::setTongue({translated, locale.decimalPoint().front().toLatin1()});
}

} // namespace blinkwright::app
