// Theory: the textbook formulas of the wiring with the numbers of this circuit put in.
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

Formula bracketed(std::vector<Formula> inside) {
    inside.insert(inside.begin(), word(QStringLiteral("(")));
    inside.push_back(word(QStringLiteral(")")));
    return row(std::move(inside));
}

const QString thin = QStringLiteral("\u2009"), times = QStringLiteral("×");

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
        all.emplace_back(paragraph(m_blanks ? tr("For this wiring; work out the numbers:")
                                            : tr("For this wiring, with the values of its parts:")));
        all.emplace_back(times_());
        return all;
    }

  private:
    bool one() const { return m_book.form == AstableForm::singleResistor; }

    QString story() const {
        const QString levels = m_book.form == AstableForm::drivenControl
                                   ? tr("The timer compares the voltage of %1 with two levels: that of pin "
                                         "5, which is held at k times "
                                         "the supply, and half of it.")
                                         .arg(m_c.text)
                                   : tr("The timer compares the voltage of %1 with two levels, one third "
                                         "and two thirds of its supply "
                                         "(pin 8).")
                                         .arg(m_c.text);
        QString charging;
        switch (m_book.form) {
        case AstableForm::plain:
        case AstableForm::drivenControl:
            charging =
                tr("While the output (pin 3) is high, %1 charges through %2 and %3 from the lower level to "
                    "the "
                    "upper. While it is low, %1 discharges through %3 into pin 7, back to the lower level.")
                    .arg(m_c.text, m_r1.text, m_r2.text);
            break;
        case AstableForm::steeringDiode:
            charging = tr("While the output (pin 3) is high, %1 charges through %2 and the diode, which is "
                           "taken as "
                           "ideal. While it is low, %1 discharges through %3 into pin 7.")
                           .arg(m_c.text, m_r1.text, m_r2.text);
            break;
        case AstableForm::singleResistor:
            charging = tr("%1 charges and discharges through %2 from the output (pin 3), which is taken to "
                           "reach both "
                           "rails.")
                           .arg(m_c.text, m_r2.text);
            break;
        }
        return levels + u' ' + charging + u' ' +
               tr("A capacitor C on its way through a resistance R from a voltage U₀ towards U∞ is at U₁ "
                   "after");
    }

    FormulaLines general() const {
        const auto u = [](const QString& below) { return subscript(QStringLiteral("U"), below); };
        const QString far = QStringLiteral("∞");
        const auto less = [&](const QString& below) {
            return row({u(far), sign(QStringLiteral("−")), u(below)});
        };
        FormulaLines lines;
        lines.lines.push_back({symbol(QStringLiteral("t")),
                               row({symbol(QStringLiteral("R")), word(thin), symbol(QStringLiteral("C")),
                                    word(QStringLiteral(" ln ")),
                                    fraction(less(QStringLiteral("0")), less(QStringLiteral("1")))})});
        return lines;
    }

    std::vector<QString> sums() const {
        std::vector<QString> sentences;
        for (const Quantity* q : {&m_r1, &m_r2, &m_c}) {
            if (q->parts.size() < 2) continue;
            QStringList names;
            for (const std::string& part : q->parts) names << qs(part);
            sentences.push_back(tr("%1 stands for %2 together: %3.")
                                    .arg(q->text, names.join(tr(" and ")), plainText(q->number)));
        }
        return sentences;
    }

    /// `ln 2`
    static Formula ln(const QString& of) { return word(QStringLiteral("ln ") + of); }

    struct Written {
        Formula signs, numbers;
    };
    /// A factor before a resistance and C: both with signs and with numbers.
    Written product(const Formula& factor, const Formula& signs, const Formula& numbers) const {
        return {row({factor, word(thin), signs, word(thin), m_c.sign}),
                row({factor, sign(times), numbers, sign(times), m_c.number})};
    }
    Written sum() const { // R1 + R2
        const Formula plus = sign(QStringLiteral("+"));
        return {bracketed({m_r1.sign, plus, m_r2.sign}), bracketed({m_r1.number, plus, m_r2.number})};
    }
    Written charge() const {
        switch (m_book.form) {
        case AstableForm::plain:
            return product(ln(QStringLiteral("2")), sum().signs, sum().numbers);
        case AstableForm::steeringDiode:
            return product(ln(QStringLiteral("2")), m_r1.sign, m_r1.number);
        case AstableForm::singleResistor:
            return discharge();
        case AstableForm::drivenControl:
            break;
        }
        const QString k = qs(units::formatQuantity(m_book.control_ratio, Unit::none, 4));
        const Formula signs =
            fraction(row({word(QStringLiteral("1 − ")), symbol(QStringLiteral("k")), word("/2")}),
                     row({word(QStringLiteral("1 − ")), symbol(QStringLiteral("k"))}));
        const Formula numbers =
            fraction(word(QStringLiteral("1 − %1/2").arg(k)), word(QStringLiteral("1 − %1").arg(k)));
        return {
            row({sum().signs, word(thin), m_c.sign, word(QStringLiteral(" ln ")), signs}),
            row({sum().numbers, sign(times), m_c.number, sign(times), word(QStringLiteral("ln ")), numbers})};
    }
    Written discharge() const { return product(ln(QStringLiteral("2")), m_r2.sign, m_r2.number); }

    static Formula t(const char* below) { return subscript(QStringLiteral("t"), QLatin1String(below)); }

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
        add(lines, t("H"), charge(), secondsText(p.high_s), tr("pulse width, output high"));
        add(lines, t("L"), discharge(), secondsText(p.low_s), tr("space width, output low"));
        add(lines, T,
            {row({t("H"), plus, t("L")}),
             row({word(secondsText(p.high_s)), plus, word(secondsText(p.low_s))})},
            secondsText(p.period_s()), tr("cycle time"));
        add(lines, symbol(QStringLiteral("f")),
            {fraction(word(QStringLiteral("1")), T),
             fraction(word(QStringLiteral("1")), word(secondsText(p.period_s())))},
            rateText(p.rate_Hz()), tr("flash rate"));
        add(lines, symbol(QStringLiteral("D")),
            {fraction(t("H"), T), fraction(word(secondsText(p.high_s)), word(secondsText(p.period_s())))},
            shareText(p.duty()), tr("duty cycle"));
        // The first flash begins with an empty capacitor, where nothing holds it at the other rail.
        const bool summed = m_book.form == AstableForm::plain;
        const double r = summed ? m_r1.si + m_r2.si : one() ? m_r2.si : m_r1.si;
        const double first = std::log(3) * r * m_c.si;
        if (m_book.form != AstableForm::drivenControl && std::abs(m_book.firstHigh_s - first) < 1e-9 * first)
            add(lines, t("1"),
                product(ln(QStringLiteral("3")),
                        summed  ? sum().signs
                        : one() ? m_r2.sign
                                : m_r1.sign,
                        summed  ? sum().numbers
                        : one() ? m_r2.number
                                : m_r1.number),
                secondsText(first), tr("first flash after power-on"));
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
            tr("There is no textbook formula for this wiring: its figures come from simulation and "
                "measurement alone."))};
    return Theory(*timer->textbook, making.student()).blocks();
}

} // namespace blinkwright::app::sheet
