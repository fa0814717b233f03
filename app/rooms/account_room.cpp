#include "app/rooms/account_room.h"

#include "app/rooms/drawer_desk.h"
#include "app/save_question.h"
#include "core/io/fit_report.h"
#include "widgets/rooms/account_view.h"
#include "widgets/rooms/budget_view.h"
#include "widgets/rooms/retune_row.h"
#include "widgets/text/figure_text.h"
#include "widgets/text/plain_number.h"

#include <QApplication>
#include <QClipboard>
#include <QPushButton>

#include <algorithm>

namespace blinkwright::app {

using study::BudgetFigure;

struct AccountRoom::Question {
    circuit::Circuit circuit;
    circuit::PartSet set = circuit::PartSet::A;
    BudgetFigure figure = BudgetFigure::rate;
    study::BudgetModel model = study::BudgetModel::simulated;
    study::RetuneRequest retune; ///< rate 0: the one that the circuit was meant for
};

struct AccountRoom::Found {
    std::optional<Fault> fault;
    study::FitOutcome fit;
    std::optional<study::Budget> predicted, measured;
    std::optional<study::Retuning> retuning;
    double meant_Hz = 0; ///< by the circuit as it stands
};

AccountRoom::AccountRoom(const House& house, DrawerDesk& desk, const std::function<void()>& openMeasurements)
    : Room(house, tr("Account for it"), QStringLiteral("account"), QSize(940, 720)), m_desk(desk),
      m_view(new widgets::AccountView) {
    m_view->retune().restore(remembered());
    frame().setBody(m_view);
    const auto button = [this](const char* object, const QString& text, const QString& meaning,
                               void (AccountRoom::*done)()) {
        QPushButton* made = frame().addButton(text);
        made->setWhatsThis(meaning);
        made->setObjectName(QLatin1String(object));
        connect(made, &QPushButton::clicked, this, done);
        return made;
    };
    m_apply =
        button("apply", tr("Apply as Set &B"),
               tr("Gives Set B the fitted values: the board as it seems to be, beside the one as stated."),
               &AccountRoom::applyAsSetB);
    m_apply->setToolTip(tr("Makes Set B the board with the fitted values"));
    m_copy = button("copy", tr("Co&py"), tr("Puts the page in front on the clipboard as text."),
                    &AccountRoom::copyText);
    m_export = button("export", tr("E&xport…"), tr("Writes the table in front to a file (.csv)."),
                      &AccountRoom::exportTable);
    connect(&m_view->retune(), &widgets::RetuneRow::changed, this, [this] {
        remember(m_view->retune().answers());
        askSoon();
    });
    connect(&m_view->budget(), &widgets::BudgetView::changed, this, &AccountRoom::askSoon);
    connect(m_view, &widgets::AccountView::measurementsWished, this, openMeasurements);
    connect(m_view, &QTabWidget::currentChanged, this, &AccountRoom::showButtons);
    connect(&m_desk, &DrawerDesk::changed, this, [this] {
        if (!m_view->retune().series()) askSoon();
    });
    showButtons();
    ready();
}

AccountRoom::~AccountRoom() {
    task().cancel();
    m_view->disconnect(this);
}

AccountRoom::Question AccountRoom::question() const {
    Question q{circuit(), set(), m_view->budget().figure(), m_view->budget().model(), {}};
    const widgets::RetuneRow& row = m_view->retune();
    q.retune.rate_Hz = row.isWished() ? row.rate_Hz() : 0;
    q.retune.ref = row.part();
    if (row.series())
        q.retune.series = *row.series();
    else
        q.retune.drawer = m_desk.stock();
    return q;
}

AccountRoom::Found AccountRoom::found(const Question& q, const std::atomic<bool>& cancel) {
    Found found;
    auto fit = study::fit(q.circuit, q.set, {.cancel = &cancel});
    if (!fit) {
        found.fault = fit.fault();
        return found;
    }
    found.fit = std::move(fit).value();
    if (auto budget = study::predictedBudget(q.circuit, q.set, q.figure, q.model, {.cancel = &cancel}))
        found.predicted = std::move(budget).value();
    found.measured = study::measuredBudget(q.circuit, q.figure);
    if (!found.fit.found) return found;
    found.meant_Hz = found.fit.figure(study::FitFigure::rate)->before;
    study::RetuneRequest request = q.retune;
    request.cancel = &cancel;
    if (request.rate_Hz <= 0) request.rate_Hz = found.meant_Hz;
    const std::vector<std::string> refs = study::retunable(found.fit);
    if (std::ranges::find(refs, request.ref) == refs.end() && !refs.empty()) request.ref = refs.back();
    found.retuning = study::retune(found.fit, request);
    return found;
}

void AccountRoom::ask() {
    task().start([this, q = question()](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        auto found = std::make_shared<const Found>(AccountRoom::found(q, cancel));
        if (cancel) return [] {};
        return [this, found] { show(found); };
    });
}

void AccountRoom::show(std::shared_ptr<const Found> found) {
    m_found = std::move(found);
    if (m_found->fault) {
        const Fault fault = *m_found->fault;
        clear();
        return answer(QString::fromStdString(fault.message()), true);
    }
    m_view->retune().proposeRate(m_found->meant_Hz);
    m_view->setFit(std::shared_ptr<const study::FitOutcome>(m_found, &m_found->fit));
    m_view->retune().setRetuning(m_found->retuning);
    m_view->budget().setBudgets(m_found->predicted, m_found->measured);
    showButtons();
    const study::FitOutcome& fit = m_found->fit;
    answer(sentence(), !fit.nothingMeasured && !(fit.found && fit.agrees));
}

QString AccountRoom::sentence() const {
    const study::FitOutcome& fit = m_found->fit;
    if (fit.nothingMeasured) return tr("What is predicted, and how surely, stands under Uncertainty.");
    if (!fit.found) return QString::fromStdString(fit.reason);
    const QString sums = tr("%1 against a limit of %2")
                             .arg(widgets::plainNumber(fit.chiSquare, 'g', 3),
                                  widgets::plainNumber(fit.chiSquareLimit, 'g', 3));
    return fit.agrees ? tr("Values within the tolerances explain the measurements (χ² %1).").arg(sums)
                      : tr("No values that the parts may have explain the measurements (χ² %1).").arg(sums);
}

void AccountRoom::showButtons() {
    const bool any = m_found && !m_found->fault;
    const bool budget = m_view->budgetInFront();
    const bool text = any && (budget ? m_found->predicted.has_value() : m_found->fit.found);
    m_apply->setEnabled(any && m_found->fit.found);
    m_copy->setEnabled(text);
    m_export->setEnabled(text);
}

void AccountRoom::applyAsSetB() {
    if (!m_found || !m_found->fit.found) return;
    const auto edit = study::fittedEdit(circuit(), m_found->fit);
    if (!edit) return answer(QString::fromStdString(edit.fault().message()), true);
    if (const Result<void> done = house().document.apply(edit.value()); !done)
        return answer(QString::fromStdString(done.fault().message()), true);
    house().say(tr("Set B is the fitted board now."));
}

void AccountRoom::copyText() {
    QApplication::clipboard()->setText(m_view->asText());
    house().say(m_view->budgetInFront() ? tr("The budget is on the clipboard.")
                                        : tr("The fitted values are on the clipboard."));
}

void AccountRoom::exportTable() {
    if (!m_found) return;
    const bool budget = m_view->budgetInFront();
    std::string csv;
    if (budget && m_found->predicted) {
        const QString figure = m_view->budget().figureName();
        csv = io::budgetCsv(*m_found->predicted, tr("%1 predicted:").arg(figure).toStdString());
        if (m_found->measured)
            csv += io::budgetCsv(*m_found->measured, tr("%1 measured:").arg(figure).toStdString());
    } else {
        csv = io::fitCsv(m_found->fit);
    }
    askFile(budget ? tr("Export the budget") : tr("Export the fitted values"),
            budget ? tr("budget") : tr("fitted"), {{tr("Table"), QStringLiteral("csv")}},
            [this, csv](const QString& path) { return writeTable(path, csv, house().settings); });
}

void AccountRoom::clear() {
    m_found.reset();
    m_view->setFit(nullptr);
    m_view->budget().setBudgets({}, {});
    m_view->retune().setRetuning({});
    showButtons();
}

void AccountRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
}

} // namespace blinkwright::app
