#include "app/language.h"

#include "core/base/wording.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QPointer>
#include <QTranslator>

namespace blinkwright::app {

namespace {

const QString english = QStringLiteral("en");

/// The translators in use; a change of language takes them away again.
QList<QTranslator*>& translators() {
    static QList<QTranslator*> all;
    return all;
}

const QTranslator* install(const QString& name, const QString& folder) {
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (translator->load(name, folder)) QCoreApplication::installTranslator(translator);
    translators().append(translator);
    return translator;
}

/// A text of core. The collector files it under the namespace `wording`, with or without the one around that.
std::string translated(const QTranslator* own, std::string_view text) {
    const QByteArray source(text.data(), static_cast<qsizetype>(text.size()));
    QString found = own ? own->translate("blinkwright::wording", source.constData()) : QString();
    if (found.isEmpty()) found = QCoreApplication::translate("wording", source.constData());
    return found.toStdString();
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
        QString code = wanted.section(u'-', 0, 0);
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
    install(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    const QTranslator* own = install(QStringLiteral("blinkwright_") + code, QStringLiteral(":/i18n"));
    wording::setTongue({[kept = QPointer(own)](std::string_view text) { return translated(kept, text); },
                        locale.decimalPoint().front().toLatin1()});
}

} // namespace blinkwright::app
