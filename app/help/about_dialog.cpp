#include "app/help/about_dialog.h"

#include "app/help/licences.h"
#include "app/icons.h"
#include "app/verbs/verb.h"
#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QVBoxLayout>

namespace blinkwright::app::help {

namespace {

constexpr int iconSize = 56, textWidth = 460;

QString table(bool testsOnly) {
    QString rows;
    for (const Library& library : libraries())
        if (library.testsOnly == testsOnly)
            rows += QStringLiteral("<tr><td style=\"padding-right: 24px\">%1 %2</td><td>%3</td></tr>")
                        .arg(library.name, library.version, library.licence);
    return QStringLiteral("<table>%1</table>").arg(rows);
}

QString paragraph(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text);
}

} // namespace

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("About Blinkwright"));
    const std::string_view version = verbs::programVersion();
    m_text = QStringLiteral("<h2>Blinkwright %1</h2>")
                 .arg(QString::fromLatin1(version.data(), static_cast<qsizetype>(version.size()))) +
             paragraph(tr("A workshop for lamp blinkers built on the 555 timer.")) +
             paragraph(tr("Copyright 2026 The Blinkwright developers. Licence: GPL-3.0-or-later.")) +
             paragraph(
                 tr("This program is free software: you may pass it on and change it under the terms of the "
                    "GNU General Public License as the Free Software Foundation publishes it, version 3 or "
                    "(at your option) any later one. It comes without any warranty. The licence is at %1.")
                     .arg(QStringLiteral("<a href=\"https://www.gnu.org/licenses/\">gnu.org/licenses</a>"))) +
             paragraph(tr("Built with:")) + table(false) +
             paragraph(tr("In its tests and benchmarks only:")) + table(true);
    auto* icon = new QLabel;
    icon->setPixmap(programIcon().pixmap(iconSize));
    icon->setAlignment(Qt::AlignTop);
    auto* text = new QLabel(m_text);
    text->setObjectName(QStringLiteral("about"));
    text->setTextFormat(Qt::RichText);
    text->setWordWrap(true);
    widgets::sizedByText(*text, [text] { text->setMinimumWidth(widgets::withText(*text, textWidth)); });
    text->setOpenExternalLinks(true);
    text->setTextInteractionFlags(Qt::TextBrowserInteraction);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* about = new QWidget;
    auto* row = new QHBoxLayout(about);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(icon);
    row->addWidget(text, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->addWidget(new widgets::ScrolledForm(about, windowTitle()), 1);
    column->addWidget(buttons);
    widgets::growWithTexts(*this);
}

QString AboutDialog::text() const {
    return m_text;
}

} // namespace blinkwright::app::help
