#include "app/rooms/symptoms_room.h"

#include "app/page_file.h"
#include "app/whole_file.h"
#include "core/circuit/set_edits.h"
#include "core/study/wiring_list.h"
#include "widgets/bench/check_card_page.h"
#include "widgets/rooms/check_card_view.h"
#include "widgets/rooms/suspects_view.h"
#include "widgets/rooms/symptom_form.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

namespace blinkwright::app {

namespace {

constexpr int threads = 2;

} // namespace

SymptomsRoom::SymptomsRoom(const House& house)
    : Room(house, tr("Symptoms"), QStringLiteral("symptoms"), QSize(1180, 720)),
      m_form(new widgets::SymptomForm), m_suspects(new widgets::SuspectsView),
      m_card(new widgets::CheckCardView), m_pages(new QTabWidget), m_cautions(new QLabel) {
    makeBody();
    makeButtons();
    connect(m_form, &widgets::SymptomForm::changed, this, &SymptomsRoom::askSoon);
    connect(m_form, &widgets::SymptomForm::refused, this,
            [this](const QString& reason) { frame().setMessage(reason, true); });
    connect(m_suspects, &widgets::SuspectsView::placeActivated, this, [this](const QString& place) {
        if (this->house().showPlace) this->house().showPlace(place);
    });
    connect(&house.document, &Document::opened, m_form, &widgets::SymptomForm::reset);
    ready();
}

void SymptomsRoom::makeBody() {
    m_cautions->setObjectName(QStringLiteral("cautions"));
    m_cautions->setWordWrap(true);
    m_cautions->setTextFormat(Qt::PlainText);
    auto* both = new QSplitter(Qt::Horizontal);
    both->setChildrenCollapsible(false);
    for (QWidget* side : {static_cast<QWidget*>(m_form), static_cast<QWidget*>(m_suspects)}) {
        auto* margin = new QWidget;
        auto* layout = new QVBoxLayout(margin);
        layout->setContentsMargins(8, 8, 8, 8);
        layout->addWidget(side);
        both->addWidget(margin);
    }
    both->setStretchFactor(1, 1);
    m_pages->setObjectName(QStringLiteral("pages"));
    m_pages->addTab(both, tr("&Likely faults"));
    m_pages->addTab(m_card, tr("Chec&k card"));
    m_pages->setTabWhatsThis(0,
                             tr("What is seen and measured at the left, what is likely wrong at the right."));
    m_pages->setTabWhatsThis(
        1, tr("The readings to expect at each pin and lamp of a sound board, to print and take to the "
              "bench."));
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pages, 1);
    column->addWidget(m_cautions);
    frame().setBody(body);
}

void SymptomsRoom::makeButtons() {
    QPushButton* copy = frame().addButton(tr("Co&py as text"));
    copy->setWhatsThis(
        tr("Puts the page in front on the clipboard as text: the likely faults, or the card."));
    connect(copy, &QPushButton::clicked, this, &SymptomsRoom::copy);
    m_print = frame().addButton(tr("P&rint card…"));
    m_print->setWhatsThis(tr("Prints the check card on paper, with room for the readings."));
    connect(m_print, &QPushButton::clicked, this, &SymptomsRoom::print);
    m_export = frame().addButton(tr("E&xport card…"));
    m_export->setWhatsThis(tr("Writes the check card to a file, as a page (.pdf) or as text (.txt)."));
    connect(m_export, &QPushButton::clicked, this, [this] {
        askFile(tr("Export the check card"), tr("check-card"),
                {{tr("Page"), QStringLiteral("pdf")}, {tr("Text"), QStringLiteral("txt")}},
                [this](const QString& path) { return writeCard(path); });
    });
}

