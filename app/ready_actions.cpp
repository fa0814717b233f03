#include "app/ready_actions.h"

#include "app/help/help_pages.h"
#include "app/page_file.h"
#include "app/ready_answers.h"
#include "app/save_question.h"
#include "core/study/wiring_list.h"
#include "widgets/bench/bench_dialog.h"
#include "widgets/bench/build_page.h"
#include "widgets/ready/ready_dialog.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>

namespace blinkwright::app {

ReadyActions::ReadyActions(QWidget& parent, Document& document, Settings& settings, Appearance& appearance,
                           Window window)
    : QObject(&parent), m_parent(parent), m_document(document), m_settings(settings),
      m_appearance(appearance), m_window(std::move(window)) {
    connect(&m_document, &Document::opened, this, [this] {
        if (m_bench) m_bench->clearTicks();
    });
    connect(&m_document, &Document::changed, this, &ReadyActions::refresh);
}

void ReadyActions::addNewTo(QMenu* menu) {
    QAction* action = menu->addAction(tr("New from a ready &blinker…"));
    action->setShortcut(QKeySequence(tr("Ctrl+Shift+N")));
    action->setWhatsThis(
        tr("Makes a whole circuit from a few answers: supply, lamp, flash rate and lit share. Its values "
           "are of preferred series, and it blinks as asked."));
    connect(action, &QAction::triggered, this, &ReadyActions::newFromReady);
}

void ReadyActions::addWiringListTo(QMenu* menu) {
    m_wiringList = menu->addAction(tr("&Wiring list…"));
    m_wiringList->setShortcut(QKeySequence(tr("Ctrl+L")));
    m_wiringList->setWhatsThis(
        tr("Steps for wiring the circuit on the bench, to be ticked off, and a list of its parts "
           "with their markings."));
    connect(m_wiringList, &QAction::triggered, this, &ReadyActions::showWiringList);
    refresh();
}

void ReadyActions::newFromReady() {
    if (!m_window.mayLeave()) return;
    widgets::ReadyDialog dialog(m_appearance.theme(), &m_parent);
    help::setPage(&dialog, QStringLiteral("ready"));
    connect(&m_appearance, &Appearance::themeChanged, &dialog, &widgets::ReadyDialog::setTheme);
    restoreAnswers(m_settings, dialog);
    const bool made = dialog.exec() == QDialog::Accepted;
    keepAnswers(m_settings, dialog);
    if (!made) return;
    m_document.startWith(dialog.circuit());
    m_window.say(tr("Made %1").arg(QString::fromStdString(dialog.circuit().title)));
}

void ReadyActions::showWiringList() {
    if (!m_bench) {
        m_bench = new widgets::BenchDialog(m_appearance.theme(), &m_parent);
        help::setPage(m_bench, QStringLiteral("bench"));
        connect(&m_appearance, &Appearance::themeChanged, m_bench, &widgets::BenchDialog::setTheme);
        connect(m_bench, &widgets::BenchDialog::setChosen, this, [this](circuit::PartSet set) {
            m_shownSet = set;
            refresh();
        });
        connect(m_bench, &widgets::BenchDialog::copyWished, this, &ReadyActions::copyText);
        connect(m_bench, &widgets::BenchDialog::printWished, this, &ReadyActions::print);
        connect(m_bench, &widgets::BenchDialog::pdfWished, this, [this] {
            askFile(tr("Save the wiring list"), tr("Document page"), QStringLiteral("pdf"),
                    &ReadyActions::exportPage);
        });
        connect(m_bench, &widgets::BenchDialog::exportWished, this, [this] {
            askFile(tr("Export the parts list"), tr("Table"), QStringLiteral("csv"),
                    &ReadyActions::exportParts);
        });
    }
    refresh();
    m_bench->show();
    m_bench->raise();
    m_bench->activateWindow();
}

void ReadyActions::refresh() {
    if (m_wiringList) m_wiringList->setEnabled(!m_document.circuit().parts().empty());
    // Ticks are kept while the list is closed too: it follows the document all the time once it was open.
    if (m_bench) m_bench->showCircuit(m_document.circuit(), m_shownSet);
}

void ReadyActions::copyText() {
    QApplication::clipboard()->setText(
        QString::fromStdString(study::buildText(m_document.circuit(), m_shownSet)));
    m_window.say(tr("The wiring list is on the clipboard."));
}

void ReadyActions::print() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, m_bench);
    dialog.setWindowTitle(tr("Print the wiring list"));
    if (dialog.exec() != QDialog::Accepted) return;
    widgets::printBuildPage(printer, m_document.circuit(), m_shownSet);
}

Result<void> ReadyActions::exportParts(const QString& path) const {
    return writeTable(path, study::partsCsv(study::partsList(m_document.circuit(), m_shownSet)), m_settings);
}

Result<void> ReadyActions::exportPage(const QString& path) const {
    return writePage(path, [this](QPrinter& printer) {
        widgets::printBuildPage(printer, m_document.circuit(), m_shownSet);
    });
}

void ReadyActions::askFile(const QString& title, const QString& kind, const QString& ending,
                           Result<void> (ReadyActions::*write)(const QString&) const) {
    const QString stem = QFileInfo(m_document.path()).completeBaseName();
    const QString name = (stem.isEmpty() ? tr("circuit") : stem) + QStringLiteral("-") +
                         (ending == QLatin1String("csv") ? tr("parts") : tr("wiring"));
    const QString path = askWhere(m_bench, {title, name, {{kind, ending}}}, m_settings);
    if (path.isEmpty()) return;
    if (Result<void> done = (this->*write)(path); !done)
        return m_window.tell(tr("The file was not written"), done.fault());
    m_window.say(tr("Exported to %1").arg(QFileInfo(path).fileName()));
}

} // namespace blinkwright::app
