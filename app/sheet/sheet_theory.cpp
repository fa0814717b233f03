// Theory: the textbook formulas of the wiring with the numbers of this circuit put in.
#include "app/sheet/astable_formulas.h"
#include "app/sheet/sheet_sections.h"
#include "widgets/text/figure_text.h"

#include <cmath>
#include <numbers>

namespace blinkwright::app::sheet {

namespace {

using study::AstableForm;
using study::Textbook;
using units::Unit;

Formula value(double number, Unit unit) {
    return word(qs(units::formatQuantity(number, unit, 4)));
}

/// A resistance or capacitance of the formula: its sign, its value, and of which parts it is made.
struct Quantity {
    Formula sign, number;
    QString text; ///< the sign on one line
    std::vector<std::string> parts;
    double si = 0;
};

Quantity quantity(const std::vector<std::string>& parts, const QString& letter, const QString& index,
                  double si, Unit unit) {
    Quantity q;
    q.sign = parts.size() == 1 ? designator(qs(parts.front()))
             : index.isEmpty() ? symbol(letter)
                               : subscript(letter, index);
    q.text = plainText(q.sign);
    q.number = value(si, unit);
    q.parts = parts;
    q.si = si;
    return q;
}

class Theory {
  public:
    Theory(const Textbook& book, bool blanks)
        : m_book(book), m_blanks(blanks),
          m_r1(quantity(book.r1Parts, QStringLiteral("R"), QStringLiteral("A"), book.r1_ohm, Unit::ohm)),
          m_r2(quantity(book.r2Parts, QStringLiteral("R"), QStringLiteral("B"), book.r2_ohm, Unit::ohm)),
          m_c(quantity(book.cParts, QStringLiteral("C"), {}, book.c_farad, Unit::farad)) {}

    std::vector<Block> blocks() const {
        std::vector<Block> all;
        all.emplace_back(paragraph(story()));
        all.emplace_back(general());
        for (const QString& sentence : sums()) all.emplace_back(paragraph(sentence));
        all.emplace_back(paragraph(m_blanks ? Words::tr("For this wiring; work out the numbers:")
                                            : Words::tr("For this wiring, with the values of its parts:")));
        all.emplace_back(times_());
        return all;
    }

  private:
    bool one() const { return m_book.form == AstableForm::singleResistor; }

    QString story() const {
        const QString levels =
            m_book.form == AstableForm::drivenControl
                ? Words::tr("The timer compares the voltage of %1 with two levels: that of pin "
                            "5, which is held at k times "
                            "the supply, and half of it.")
                      .arg(m_c.text)
                : Words::tr("The timer compares the voltage of %1 with two levels, one third "
                            "and two thirds of its supply "
                            "(pin 8).")
                      .arg(m_c.text);
        QString charging;
        switch (m_book.form) {
        case AstableForm::plain:
        case AstableForm::drivenControl:
            charging =
                Words::tr(
                    "While the output (pin 3) is high, %1 charges through %2 and %3 from the lower level to "
                    "the "
                    "upper. While it is low, %1 discharges through %3 into pin 7, back to the lower level.")
                    .arg(m_c.text, m_r1.text, m_r2.text);
            break;
        case AstableForm::steeringDiode:
            charging =
                Words::tr("While the output (pin 3) is high, %1 charges through %2 and the diode, which is "
                          "taken as "
                          "ideal. While it is low, %1 discharges through %3 into pin 7.")
                    .arg(m_c.text, m_r1.text, m_r2.text);
            break;
        case AstableForm::singleResistor:
            charging =
                Words::tr("%1 charges and discharges through %2 from the output (pin 3), which is taken to "
                          "reach both "
                          "rails.")
                    .arg(m_c.text, m_r2.text);
            break;
        }
        return levels + u' ' + charging + u' ' +
               Words::tr(
                   "A capacitor C on its way through a resistance R from a voltage U₀ towards U∞ is at U₁ "
                   "after");
    }

