// Exports of the window: curves to files, pictures and readings to the clipboard.
#include "app/band_behind.h"
#include "app/export_dialog.h"
#include "app/exporter.h"
#include "app/main_window.h"
#include "app/measured_panels.h"
#include "app/save_question.h"
#include "app/second_set.h"
#include "app/set_actions.h"
#include "core/base/wording.h"
#include "widgets/curves/curves_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QClipboard>
#include <QFileInfo>

namespace blinkwright::app {

namespace {

std::vector<std::pair<QString, QString>> kinds() {
    return {{MainWindow::tr("Picture, 300 dpi"), QStringLiteral("png")},
            {MainWindow::tr("Drawing"), QStringLiteral("svg")},
            {MainWindow::tr("Document page"), QStringLiteral("pdf")},
            {MainWindow::tr("Table of numbers"), QStringLiteral("csv")}};
}

constexpr char exportAnswers[] = "export";

} // namespace

struct MainWindow::Exported {
    std::shared_ptr<const study::Study> keptA, keptB;
    StudiesToExport studies;
    widgets::CurvesPage page;
};

MainWindow::Exported MainWindow::exported() const {
    return exported(ExportChoice::from(m_settings.answers(QLatin1String(exportAnswers))),
                    m_setActions->exported());
}

MainWindow::Exported MainWindow::exported(const ExportChoice& choice, ExportedSets wanted) const {
    Exported out;
    out.keptA = m_live->shown();
    if (m_second->isApart()) out.keptB = m_second->shown();
    StudiesToExport& studies = out.studies;
    if (wanted != ExportedSets::second) studies.first = out.keptA.get();
    if (wanted != ExportedSets::first) studies.second = out.keptB.get();
    studies.secondName = m_second->name();
    studies.secondBrief = m_second->brief();
    studies.band = m_band->shown();
    studies.records = m_measured->records();

    using circuit::PartSet;
    out.page = curvesPage(m_document.circuit(), PartSet::A);
    choice.applyTo(out.page, m_curves->visibleSpan(), m_curves->moment_s());
    if (!studies.second) return out;
    const QString line = tr("%1: %2");
    const bool both = studies.first != nullptr;
    const bool sameCircuit = !m_second->comparesFile();
    const QString theirs = partValues(m_second->circuit(), m_second->set(),
                                      both && sameCircuit ? std::optional(PartSet::A) : std::nullopt);
    const QString second = line.arg(m_second->name(), theirs);
    out.page.values = both ? line.arg(tr("Set A"), out.page.values) + QLatin1Char('\n') + second : second;
    return out;
}

Result<void> MainWindow::exportTo(const QString& path) {
    const Exported all = exported();
    return exportStudies(all.studies, all.page, path, tableStyle(m_settings));
}

void MainWindow::askExport() {
    ExportDialog dialog(this, ExportChoice::from(m_settings.answers(QLatin1String(exportAnswers))),
                        m_setActions->exported(), m_second->isApart() ? m_second->name() : QString(),
                        [this](const ExportChoice& choice, ExportedSets sets, int dpi) {
                            Exported all = exported(choice, sets);
                            all.page.dpi = dpi;
                            return widgets::curvesPicture(all.studies.curves(), all.page);
                        });
    connect(&dialog, &ExportDialog::changed, this, [this, &dialog] {
        m_settings.setAnswers(QLatin1String(exportAnswers), dialog.choice().kept());
        m_setActions->setExported(dialog.sets());
    });
    connect(&dialog, &ExportDialog::saveWished, this, [this, &dialog] { askExportFile(&dialog); });
    connect(&dialog, &ExportDialog::copyPictureWished, this, &MainWindow::copyPicture);
    connect(&dialog, &ExportDialog::copyDataWished, this, &MainWindow::copyNumbers);
    dialog.exec();
}

void MainWindow::askExportFile(QWidget* over) {
    const QString stem = QFileInfo(m_document.path()).completeBaseName();
    const QString path = askWhere(over,
                                  {tr("Export the curves"), stem.isEmpty() ? tr("curves") : stem, kinds(),
                                   m_settings.exportEnding(), tr("Export")},
                                  m_settings);
    if (path.isEmpty()) return;
    if (Result<void> done = exportTo(path); !done)
        return tell(tr("The curves were not exported"), done.fault());
    m_settings.setExportEnding(QFileInfo(path).suffix().toLower());
    say(tr("Exported to %1").arg(QFileInfo(path).fileName()));
}

void MainWindow::copyPicture() {
    const Exported all = exported();
    if (all.studies.empty()) return say(tr("There are no curves to copy."));
    QApplication::clipboard()->setImage(widgets::curvesPicture(all.studies.curves(), all.page));
    say(tr("The picture of the curves is on the clipboard."));
}

void MainWindow::copyNumbers() {
    const Exported all = exported();
    if (all.studies.empty()) return say(tr("There are no curves to copy."));
    // A spreadsheet takes tabs from the clipboard, and numbers as its language writes them.
    const std::string table = curvesTable(all.studies, all.page.span);
    QString text = QString::fromStdString(io::inStyle(table, {'\t', wording::decimalSign()}));
    QApplication::clipboard()->setText(text.remove(u'\r'));
    say(tr("The numbers of the curves are on the clipboard."));
}

void MainWindow::copyReadings() {
    if (!m_live->shown()) return say(tr("There are no readings to copy."));
    QApplication::clipboard()->setText(m_readings->asText());
    say(tr("The readings are on the clipboard."));
}

} // namespace blinkwright::app
