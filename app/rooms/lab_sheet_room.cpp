#include "app/rooms/lab_sheet_room.h"

#include "app/sheet/page_layout.h"
#include "app/sheet/pdf_sheet.h"
#include "app/sheet/sheet_file.h"
#include "app/sheet/sheet_form.h"
#include "app/sheet/sheet_preview.h"
#include "core/circuit/set_edits.h"
#include "core/study/cause.h"
#include "widgets/text/text_sized.h"

#include <QDateTime>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

namespace blinkwright::app {

namespace {

constexpr int typing_ms = 200, formWidth = 430;
const QString habits = QStringLiteral("lab sheet"), texts = QStringLiteral("lab sheet texts");
const QString when = QStringLiteral("when");
/// Circuits whose texts are remembered: beyond, the one that was longest ago is forgotten.
constexpr int mostRemembered = 50;

} // namespace

LabSheetRoom::LabSheetRoom(const House& house)
    : Room(house, tr("Lab sheet"), QStringLiteral("labSheet"), QSize(1080, 820)),
      m_form(new sheet::SheetForm), m_preview(new sheet::SheetPreview) {
    m_typing.setSingleShot(true);
    m_typing.setInterval(typing_ms);
    m_form->setHabits(house.settings.answers(habits));
    takeTexts();
    makeFrame();
    connect(&m_typing, &QTimer::timeout, this, &LabSheetRoom::showSheet);
    connect(m_form, &sheet::SheetForm::wordsChanged, &m_typing, qOverload<>(&QTimer::start));
    connect(m_form, &sheet::SheetForm::choiceChanged, this, &LabSheetRoom::choose);
    connect(&house.document, &Document::opened, this, [this] {
        keepWords();
        takeTexts();
    });
    ready();
}

LabSheetRoom::~LabSheetRoom() {
    keepWords();
}

void LabSheetRoom::makeFrame() {
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_form);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    widgets::sizedByText(*scroll, [scroll] { scroll->setFixedWidth(widgets::withText(*scroll, formWidth)); });
    scroll->setFocusPolicy(Qt::NoFocus);
    m_form->layout()->setContentsMargins(0, 0, 10, 0); // clear of the bar
    auto* body = new QWidget;
    auto* both = new QHBoxLayout(body);
    both->setContentsMargins(0, 0, 0, 0);
    both->addWidget(scroll);
    both->addWidget(m_preview, 1);
    frame().setBody(body);
    const auto button = [this](const QString& text, const char* objectName, const QString& meaning,
                               auto done) {
        QPushButton* made = frame().addButton(text);
        made->setWhatsThis(meaning);
        made->setObjectName(QLatin1String(objectName));
        connect(made, &QPushButton::clicked, this, done);
        m_needSheet.push_back(made);
    };
    button(tr("Save as PD&F…"), "pdf",
           tr("Writes the sheet as pages that look everywhere as in the preview."),
           [this] { save(QStringLiteral("pdf"), tr("Document pages")); });
    button(tr("Save as HTM&L…"), "html", tr("Writes the sheet as one web page, with its pictures in it."),
           [this] { save(QStringLiteral("html"), tr("Web page")); });
    button(tr("Save as ODT…"), "odt",
           tr("Writes the sheet as a document in which a word processor can change everything."),
           [this] { save(QStringLiteral("odt"), tr("Word processor document")); });
    button(tr("Pr&int…"), "print", tr("Prints the sheet as the preview shows it."), [this] { print(); });
    for (QPushButton* made : m_needSheet) made->setEnabled(false);
}

study::LabFactsRequest LabSheetRoom::request() const {
    study::LabFactsRequest request;
    const sheet::SheetChoice choice = m_form->choice();
    if (set() == circuit::PartSet::B)
        request.sets = study::SheetSets::onlyB;
    else
        request.sets = m_form->besideB() ? study::SheetSets::both : study::SheetSets::onlyA;
    request.variant = m_form->variant();
    request.why = sheet::tellsWhy(choice);
    request.spread = sheet::tellsSpread(choice);
    request.run.flashes = circuit().run.flashes;
    request.run.begin = circuit().run.begin;
    return request;
}

