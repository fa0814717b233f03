#include "widgets/bench/build_page.h"

#include "core/study/wiring_list.h"

#include <QCoreApplication>
#include <QPrinter>
#include <QTextDocument>

namespace blinkwright::widgets {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("BuildPage", text);
}
QString escaped(const std::string& text) {
    return QString::fromStdString(text).toHtmlEscaped();
}

QString pageHtml(const circuit::Circuit& circuit, circuit::PartSet set) {
    QString html = QStringLiteral("<h2>%1</h2>").arg(escaped(circuit.title));
    if (const std::string heading = study::setHeading(circuit, set); !heading.empty())
        html += QStringLiteral("<p>%1</p>").arg(escaped(heading));
    html +=
        QStringLiteral("<h3>%1</h3><table cellpadding='2' width='100%'>").arg(tr("Parts").toHtmlEscaped());
    for (const study::PartsRow& row : study::partsList(circuit, set)) {
        QStringList refs;
        for (const std::string& ref : row.refs) refs << QString::fromStdString(ref);
        html +=
            QStringLiteral("<tr><td align='right'>%1 \u00D7&nbsp;</td><td>%2</td><td>%3</td><td>%4</td></tr>")
                .arg(QString::number(row.refs.size()), escaped(row.description), escaped(row.marking),
                     refs.join(QStringLiteral(", ")).toHtmlEscaped());
    }
    html += QStringLiteral("</table><h3>%1</h3><table cellpadding='2'>").arg(tr("Wiring").toHtmlEscaped());
    int number = 0;
    for (const study::BuildStep& step : study::wiringList(circuit, set))
        html += QStringLiteral("<tr><td>\u2610&nbsp;</td><td align='right'>%1.&nbsp;</td><td>%2</td></tr>")
                    .arg(QString::number(++number), escaped(step.text));
    return html + QStringLiteral("</table>");
}

} // namespace

void printBuildPage(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set) {
    QTextDocument page;
    QFont font(QStringLiteral("sans-serif"));
    font.setPointSizeF(10);
    page.setDefaultFont(font);
    page.setDefaultStyleSheet(QStringLiteral("body, td, h2, h3 { color: black; }"));
    page.setHtml(pageHtml(circuit, set));
    printer.setDocName(QString::fromStdString(circuit.title));
    page.print(&printer);
}

} // namespace blinkwright::widgets
