#include "app/help/help_pages.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QTextDocumentFragment>
#include <QVariant>
#include <QWidget>

namespace blinkwright::app::help {

namespace {

constexpr char pageProperty[] = "helpPage";

struct HelpPages {
    Q_DECLARE_TR_FUNCTIONS(HelpPages)
};

QString pathOf(const QString& page, const QString& language) {
    return QStringLiteral(":/help/%1/%2.html").arg(language, page);
}

} // namespace

std::vector<PageGroup> pageGroups() {
    return {
        {HelpPages::tr("The window"),
         {"window", "ready", "hookup", "pins", "values", "curves", "readings", "findings", "play", "sets"}},
        {HelpPages::tr("Questions"), {"choose", "drawer", "trend", "spread", "why", "eye"}},
        {HelpPages::tr("The real board"), {"bench", "measure", "import", "account", "symptoms"}},
        {HelpPages::tr("Results and files"), {"labSheet", "export", "files", "verbs"}},
        {HelpPages::tr("Reference"), {"works", "keys", "cautions"}}};
}

QStringList pageNames() {
    QStringList all;
    for (const PageGroup& group : pageGroups()) all += group.pages;
    return all;
}

QString pageLanguage() {
    const QString wanted = QLocale().name().section(u'_', 0, 0);
    const bool there = QFile::exists(pathOf(QStringLiteral("window"), wanted));
    return there ? wanted : QStringLiteral("en");
}

QString pageText(const QString& page, const QString& language) {
    QFile file(pathOf(page, language));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString pageTitle(const QString& page) {
    const QString heading = pageText(page).section(QStringLiteral("<h1>"), 1, 1).section(u'<', 0, 0);
    return QTextDocumentFragment::fromHtml(heading).toPlainText();
}

void setPage(QWidget* widget, const QString& page) {
    widget->setProperty(pageProperty, page);
}

QString pageOf(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget())
        if (const QVariant page = widget->property(pageProperty); page.isValid()) return page.toString();
    return QStringLiteral("window");
}

} // namespace blinkwright::app::help