void LabSheetRoom::ask() {
    m_form->setBesideOffered(!circuit::setsAgree(circuit()) && set() == circuit::PartSet::A);
    auto done = std::make_shared<std::atomic<long>>(0);
    study::LabFactsRequest wanted = request();
    wanted.done = done.get();
    m_done = done;
    m_boards = wanted.spread ? wanted.boards : 0;
    task().start([this, circuit = circuit(), wanted,
                  done](const std::atomic<bool>& cancel) mutable -> NewestTask::Answer {
        wanted.cancel = &cancel;
        Result<study::LabFacts> facts = study::labFacts(circuit, wanted);
        if (!facts)
            return [this, fault = facts.fault()] {
                clear();
                answer(QString::fromStdString(fault.message()), true);
            };
        auto kept = std::make_shared<const study::LabFacts>(std::move(facts).value());
        return [this, kept] {
            m_facts = kept;
            showSheet();
            answer(kept->changed.empty() ? QString()
                                         : tr("Variant %1: other values of %2.")
                                               .arg(*kept->variant)
                                               .arg(QString::fromStdString(study::listed(kept->changed))));
        };
    });
}

void LabSheetRoom::choose() {
    keepWords();
    askSoon();
}

void LabSheetRoom::clear() {
    m_facts = nullptr;
    showSheet();
}

sheet::LabSheet LabSheetRoom::labSheet() const {
    sheet::SheetChoice choice = m_form->choice();
    choice.symbols = house().settings.symbolStyle();
    return makeLabSheet(*m_facts, m_form->words(), choice);
}

void LabSheetRoom::showSheet() {
    m_typing.stop();
    for (QPushButton* button : m_needSheet) button->setEnabled(m_facts != nullptr);
    m_preview->setPages(m_facts ? std::make_shared<const sheet::PageLayout>(labSheet(), m_form->pageSize())
                                : nullptr);
}

void LabSheetRoom::showTheme(const widgets::Theme& theme) {
    m_form->setTheme(theme);
}

double LabSheetRoom::progress() const {
    if (m_boards == 0 || !m_done) return -1;
    return static_cast<double>(m_done->load()) / static_cast<double>(m_boards);
}

Result<void> LabSheetRoom::writeTo(const QString& path) const {
    return sheet::writeSheet(labSheet(), m_form->pageSize(), path);
}

void LabSheetRoom::save(const QString& ending, const QString& kind) {
    keepWords();
    QString suffix = tr("lab-sheet");
    const sheet::Copy copy = m_form->choice().copy;
    if (copy == sheet::Copy::student) suffix = tr("student");
    if (copy == sheet::Copy::answers) suffix = tr("answers");
    if (const auto variant = m_form->variant()) suffix += QStringLiteral("-%1").arg(*variant);
    askFile(tr("Save the lab sheet"), suffix, {{kind, ending}},
            [this](const QString& path) { return writeTo(path); });
}

void LabSheetRoom::print() {
    keepWords();
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(m_form->pageSize()));
    QPrintDialog dialog(&printer, &frame());
    dialog.setWindowTitle(tr("Print the lab sheet"));
    if (dialog.exec() == QDialog::Accepted) sheet::printSheet(printer, labSheet());
}

void LabSheetRoom::keepWords() {
    house().settings.setAnswers(habits, m_form->habits());
    // Still the same circuit: it may have been saved under another name.
    if (house().document.openedRevision() == m_opened) m_path = house().document.path();
    if (m_path.isEmpty()) return;
    QVariantMap all = house().settings.answers(texts);
    QVariantMap own = m_form->texts();
    own[when] = QDateTime::currentMSecsSinceEpoch();
    all[m_path] = own;
    while (all.size() > mostRemembered) {
        auto oldest = all.begin();
        for (auto it = all.begin(); it != all.end(); ++it)
            if (it->toMap().value(when).toLongLong() < oldest->toMap().value(when).toLongLong()) oldest = it;
        all.erase(oldest);
    }
    house().settings.setAnswers(texts, all);
}

void LabSheetRoom::takeTexts() {
    m_opened = house().document.openedRevision();
    m_path = house().document.path();
    m_form->setTexts(m_path.isEmpty() ? QVariantMap()
                                      : house().settings.answers(texts).value(m_path).toMap());
}

} // namespace blinkwright::app
