#include "app/help/help_pages.h"

#include "widgets/text/words.h"

#include <QFile>
#include <QLocale>
#include <QTextDocumentFragment>
#include <QVariant>
#include <QWidget>

namespace blinkwright::app::help {

using widgets::Words;

namespace {

constexpr char pageProperty[] = "helpPage";

QString pathOf(const QString& page, const QString& language) {
    return QStringLiteral(":/help/%1/%2.html").arg(language, page);
}

} // namespace

std::vector<PageGroup> pageGroups() {
    return {
        {Words::tr("The window"),
         {"window", "ready", "hookup", "pins", "values", "curves", "readings", "findings", "play", "sets"}},
        {Words::tr("Questions"), {"choose", "drawer", "trend", "spread", "why", "eye"}},
        {Words::tr("The real board"), {"bench", "measure", "import", "account", "symptoms"}},
        {Words::tr("Results and files"), {"labSheet", "export", "files", "verbs"}},
        {Words::tr("Reference"), {"works", "keys", "cautions"}}};
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
