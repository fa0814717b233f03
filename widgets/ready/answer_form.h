// The answers of a ready blinker as a form: a field a question, with its unit and what it may be.
//
//   AnswerForm form;
//   form.setAnswers(defaultAnswers(ReadyKind::shortFlash));
//   connect(&form, &AnswerForm::changed, ...);    // by the user
#pragma once

#include "core/study/ready.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;

namespace blinkwright::widgets {

class AnswerForm : public QWidget {
    Q_OBJECT
  public:
    explicit AnswerForm(QWidget* parent = nullptr);

    void setAnswers(const study::ReadyAnswers& answers);
    const study::ReadyAnswers& answers() const { return m_answers; }
    void setTheme(const Theme& theme);

  signals:
    void changed();

  private:
    struct Number {
        QWidget* row;
        QDoubleSpinBox* field;
        QLabel* bounds;
        double factor; ///< shown over kept
        double study::ReadyAnswers::*answer;
    };
    QComboBox* addChoice(const char* name, const QString& label, const QString& meaning);
    void addNumber(const char* name, const QString& label, const QString& unit, double factor, int decimals,
                   double most, double study::ReadyAnswers::*answer, const QString& meaning);
    void read();
    void showBounds();
    study::Bounds boundsOf(const Number& number) const;
    void setRowShown(QWidget* row, bool shown);

    study::ReadyAnswers m_answers;
    QFormLayout* m_form;
    QComboBox* m_family;
    QComboBox* m_colour;
    QComboBox* m_second;
    std::vector<Number> m_numbers;
    bool m_quiet = false; ///< fields are being filled, not changed by the user
};

} // namespace blinkwright::widgets
