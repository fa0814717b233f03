// A budget of uncertainty as it stands in a report: what is predicted, what was measured, and whether the two
// agree.
//
//   BudgetView view;
//   connect(&view, &BudgetView::changed, ...);      // another figure or model: ask again
//   view.setBudgets(predicted, measured);
#pragma once

#include "core/study/uncertainty_budget.h"
#include "widgets/theme/theme.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace blinkwright::widgets {

class BudgetTable;

class BudgetView : public QWidget {
    Q_OBJECT
  public:
    explicit BudgetView(QWidget* parent = nullptr);

    study::BudgetFigure figure() const;
    study::BudgetModel model() const;
    QString figureName() const;
    /// Nothing predicted: empty. Nothing measured: said so.
    void setBudgets(const std::optional<study::Budget>& predicted,
                    const std::optional<study::Budget>& measured);
    void setTheme(const Theme& theme);
    QString verdictText() const;
    QString asText() const; ///< tab separated, for the clipboard

  signals:
    void changed();

  private:
    void showVerdict();

    QComboBox *m_figure, *m_model;
    QLabel *m_verdict, *m_predictedHead, *m_measuredHead;
    BudgetTable *m_predicted, *m_measured;
    std::optional<study::Budget> m_prediction, m_measurement;
    Theme m_theme;
};

} // namespace blinkwright::widgets
