#include "app/help/help_keys.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>

namespace blinkwright::app::help {

namespace {

/// A menu's text without the marks of its letters, and without a key that stands in it.
QString wordsOf(const QAction& action) {
    QString text = action.text().section(u'\t', 0, 0);
    static const QRegularExpression letter(QStringLiteral("&(.)"));
    return text.replace(letter, QStringLiteral("\\1"));
}

QString keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& one : action.shortcuts()) keys << one.toString(QKeySequence::NativeText);
    if (keys.isEmpty()) keys << action.text().section(u'\t', 1, 1);
    keys.removeAll({});
    return keys.join(QStringLiteral(", "));
}

void collect(const QMenu& menu, QString& rows) {
    for (const QAction* action : menu.actions()) {
        if (const QString keys = keysOf(*action); !keys.isEmpty())
            rows += QStringLiteral("<tr><td>%1</td><td>%2</td></tr>")
                        .arg(keys.toHtmlEscaped(), wordsOf(*action).toHtmlEscaped());
        if (action->menu()) collect(*action->menu(), rows);
    }
}

} // namespace

QString keysTable(const QMenuBar& bar) {
    QString html;
    for (const QAction* action : bar.actions()) {
        QString rows;
        if (action->menu()) collect(*action->menu(), rows);
        if (!rows.isEmpty())
            html +=
                QStringLiteral("<h2>%1</h2><table>%2</table>").arg(wordsOf(*action).toHtmlEscaped(), rows);
    }
    return html;
}

} // namespace blinkwright::app::help
