#include "widgets/ready/answer_form.h"

#include "core/units/engineering.h"
#include "widgets/text/colour_text.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>

#include <algorithm>

namespace blinkwright::widgets {

using study::Bounds;
using study::ReadyAnswers;

AnswerForm::AnswerForm(QWidget* parent) : QWidget(parent), m_form(new QFormLayout(this)) {
    const QScopedValueRollback quiet(m_quiet, true); // fields tell of their first entries already
    m_form->setContentsMargins(0, 0, 0, 0);
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_family = addChoice(
        "family", tr("&Timer"),
        tr("A bipolar timer drives more current; a CMOS timer takes less itself and runs from a lower "
           "voltage."));
    m_family->addItem(tr("555 timer, bipolar"));
    m_family->addItem(tr("555 timer, CMOS"));
    addNumber("supply", tr("&Supply voltage"), tr("V"), 1, 1, 99, &ReadyAnswers::supply_V,
              tr("Voltage of the battery or other source, in volts."));
    m_colour = addChoice("colour", tr("&Lamp"),
                         tr("Colour of the lamp. It sets the forward voltage, and with it the resistor."));
    m_second = addChoice("second", tr("Sec&ond lamp"),
                         tr("Colour of the lamp that is lit while the first one is dark."));
    for (QComboBox* list : {m_colour, m_second})
        for (const std::string& colour : study::readyColours())
            list->addItem(colourText(colour), QString::fromStdString(colour));
    addNumber(
        "current", tr("Lamp &current"), tr("mA"), 1e3, 1, 99, &ReadyAnswers::lampCurrent_A,
        tr("Current of a lit lamp, in milliamperes. The resistor in series with it follows from this."));
    addNumber("rate", tr("&Flashes a minute"), tr("/min"), 1, 1, 9999, &ReadyAnswers::perMinute,
              tr("How often the lamp flashes. The timing resistors and the capacitor follow from it."));
    addNumber("lit", tr("L&it share of the time"), tr("%"), 100, 1, 100, &ReadyAnswers::lit,
              tr("Share of each cycle in which the lamp is lit, in per cent."));
    addNumber("groups", tr("&Groups a minute"), tr("/min"), 1, 1, 99, &ReadyAnswers::groups,
              tr("How often a group of flashes begins, with a dark pause before it."));
    setAnswers(m_answers);
}

QComboBox* AnswerForm::addChoice(const char* name, const QString& label, const QString& meaning) {
    auto* list = new QComboBox;
    list->setWhatsThis(meaning);
    list->setObjectName(QLatin1String(name));
    m_form->addRow(label, list);
    connect(list, &QComboBox::currentIndexChanged, this, &AnswerForm::read);
    return list;
}

void AnswerForm::addNumber(const char* name, const QString& label, const QString& unit, double factor,
                           int decimals, double most, double ReadyAnswers::*answer, const QString& meaning) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* field = new QDoubleSpinBox;
    field->setObjectName(QLatin1String(name));
    field->setWhatsThis(meaning);
    field->setRange(0, most); // wider than what may be asked: the sentence below says what may
    field->setDecimals(decimals);
    field->setStepType(QAbstractSpinBox::AdaptiveDecimalStepType);
    field->setSuffix(QStringLiteral("\u00A0") + unit);
    auto* bounds = new QLabel;
    sizedByText(*bounds, [bounds] {
        bounds->setMinimumWidth(bounds->fontMetrics().horizontalAdvance(QStringLiteral("000 to 000")));
    });
    line->addWidget(field, 1);
    line->addWidget(bounds);
    m_form->addRow(label, row);
    static_cast<QLabel*>(m_form->labelForField(row))->setBuddy(field);
    connect(field, &QDoubleSpinBox::valueChanged, this, &AnswerForm::read);
    m_numbers.push_back({row, field, bounds, factor, answer});
}

void AnswerForm::setRowShown(QWidget* row, bool shown) {
    row->setVisible(shown);
    m_form->labelForField(row)->setVisible(shown);
}

void AnswerForm::setAnswers(const ReadyAnswers& answers) {
    const QScopedValueRollback quiet(m_quiet, true);
    m_answers = answers;
    m_family->setCurrentIndex(answers.family == devices::TimerFamily::cmos ? 1 : 0);
    m_colour->setCurrentIndex(std::max(0, m_colour->findData(QString::fromStdString(answers.colour))));
    m_second->setCurrentIndex(std::max(0, m_second->findData(QString::fromStdString(answers.secondColour))));
    for (const Number& number : m_numbers) number.field->setValue(number.factor * answers.*number.answer);
    const study::ReadyInfo& asked = study::info(answers.kind);
    setRowShown(m_second, asked.secondLamp);
    showBounds();
}

Bounds AnswerForm::boundsOf(const Number& number) const {
    const study::ReadyInfo& asked = study::info(m_answers.kind);
    if (number.answer == &ReadyAnswers::supply_V) return study::supplyBounds(m_answers.family);
    if (number.answer == &ReadyAnswers::lampCurrent_A)
        return study::currentBounds(m_answers.kind, m_answers.family);
    if (number.answer == &ReadyAnswers::perMinute) return asked.perMinute;
    return number.answer == &ReadyAnswers::lit ? asked.lit : asked.groups;
}

void AnswerForm::showBounds() {
    const auto text = [](double v) {
        return QString::fromStdString(units::formatQuantity(v, units::Unit::none, 4));
    };
    for (const Number& number : m_numbers) {
        const Bounds bounds = boundsOf(number);
        setRowShown(number.row, bounds.asked());
        number.bounds->setText(
            tr("%1 to %2").arg(text(bounds.low * number.factor), text(bounds.high * number.factor)));
        const QString label = static_cast<QLabel*>(m_form->labelForField(number.row))->text().remove(u'&');
        number.field->setAccessibleName(label);
        number.field->setToolTip(tr("%1: %2%3").arg(label, number.bounds->text(), number.field->suffix()));
        number.field->setToolTip(tr("%1: %2%3").arg(label, number.bounds->text(), number.field->suffix()));
        number.field->setProperty("range",
                                  number.bounds->text() + number.field->suffix()); // narrower than its own
    }
}

void AnswerForm::read() {
    if (m_quiet) return;
    m_answers.family =
        m_family->currentIndex() == 1 ? devices::TimerFamily::cmos : devices::TimerFamily::bipolar;
    m_answers.colour = m_colour->currentData().toString().toStdString();
    m_answers.secondColour = m_second->currentData().toString().toStdString();
    for (const Number& number : m_numbers) m_answers.*number.answer = number.field->value() / number.factor;
    showBounds();
    emit changed();
}

void AnswerForm::setTheme(const Theme& theme) {
    for (const Number& number : m_numbers) {
        QPalette quiet = number.bounds->palette();
        quiet.setColor(QPalette::WindowText, theme.quietInk);
        number.bounds->setPalette(quiet);
    }
}

} // namespace blinkwright::widgets
