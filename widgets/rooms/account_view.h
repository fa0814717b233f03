// All that "Account for it" shows: fitted values, figures before and after, what is to be said about them, a
// row to retune by, and a page with the budget of uncertainty. Where nothing is measured it says how to
// begin.
//
//   AccountView view;
//   view.setFit(fit);                // shared: an answer of study::fit()
//   view.setFit(nullptr);            // no circuit
#pragma once

#include "core/study/fit.h"
#include "widgets/theme/theme.h"

#include <QTabWidget>
#include <memory>

class QLabel;
class QStackedWidget;
class QVBoxLayout;

namespace blinkwright::widgets {

class AccountTable;
class BudgetView;
class RetuneRow;
class ValuesTable;

class AccountView : public QTabWidget {
    Q_OBJECT
  public:
    explicit AccountView(QWidget* parent = nullptr);

    void setFit(std::shared_ptr<const study::FitOutcome> fit);
    std::shared_ptr<const study::FitOutcome> fit() const { return m_fit; }
    void setTheme(const Theme& theme);
    /// The page in front, tab separated, for the clipboard.
    QString asText() const;
    bool budgetInFront() const;

    ValuesTable& values() const { return *m_values; }
    AccountTable& figures() const { return *m_figures; }
    RetuneRow& retune() const { return *m_retune; }
    BudgetView& budget() const { return *m_budget; }
    QString notesText() const;
    bool isEmptyState() const;

  signals:
    void measurementsWished(); ///< from the page that says how to begin

  private:
    void makeEmpty();
    void show();
    void showNotes();

    std::shared_ptr<const study::FitOutcome> m_fit;
    QStackedWidget* m_pages; ///< of the first tab: what was found, or how to begin
    QWidget* m_empty;
    ValuesTable* m_values;
    AccountTable* m_figures;
    QLabel* m_notes;
    RetuneRow* m_retune;
    BudgetView* m_budget;
    Theme m_theme;
};

} // namespace blinkwright::widgets
