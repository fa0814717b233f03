// Files of the window: opening, saving, and the question before changes would be lost.
#include "app/left_behind_dialog.h"
#include "app/main_window.h"
#include "app/measure/record_import_dialog.h"
#include "widgets/hookup/hookup_view.h"

#include <QApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace blinkwright::app {

namespace {

const QString ending = QStringLiteral(".blinkwright");

QString circuitFilter() {
    return MainWindow::tr("Circuit files (*.blinkwright);;All files (*)");
}

} // namespace

void MainWindow::startNew() {
    if (!mayLeave()) return;
    m_document.startWith();
    m_hookup->setFocus(Qt::OtherFocusReason);
}

bool MainWindow::openFile(const QString& path) {
    if (Result<void> done = m_document.open(path); !done) {
        tell(tr("The file was not opened"), done.fault());
        return false;
    }
    m_settings.addRecentFile(m_document.path());
    m_settings.setLastFolder(QFileInfo(m_document.path()).absolutePath());
    return true;
}

void MainWindow::openInstead(const QString& path) {
    if (!mayLeave()) return;
    if (!openFile(path) && !QFileInfo::exists(path)) m_settings.removeRecentFile(path);
}

void MainWindow::askOpen() {
    if (!mayLeave()) return;
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a circuit"), m_settings.lastFolder(), circuitFilter());
    if (!path.isEmpty()) openFile(path);
}

QString MainWindow::askRecordFile(QWidget* over) {
    return QFileDialog::getOpenFileName(
        over, tr("Import a record"), m_settings.lastFolder(),
        tr("Tables of an instrument (*.csv *.txt *.tsv *.dat);;All files (*)"));
}

void MainWindow::askImportRecord() {
    const QString path = askRecordFile(this);
    if (!path.isEmpty()) importRecord(path);
}

std::optional<circuit::Measurement> MainWindow::readRecord(QWidget* over, const QString& path) {
    auto measurement = RecordImportDialog::ask(over, path, m_appearance.theme());
    if (measurement) m_settings.setLastFolder(QFileInfo(path).absolutePath());
    return measurement;
}

void MainWindow::importRecord(const QString& path) {
    const auto measurement = readRecord(this, path);
    if (!measurement) return;
    circuit::Measurements all = m_document.circuit().measurements;
    all.push_back(std::make_shared<const circuit::Measurement>(*measurement));
    if (Result<void> done = m_document.apply({circuit::edits::SetMeasurements{
            std::move(all), tr("Import the record %1").arg(QFileInfo(path).fileName()).toStdString()}});
        !done)
        return tell(tr("The record was not imported"), done.fault());
    say(tr("Imported the record %1").arg(QFileInfo(path).fileName()));
}

bool MainWindow::save() {
    if (m_document.path().isEmpty()) return askSaveAs();
    if (!mayOverwrite()) return false;
    if (Result<void> done = m_document.save(); !done) return tellNotSaved(done.fault());
    say(tr("Saved"));
    return true;
}

