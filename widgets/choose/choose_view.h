// The body of "Choose values": the wish, the ranked proposals, and the chosen one drawn, with its parts.
//
//   ChooseView view;
//   view.setChoices(wish, choices);
//   connect(&view, &ChooseView::choiceChanged, ...);     // view.chosenCircuit()
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/wish.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class ChoiceModel;
class WishForm;

class ChooseView : public QWidget {
    Q_OBJECT
  public:
    explicit ChooseView(QWidget* parent = nullptr);
    ~ChooseView() override;

    WishForm& form();
    const ChoiceModel& model() const;
    /// The best is chosen. Null: no proposals.
    void setChoices(const study::Wish& wish, std::shared_ptr<const study::Choices> choices);
    /// Why the wish cannot be met, and whether there is a nearest that can; empty where it can.
    void setReason(const QString& sentence, bool hasNearest);
    QString reason() const;
    void choose(int row);
    const study::Choice* chosen() const; ///< null where there is none
    const circuit::Circuit& chosenCircuit() const;
    void setTheme(const Theme& theme);

  signals:
    void choiceChanged();
    void nearestWished();
    void activated(); ///< Enter or a double click on a row

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
