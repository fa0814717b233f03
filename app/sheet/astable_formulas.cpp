#include "app/sheet/astable_formulas.h"

namespace blinkwright::app::sheet {

namespace {

using study::AstableForm;

const QString thin = QStringLiteral("\u2009");

Formula sumOf(const AstableTerms& t) {
    return row({word(QStringLiteral("(")), t.r1, sign(QStringLiteral("+")), t.r2, word(QStringLiteral(")"))});
}

Formula product(const QString& logarithm, const Formula& r, const AstableTerms& t) {
    return row({word(QStringLiteral("ln ") + logarithm), t.times, r, t.times, t.c});
}

/// Through which resistance the capacitor charges.
Formula chargesThrough(AstableForm form, const AstableTerms& t) {
    switch (form) {
    case AstableForm::steeringDiode:
        return t.r1;
    case AstableForm::singleResistor:
        return t.r2;
    case AstableForm::plain:
    case AstableForm::drivenControl:
        break;
    }
    return sumOf(t);
}

} // namespace

AstableTerms AstableTerms::symbols() {
    return {designator(QStringLiteral("R1")), designator(QStringLiteral("R2")), symbol(QStringLiteral("C")),
            symbol(QStringLiteral("k")), word(thin)};
}

Formula phaseTime(const QString& phase) {
    return subscript(QStringLiteral("t"), phase);
}

Formula phaseFormula(const QString& phase, AstableForm form, const AstableTerms& terms) {
    if (phase == QLatin1String("L")) return product(QStringLiteral("2"), terms.r2, terms);
    const Formula r = chargesThrough(form, terms);
    if (phase == QLatin1String("1")) return product(QStringLiteral("3"), r, terms);
    if (form != AstableForm::drivenControl) return product(QStringLiteral("2"), r, terms);
    const Formula less = word(QStringLiteral("1 − "));
    return row({r, terms.times, terms.c, terms.times, word(QStringLiteral("ln ")),
                fraction(row({less, terms.k, word(QStringLiteral("/2"))}), row({less, terms.k}))});
}

Formula periodFormula() {
    return row({phaseTime(QStringLiteral("H")), sign(QStringLiteral("+")), phaseTime(QStringLiteral("L"))});
}

Formula rateFormula() {
    return fraction(word(QStringLiteral("1")), symbol(QStringLiteral("T")));
}

Formula dutyFormula() {
    return fraction(phaseTime(QStringLiteral("H")), symbol(QStringLiteral("T")));
}

Formula chargeFormula() {
    const auto less = [](const QString& below) {
        return row({subscript(QStringLiteral("U"), QStringLiteral("∞")), sign(QStringLiteral("−")),
                    subscript(QStringLiteral("U"), below)});
    };
    return row({symbol(QStringLiteral("R")), word(thin), symbol(QStringLiteral("C")),
                word(QStringLiteral(" ln ")), fraction(less(QStringLiteral("0")), less(QStringLiteral("1")))});
}

} // namespace blinkwright::app::sheet
