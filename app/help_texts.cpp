#include "app/help_texts.h"

#include "app/icons.h"
#include "app/verbs/verb.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QVBoxLayout>

namespace blinkwright::app {

namespace {

struct HelpTexts {
    Q_DECLARE_TR_FUNCTIONS(HelpTexts)
};

void showText(QWidget* parent, const QString& title, const QString& html) {
    QDialog dialog(parent);
    dialog.setWindowTitle(title);
    auto* text = new QLabel(html);
    text->setTextFormat(Qt::RichText);
    text->setWordWrap(true);
    text->setMinimumWidth(480);
    text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(12);
    column->addWidget(text);
    column->addWidget(buttons);
    dialog.exec();
}

QString paragraph(const QString& head, const QString& body) {
    return QStringLiteral("<p><b>%1</b> %2</p>").arg(head, body);
}

} // namespace

void showCautions(QWidget* parent) {
    // Three flashes a second: W3C, Web Content Accessibility Guidelines 2.2, success criterion 2.3.1. The
    // rest is common practice, no source.
    const QString text =
        paragraph(HelpTexts::tr("Flicker."),
                  HelpTexts::tr(
                      "Light that flashes more than three times a second can bring on seizures in people "
                      "with photosensitive epilepsy, and may disturb others. Keep to three flashes a second "
                      "or fewer where people did not choose to look (the limit of WCAG 2.2, success "
                      "criterion 2.3.1), and warn your audience otherwise.")) +
        paragraph(
            HelpTexts::tr("Strong lamps."),
            HelpTexts::tr("Do not look into strong lamps from near by, least of all into blue, white or "
                          "infrared ones: infrared light does harm that you do not see.")) +
        paragraph(HelpTexts::tr("Capacitors and batteries."),
                  HelpTexts::tr(
                      "Electrolytic capacitors burst when they are put in the wrong way round or above their "
                      "rated voltage. A short-circuited battery gets hot; take it out before you rewire.")) +
        paragraph(HelpTexts::tr("What the numbers are."),
                  HelpTexts::tr(
                      "They are computed from typical values of the parts. Timers of different makers, and "
                      "capacitors above all, differ by tens of per cent; measure the board that you have "
                      "built before you rely on it. A blinker is no certified signal: where safety depends "
                      "on a light, local rules and licensed practice decide.")) +
        paragraph(
            HelpTexts::tr("Never mains."),
            HelpTexts::tr("All of this is for batteries and low voltage. Join none of it to the mains."));
    showText(parent, HelpTexts::tr("Cautions"), text);
}

void showAbout(QWidget* parent) {
    const std::string_view version = verbs::programVersion();
    const QString text =
        QStringLiteral("<h3>Blinkwright %1</h3>")
            .arg(QString::fromLatin1(version.data(), static_cast<qsizetype>(version.size()))) +
        QStringLiteral("<p>%1</p>")
            .arg(HelpTexts::tr("A workshop for lamp blinkers built on the 555 timer.")) +
        QStringLiteral("<p>%1</p>")
            .arg(HelpTexts::tr(
                "Free software under the GNU General Public License, version 3 or later. It comes "
                "without any warranty.")) +
        QStringLiteral(
            "<p>%1</p><ul><li>Qt %2 – LGPL 3</li><li>QCustomPlot – GPL 3</li><li>Eigen – MPL 2.0</li>"
            "<li>JSON for Modern C++ – MIT</li></ul>")
            .arg(HelpTexts::tr("Built with:"), QString::fromLatin1(qVersion()));
    showText(parent, HelpTexts::tr("About Blinkwright"), text);
}

} // namespace blinkwright::app
