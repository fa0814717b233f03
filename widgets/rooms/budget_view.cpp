#include "widgets/rooms/budget_view.h"

#include "widgets/rooms/account_tables.h"
#include "widgets/rooms/account_words.h"
#include "widgets/rooms/spread_tables.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace blinkwright::widgets {

using study::BudgetFigure;
using study::BudgetModel;

namespace {

QLabel* headLabel() {
    auto* label = new QLabel;
    QFont strong = label->font();
    strong.setBold(true);
    label->setFont(strong);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

BudgetView::BudgetView(QWidget* parent)
    : QWidget(parent), m_figure(new QComboBox), m_model(new QComboBox), m_verdict(new QLabel),
      m_predictedHead(headLabel()), m_measuredHead(headLabel()),
      m_predicted(new BudgetTable(tr("Budget of the prediction"))),
      m_measured(new BudgetTable(tr("Budget of the measurement"))), m_theme(Theme::of(Theme::Mode::light)) {
    m_predicted->setObjectName(QStringLiteral("predicted"));
    m_predicted->setWhatsThis(
        tr("What the uncertainty of each part's value adds to that of the predicted figure."));
    m_measured->setObjectName(QStringLiteral("measured"));
    m_measured->setWhatsThis(tr("What each source of error adds to the uncertainty of the measured figure."));
    m_figure->setObjectName(QStringLiteral("budget figure"));
    m_figure->setWhatsThis(tr("The figure whose uncertainty is taken apart: what each part adds to it."));
    for (const BudgetFigure figure : {BudgetFigure::rate, BudgetFigure::period, BudgetFigure::duty})
        m_figure->addItem(budgetFigureName(figure), static_cast<int>(figure));
    m_model->setObjectName(QStringLiteral("budget model"));
    m_model->setWhatsThis(
        tr("By what the figure is predicted: the simulated board, or the formula of the textbook, which "
           "leaves out the losses of a real one."));
    m_model->addItem(tr("the simulated board"), static_cast<int>(BudgetModel::simulated));
    m_model->addItem(tr("the textbook formula"), static_cast<int>(BudgetModel::textbook));
    m_verdict->setObjectName(QStringLiteral("agreement"));
    m_verdict->setWordWrap(true);
    m_verdict->setTextFormat(Qt::PlainText);
    m_verdict->setTextInteractionFlags(Qt::TextSelectableByMouse);

    auto* question = new QHBoxLayout;
    const auto ask = [&](const QString& text, QComboBox* box) {
        auto* label = new QLabel(text);
        label->setBuddy(box);
        box->setAccessibleName(QString(text).remove(u'&').remove(u':'));
        question->addWidget(label);
        question->addWidget(box);
        connect(box, &QComboBox::activated, this, &BudgetView::changed);
    };
    ask(tr("Budget &of:"), m_figure);
    question->addSpacing(14);
    ask(tr("Pre&dicted by:"), m_model);
    question->addStretch(1);

    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout(inside);
    rows->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_predictedHead, m_predicted, m_measuredHead, m_measured})
        rows->addWidget(part);
    rows->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("Budget of the uncertainty"));
    scroll->setWidget(inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 8, 0, 0);
    whole->addLayout(question);
    whole->addWidget(m_verdict);
    whole->addWidget(scroll, 1);
    setBudgets({}, {});
}

BudgetFigure BudgetView::figure() const {
    return static_cast<BudgetFigure>(m_figure->currentData().toInt());
}

BudgetModel BudgetView::model() const {
    return static_cast<BudgetModel>(m_model->currentData().toInt());
}

QString BudgetView::figureName() const {
    return budgetFigureName(figure());
}

void BudgetView::setBudgets(const std::optional<study::Budget>& predicted,
                            const std::optional<study::Budget>& measured) {
    m_prediction = predicted;
    m_measurement = measured;
    const bool known = predicted && predicted->reason.empty();
    m_predicted->setVisible(known);
    m_measured->setVisible(measured.has_value());
    m_measuredHead->setVisible(known || measured.has_value());
    if (known) m_predicted->setBudget(*predicted);
    if (measured) m_measured->setBudget(*measured);
    m_predictedHead->setText(known       ? tr("Predicted from the parts")
                             : predicted ? QString::fromStdString(predicted->reason)
                                         : QString());
    m_measuredHead->setText(measured ? tr("Measured") : tr("This figure was not measured."));
    showVerdict();
}

void BudgetView::showVerdict() {
    const bool both = m_prediction && m_prediction->reason.empty() && m_measurement;
    m_verdict->setVisible(both);
    if (!both) return;
    m_verdict->setText(agreementWords(*m_prediction, *m_measurement));
    QPalette palette = m_verdict->palette();
    palette.setColor(QPalette::WindowText,
                     compare(*m_prediction, *m_measurement).agree ? m_theme.ink : m_theme.doubt);
    m_verdict->setPalette(palette);
}

void BudgetView::setTheme(const Theme& theme) {
    m_theme = theme;
    showVerdict();
}

QString BudgetView::verdictText() const {
    return m_verdict->isHidden() ? QString() : m_verdict->text();
}

QString BudgetView::asText() const {
    QString text = m_predictedHead->text() + u'\n';
    if (!m_predicted->isHidden()) text += tableText(*m_predicted);
    text += u'\n' + m_measuredHead->text() + u'\n';
    if (!m_measured->isHidden()) text += tableText(*m_measured);
    if (!verdictText().isEmpty()) text += u'\n' + verdictText() + u'\n';
    return text;
}

} // namespace blinkwright::widgets
