#include "app/help/help_formulas.h"

#include "app/sheet/astable_formulas.h"
#include "widgets/text/formula_layout.h"

#include <QPainter>
#include <cmath>
#include <map>

namespace blinkwright::app::help {

namespace {

using namespace widgets::formula;
using namespace sheet; // the textbook's formulas, as the lab sheet has them
using study::AstableForm;

Formula equation(const Formula& left, const Formula& right) {
    return row({left, sign(QStringLiteral("=")), right});
}

Formula phaseEquation(const QString& name, AstableForm form = AstableForm::plain) {
    return equation(phaseTime(name), phaseFormula(name, form, AstableTerms::symbols()));
}

std::map<QString, Formula> all() {
    const auto u = [](const char* below) { return subscript(QStringLiteral("u"), QLatin1String(below)); };
    const Formula a = symbol(QStringLiteral("a"));
    const Formula plus = sign(QStringLiteral("+"));
    const auto input = [&](const char* number) { // (c u)² of one of them
        return row({word(QStringLiteral("(")), subscript(QStringLiteral("c"), QLatin1String(number)),
                    word(QStringLiteral("\u2009")), u(number), word(QStringLiteral(")²"))});
    };
    return {
        {"charge", equation(symbol(QStringLiteral("t")), chargeFormula())},
        {"high", phaseEquation("H")},
        {"low", phaseEquation("L")},
        {"first", phaseEquation("1")},
        {"high-diode", phaseEquation("H", AstableForm::steeringDiode)},
        {"high-single", phaseEquation("H", AstableForm::singleResistor)},
        {"high-control", phaseEquation("H", AstableForm::drivenControl)},
        {"period", equation(symbol(QStringLiteral("T")), periodFormula())},
        {"rate", equation(symbol(QStringLiteral("f")), rateFormula())},
        {"duty", equation(symbol(QStringLiteral("D")), dutyFormula())},
        // JCGM 100:2008, 4.3.7: a rectangle of half-width a.
        {"rectangle", equation(symbol(QStringLiteral("u")), fraction(a, root(word(QStringLiteral("3")))))},
        // JCGM 100:2008, 5.1.2, for independent inputs.
        {"combined",
         equation(u("c"), root(row({input("1"), plus, input("2"), plus, word(QStringLiteral("…"))})))},
    };
}

} // namespace

QStringList formulaNames() {
    QStringList names;
    for (const auto& [name, formula] : all()) names << name;
    return names;
}

std::optional<Formula> formulaNamed(const QString& name) {
    const std::map<QString, Formula> formulas = all();
    const auto found = formulas.find(name);
    return found == formulas.end() ? std::nullopt : std::optional(found->second);
}

QImage formulaImage(const Formula& formula, const QFont& font, const QColor& ink, double scale) {
    const FormulaBox box = measured(formula, font);
    constexpr double edge = 2; // a slanted letter leans out of its box
    const QSizeF size(box.width + 2 * edge, box.ascent + box.descent + 2 * edge);
    QImage image(static_cast<int>(std::ceil(size.width() * scale)),
                 static_cast<int>(std::ceil(size.height() * scale)), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(scale);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.setPen(ink);
    paintFormula(painter, formula, font, {edge, edge + box.ascent});
    return image;
}

} // namespace blinkwright::app::help