void SymptomsRoom::ask() {
    const bool same = m_known && m_known->set == set() && m_known->circuit.title == circuit().title &&
                      circuit::sameBoard(m_known->circuit, circuit(), set());
    const std::shared_ptr<const Known> known = same ? m_known : nullptr;
    const auto counter = m_counter = std::make_shared<Counter>();
    task().start([this, known, counter, circuit = circuit(), set = set(),
                  seen = m_form->observation()](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        auto now = known;
        if (!now) {
            auto library = study::faultLibrary(
                circuit, set,
                {.threads = threads, .cancel = &cancel, .done = &counter->done, .total = &counter->total});
            auto expected = study::expectedReadings(circuit, set, {.cancel = &cancel});
            if (!library || !expected)
                return [this, fault = library ? expected.fault() : library.fault()] {
                    clear();
                    answer(QString::fromStdString(fault.message()), true);
                };
            if (library.value().cancelled || expected.value().cancelled) return [] {};
            now = std::make_shared<const Known>(
                Known{circuit, set, std::make_shared<const study::FaultLibrary>(std::move(library).value()),
                      std::move(expected).value()});
        }
        return [this, now, diagnosis = diagnose(*now->library, seen)] { show(now, diagnosis); };
    });
}

void SymptomsRoom::show(const std::shared_ptr<const Known>& known, study::Diagnosis diagnosis) {
    const bool fresh = std::exchange(m_known, known) != known;
    if (fresh) {
        m_form->setLibrary(known->library);
        m_card->setCard(known->expected);
        QStringList cautions;
        for (const std::string& caution : study::buildCautions(known->circuit, known->set))
            cautions << QString::fromStdString(caution);
        m_cautions->setText(cautions.join(u' '));
    }
    m_suspects->setDiagnosis(known->library, std::move(diagnosis));
    const bool hasCard = !known->expected.rows.empty();
    m_print->setEnabled(hasCard);
    m_export->setEnabled(hasCard);
    say();
}

void SymptomsRoom::say() {
    const study::FaultLibrary& library = *m_known->library;
    if (library.cases.front().behaviour.state == study::BoardState::unknown)
        return answer(tr("The board as drawn comes to no settled state, so that there is nothing to compare "
                         "with."),
                      true);
    const study::Observation seen = m_form->observation();
    if (seen.symptoms.empty() && seen.readings.empty() && !seen.rate_Hz)
        return answer(tr("%1 single faults were simulated. Tick what is seen, or type a reading; until then "
                         "the order is by how often such faults happen.")
                          .arg(library.faults.size() - 1));
    answer(tr("%1 single faults were compared with what was seen and measured. Choose a row: its place is "
              "shown on the Hook-up.")
               .arg(library.faults.size() - 1));
}

void SymptomsRoom::clear() {
    m_known.reset();
    m_form->setLibrary(nullptr);
    m_suspects->clear();
    m_card->clear();
    m_cautions->clear();
    m_print->setEnabled(false);
    m_export->setEnabled(false);
}

void SymptomsRoom::copy() {
    if (m_pages->currentIndex() == 0) {
        QApplication::clipboard()->setText(m_suspects->asText());
        return house().say(tr("The likely faults are on the clipboard."));
    }
    if (!m_known) return;
    QApplication::clipboard()->setText(
        QString::fromStdString(study::checkCardText(m_known->circuit, m_known->set, m_known->expected)));
    house().say(tr("The check card is on the clipboard."));
}

void SymptomsRoom::print() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, &frame());
    dialog.setWindowTitle(tr("Print the check card"));
    if (dialog.exec() == QDialog::Accepted) printCard(printer);
}

void SymptomsRoom::printCard(QPrinter& printer) const {
    if (m_known) widgets::printCheckCard(printer, m_known->circuit, m_known->set, m_known->expected);
}

Result<void> SymptomsRoom::writeCard(const QString& path) const {
    if (!m_known) return notWritten(path, tr("there are no readings yet"));
    if (path.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive))
        return writePage(path, [this](QPrinter& printer) { printCard(printer); });
    return writeWhole(path, QByteArray::fromStdString(
                                study::checkCardText(m_known->circuit, m_known->set, m_known->expected)));
}

double SymptomsRoom::progress() const {
    const long total = m_counter->total;
    return total > 0 ? static_cast<double>(m_counter->done) / static_cast<double>(total) : -1;
}

void SymptomsRoom::showTheme(const widgets::Theme& theme) {
    m_form->setTheme(theme);
    m_suspects->setTheme(theme);
    m_card->setTheme(theme);
    QPalette palette = m_cautions->palette();
    palette.setColor(QPalette::WindowText, theme.caution);
    m_cautions->setPalette(palette);
}

} // namespace blinkwright::app
