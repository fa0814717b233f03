// Formulas as small trees, so that each writer can set them its own way: drawn on a page, as MathML in
// documents, as plain text for those who cannot see them.
//
//   Formula f = row({subscript("t", "H"), sign("="), fraction(word("1"), symbol("f"))});
//   plainText(f);   // "tH = 1/f"
//   mathMl(f);      // "<mrow><msub>…"
#pragma once

#include <QString>
#include <vector>

namespace blinkwright::widgets::formula {

struct Formula {
    enum class Kind {
        row,      ///< parts side by side
        symbol,   ///< a quantity, italic (ISO 80000-1, 7.1.1)
        word,     ///< numbers, units and functions, upright
        sign,     ///< `=`, `+`, `×`, with space around it
        script,   ///< the first part with the second below right of it
        fraction, ///< the first part over the second
        root,     ///< the square root of the part
        blank,    ///< room for a person to write in
    };
    Kind kind = Kind::row;
    QString text;
    std::vector<Formula> parts;
};

Formula row(std::vector<Formula> parts);
Formula symbol(const QString& text);
Formula word(const QString& text);
Formula sign(const QString& text);
Formula subscript(const QString& base, const QString& below);
Formula fraction(Formula over, Formula under);
Formula root(Formula of);
Formula blank();
/// A part as a quantity: `R12` is an R with 12 below it.
Formula designator(const QString& ref);

QString plainText(const Formula& formula);
/// Without the `math` element around it.
QString mathMl(const Formula& formula);

} // namespace blinkwright::widgets::formula
