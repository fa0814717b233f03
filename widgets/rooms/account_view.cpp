#include "widgets/rooms/account_view.h"

#include "widgets/rooms/account_tables.h"
#include "widgets/rooms/account_words.h"
#include "widgets/rooms/budget_view.h"
#include "widgets/rooms/retune_row.h"
#include "widgets/rooms/spread_tables.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

QLabel* head(const QString& text) {
    auto* label = new QLabel(text);
    QFont strong = label->font();
    strong.setBold(true);
    label->setFont(strong);
    return label;
}

} // namespace

AccountView::AccountView(QWidget* parent)
    : QTabWidget(parent), m_pages(new QStackedWidget), m_empty(new QWidget), m_values(new ValuesTable),
      m_figures(new AccountTable), m_notes(new QLabel), m_retune(new RetuneRow), m_budget(new BudgetView),
      m_theme(Theme::of(Theme::Mode::light)) {
    setDocumentMode(true);
    makeEmpty();
    m_notes->setObjectName(QStringLiteral("notes"));
    m_notes->setAccessibleName(tr("Notes"));
    m_notes->setWordWrap(true);
    m_notes->setTextFormat(Qt::RichText);
    m_notes->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);

    auto* found = new QWidget;
    auto* rows = new QVBoxLayout(found);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(head(tr("Values that explain the measurements")));
    rows->addWidget(m_values);
    rows->addSpacing(6);
    rows->addWidget(head(tr("What the board does")));
    rows->addWidget(m_figures);
    rows->addWidget(m_notes);
    rows->addSpacing(6);
    rows->addWidget(head(tr("Retune")));
    rows->addWidget(m_retune);
    rows->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("What was found"));
    scroll->setWidget(found);
    m_pages->addWidget(m_empty);
    m_pages->addWidget(scroll);
    auto* page = new QWidget;
    auto* inset = new QVBoxLayout(page);
    inset->setContentsMargins(0, 8, 0, 0);
    inset->addWidget(m_pages);
    addTab(page, tr("&Values"));
    addTab(m_budget, tr("&Uncertainty"));
    setTabWhatsThis(
        0, tr("The values of the parts that explain the measurements best, and how to get a wished rate."));
    setTabWhatsThis(
        1,
        tr("What each part and each reading adds to the uncertainty, and whether prediction and measurement "
           "agree within it."));
    show();
}

void AccountView::makeEmpty() {
    auto* words = new QLabel(
        tr("Nothing was measured yet. Build the board, then tell what it does:\n\n"
           "•  Count flashes by stopwatch, 20 cycles or more. That gives the cycle time.\n\n"
           "•  Or bring in a record of an oscilloscope or data logger: both phases, and much finer.\n\n"
           "•  Measure single parts on a meter, R1 and R2 first: the rest is then found much closer.\n\n"
           "The values of the parts that explain it then stand here, with their uncertainties."));
    words->setObjectName(QStringLiteral("how to begin"));
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    auto* button = new QPushButton(tr("Enter a &measurement…"));
    button->setObjectName(QStringLiteral("enter measurement"));
    button->setWhatsThis(tr("Opens Measurements, where counts, readings and records are entered."));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, &AccountView::measurementsWished);
    auto* rows = new QVBoxLayout(m_empty);
    rows->setContentsMargins(8, 12, 8, 8);
    rows->addWidget(words);
    rows->addSpacing(12);
    rows->addWidget(button, 0, Qt::AlignLeft);
    rows->addStretch(1);
}

void AccountView::setFit(std::shared_ptr<const study::FitOutcome> fit) {
    m_fit = std::move(fit);
    show();
}

void AccountView::show() {
    const bool found = m_fit && m_fit->found;
    m_pages->setCurrentIndex(found ? 1 : 0);
    m_empty->setVisible(m_fit && m_fit->nothingMeasured);
    if (!found) return;
    m_values->setFit(*m_fit, m_theme);
    m_figures->setFit(*m_fit, m_theme);
    m_retune->setParts(retunable(*m_fit));
    showNotes();
}

void AccountView::showNotes() {
    QStringList lines;
    for (const study::FitNote& note : m_fit->notes) {
        const QString text = QString::fromStdString(note.text).toHtmlEscaped();
        lines << (note.warning ? QStringLiteral("<b style=\"color:%1\">%2</b> %3")
                                     .arg(m_theme.doubt.name(), tr("Doubt:"), text)
                               : QStringLiteral("<b>%1</b> %2").arg(tr("Note:"), text));
    }
    m_notes->setVisible(!lines.isEmpty());
    m_notes->setText(QStringLiteral("<p style=\"margin:6px 0 0 0\">") +
                     lines.join(QStringLiteral("</p><p style=\"margin:6px 0 0 0\">")) +
                     QStringLiteral("</p>"));
}

void AccountView::setTheme(const Theme& theme) {
    m_theme = theme;
    m_budget->setTheme(theme);
    show();
}

bool AccountView::budgetInFront() const {
    return currentWidget() == m_budget;
}

bool AccountView::isEmptyState() const {
    return m_pages->currentIndex() == 0 && !m_empty->isHidden();
}

QString AccountView::notesText() const {
    QStringList lines;
    if (m_fit)
        for (const study::FitNote& note : m_fit->notes) lines << QString::fromStdString(note.text);
    return lines.join(u'\n');
}

QString AccountView::asText() const {
    if (budgetInFront()) return m_budget->asText();
    if (!m_fit || !m_fit->found) return {};
    QString text = tableText(*m_values) + u'\n' + tableText(*m_figures);
    if (!notesText().isEmpty()) text += u'\n' + notesText() + u'\n';
    if (!m_retune->answerText().isEmpty()) text += u'\n' + m_retune->answerText() + u'\n';
    return text;
}

} // namespace blinkwright::widgets