bool MainWindow::askSaveAs() {
    QFileDialog dialog(this, tr("Save the circuit as"), m_settings.lastFolder(), circuitFilter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(ending.mid(1));
    if (!m_document.path().isEmpty()) dialog.selectFile(m_document.path());
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return false;
    if (Result<void> done = m_document.saveAs(dialog.selectedFiles().front()); !done)
        return tellNotSaved(done.fault());
    m_settings.addRecentFile(m_document.path());
    m_settings.setLastFolder(QFileInfo(m_document.path()).absolutePath());
    say(tr("Saved"));
    return true;
}

bool MainWindow::mayLeave() {
    if (!m_document.isModified()) return true;
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                    m_document.path().isEmpty() ? tr("The new circuit is not saved. Save it?")
                                                : tr("%1 has changes that are not saved. Save them?")
                                                      .arg(QFileInfo(m_document.path()).fileName()),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
    box.setTextFormat(Qt::PlainText);
    box.setDefaultButton(QMessageBox::Save);
    switch (box.exec()) {
    case QMessageBox::Save:
        return save();
    case QMessageBox::Discard:
        return true;
    default:
        return false;
    }
}

/// Says why, and offers another place. @return whether it is saved there
bool MainWindow::tellNotSaved(const Fault& fault) {
    QMessageBox box(QMessageBox::Warning, tr("The circuit was not saved"),
                    QString::fromStdString(fault.message()), QMessageBox::NoButton, this);
    box.setTextFormat(Qt::PlainText);
    const QPushButton* elsewhere = box.addButton(tr("Save &as…"), QMessageBox::AcceptRole);
    box.addButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == elsewhere && askSaveAs();
}

bool MainWindow::mayOverwrite() {
    const Document::OnDisk disk = m_document.onDisk();
    if (disk == Document::OnDisk::asItWas) return true;
    const QString name = QFileInfo(m_document.path()).fileName();
    const bool changed = disk == Document::OnDisk::changed;
    QMessageBox box(QMessageBox::Question, tr("The file is not as it was"),
                    changed ? tr("Another program has changed %1 since it was opened. Saving would overwrite "
                                 "that change.")
                                  .arg(name)
                            : tr("%1 has been moved or deleted since it was opened.").arg(name),
                    QMessageBox::NoButton, this);
    box.setTextFormat(Qt::PlainText);
    const QPushButton* over =
        box.addButton(changed ? tr("&Overwrite it") : tr("Save it &anew"), QMessageBox::DestructiveRole);
    QPushButton* elsewhere = box.addButton(tr("&Save as…"), QMessageBox::AcceptRole);
    box.addButton(QMessageBox::Cancel);
    box.setDefaultButton(elsewhere);
    box.exec();
    if (box.clickedButton() == over) return true;
    if (box.clickedButton() == elsewhere) askSaveAs();
    return false;
}

/// When the window comes up again: somebody else may have written the file meanwhile.
void MainWindow::askAboutDisk() {
    if (m_askingAboutDisk || m_document.onDisk() != Document::OnDisk::changed) return;
    m_askingAboutDisk = true;
    const QString name = QFileInfo(m_document.path()).fileName();
    QMessageBox box(
        QMessageBox::Question, tr("The file has changed"),
        m_document.isModified()
            ? tr("Another program has changed %1. Read it again, and lose what is not saved here?").arg(name)
            : tr("Another program has changed %1. Read it again?").arg(name),
        QMessageBox::NoButton, this);
    box.setTextFormat(Qt::PlainText);
    QPushButton* read = box.addButton(tr("&Read it again"), QMessageBox::DestructiveRole);
    QPushButton* keep = box.addButton(tr("&Keep what is open"), QMessageBox::RejectRole);
    box.setDefaultButton(m_document.isModified() ? keep : read);
    box.setEscapeButton(keep);
    box.exec();
    if (box.clickedButton() == read)
        openFile(m_document.path());
    else
        m_document.acceptDisk(); // asked once; saving then overwrites it
    m_askingAboutDisk = false;
}

bool MainWindow::event(QEvent* event) {
    if (event->type() == QEvent::WindowActivate && !QApplication::activeModalWidget())
        QTimer::singleShot(0, this, &MainWindow::askAboutDisk);
    return QMainWindow::event(event);
}

void MainWindow::offerLeftBehind() {
    std::vector<Recovery::Left> left = m_recovery->leftBehind();
    if (left.empty()) return;
    LeftBehindDialog dialog(this, std::move(left));
    connect(&dialog, &LeftBehindDialog::discardWished, m_recovery, &Recovery::discard);
    if (dialog.exec() != QDialog::Accepted || !dialog.chosen() || !mayLeave()) return;
    if (Result<void> done = m_recovery->takeUp(*dialog.chosen()); !done)
        tell(tr("The unsaved changes were not opened"), done.fault());
}

void MainWindow::tell(const QString& title, const Fault& fault) {
    QMessageBox box(QMessageBox::Warning, title, QString::fromStdString(fault.message()), QMessageBox::Ok,
                    this);
    box.setTextFormat(Qt::PlainText); // the sentence quotes what stands in a file
    box.exec();
}

} // namespace blinkwright::app