    static FormulaLines general() {
        FormulaLines lines;
        lines.lines.push_back({symbol(QStringLiteral("t")), chargeFormula()});
        return lines;
    }

    std::vector<QString> sums() const {
        std::vector<QString> sentences;
        for (const Quantity* q : {&m_r1, &m_r2, &m_c}) {
            if (q->parts.size() < 2) continue;
            QStringList names;
            for (const std::string& part : q->parts) names << qs(part);
            sentences.push_back(Words::tr("%1 stands for %2 together: %3.")
                                    .arg(q->text, names.join(Words::tr(" and ")), plainText(q->number)));
        }
        return sentences;
    }

    struct Written {
        Formula signs, numbers;
    };
    /// How long a phase lasts: both with signs and with numbers.
    Written phase(const char* name) const {
        const Formula k = word(qs(units::formatQuantity(m_book.control_ratio, Unit::none, 4)));
        const AstableTerms signs{m_r1.sign, m_r2.sign, m_c.sign, symbol(QStringLiteral("k")),
                                 word(QStringLiteral("\u2009"))},
            numbers{m_r1.number, m_r2.number, m_c.number, k, sign(QStringLiteral("×"))};
        return {phaseFormula(QLatin1String(name), m_book.form, signs),
                phaseFormula(QLatin1String(name), m_book.form, numbers)};
    }

    /// A quantity: by signs, and below by numbers with the result, or room for both.
    void add(FormulaLines& lines, const Formula& left, const Written& written, const QString& result,
             const QString& meaning) const {
        const Formula equals = sign(QStringLiteral("="));
        lines.lines.push_back({left, written.signs, meaning});
        lines.lines.push_back(
            {{}, m_blanks ? row({blank(), equals, blank()}) : row({written.numbers, equals, word(result)})});
    }

    FormulaLines times_() const {
        using namespace widgets;
        const study::Phase& p = m_book.phase;
        const auto T = symbol(QStringLiteral("T"));
        const Formula plus = sign(QStringLiteral("+"));
        FormulaLines lines;
        add(lines, phaseTime("H"), phase("H"), secondsText(p.high_s), Words::tr("pulse width, output high"));
        add(lines, phaseTime("L"), phase("L"), secondsText(p.low_s), Words::tr("space width, output low"));
        add(lines, T, {periodFormula(), row({word(secondsText(p.high_s)), plus, word(secondsText(p.low_s))})},
            secondsText(p.period_s()), Words::tr("cycle time"));
        add(lines, symbol(QStringLiteral("f")),
            {rateFormula(), fraction(word(QStringLiteral("1")), word(secondsText(p.period_s())))},
            rateText(p.rate_Hz()), Words::tr("flash rate"));
        add(lines, symbol(QStringLiteral("D")),
            {dutyFormula(), fraction(word(secondsText(p.high_s)), word(secondsText(p.period_s())))},
            shareText(p.duty()), Words::tr("duty cycle"));
        // The first flash begins with an empty capacitor, where nothing holds it at the other rail.
        const bool summed = m_book.form == AstableForm::plain;
        const double r = summed ? m_r1.si + m_r2.si : one() ? m_r2.si : m_r1.si;
        const double first = std::log(3) * r * m_c.si;
        if (m_book.form != AstableForm::drivenControl && std::abs(m_book.firstHigh_s - first) < 1e-9 * first)
            add(lines, phaseTime("1"), phase("1"), secondsText(first),
                Words::tr("first flash after power-on"));
        return lines;
    }

    const Textbook& m_book;
    const bool m_blanks;
    Quantity m_r1, m_r2, m_c;
};

} // namespace

std::vector<Block> theoryBlocks(const Making& making) {
    const study::TimerReading* timer = making.timer();
    if (!timer || !timer->textbook)
        return {paragraph(
            Words::tr("There is no textbook formula for this wiring: its figures come from simulation and "
                      "measurement alone."))};
    return Theory(*timer->textbook, making.student()).blocks();
}

} // namespace blinkwright::app::sheet
