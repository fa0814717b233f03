#include "widgets/text/formula.h"

#include <algorithm>

namespace blinkwright::widgets::formula {

namespace {

using Kind = Formula::Kind;

Formula leaf(Kind kind, const QString& text) {
    return {kind, text, {}};
}

QString joined(const std::vector<Formula>& parts, QString (*write)(const Formula&)) {
    QString text;
    for (const Formula& part : parts) text += write(part);
    return text;
}

/// A part of a fraction on one line: in brackets where it is more than one thing.
QString inLine(const Formula& part) {
    const QString text = plainText(part);
    const bool simple = std::none_of(text.begin(), text.end(), [](QChar c) {
        return c == u' ' || c == u'+' || c == u'/' || c == QChar::Nbsp;
    });
    return simple ? text : u'(' + text + u')';
}

QString element(const char* name, const QString& inside) {
    return QStringLiteral("<%1>%2</%1>").arg(QLatin1String(name), inside);
}

} // namespace

Formula row(std::vector<Formula> parts) {
    return {Kind::row, {}, std::move(parts)};
}

Formula symbol(const QString& text) {
    return leaf(Kind::symbol, text);
}

Formula word(const QString& text) {
    return leaf(Kind::word, text);
}

Formula sign(const QString& text) {
    return leaf(Kind::sign, text);
}

Formula subscript(const QString& base, const QString& below) {
    return {Kind::script, {}, {symbol(base), word(below)}};
}

Formula fraction(Formula over, Formula under) {
    return {Kind::fraction, {}, {std::move(over), std::move(under)}};
}

Formula root(Formula of) {
    return {Kind::root, {}, {std::move(of)}};
}

Formula blank() {
    return leaf(Kind::blank, {});
}

Formula designator(const QString& ref) {
    const auto digit = std::find_if(ref.begin(), ref.end(), [](QChar c) { return c.isDigit(); });
    if (digit == ref.begin() || digit == ref.end()) return symbol(ref);
    const qsizetype at = digit - ref.begin();
    return subscript(ref.left(at), ref.mid(at));
}

QString plainText(const Formula& formula) {
    switch (formula.kind) {
    case Kind::row:
        return joined(formula.parts, &plainText);
    case Kind::symbol:
    case Kind::word:
        return formula.text;
    case Kind::sign:
        return u' ' + formula.text + u' ';
    case Kind::script:
        return plainText(formula.parts[0]) + plainText(formula.parts[1]);
    case Kind::fraction:
        return inLine(formula.parts[0]) + u'/' + inLine(formula.parts[1]);
    case Kind::root:
        return u'√' + inLine(formula.parts[0]);
    case Kind::blank:
        return QStringLiteral("________");
    }
    return {};
}

QString mathMl(const Formula& formula) {
    switch (formula.kind) {
    case Kind::row:
        return element("mrow", joined(formula.parts, &mathMl));
    case Kind::symbol: // of more than one letter, MathML would set it upright
        return formula.text.size() == 1
                   ? element("mi", formula.text)
                   : QStringLiteral("<mi mathvariant=\"italic\">%1</mi>").arg(formula.text.toHtmlEscaped());
    case Kind::word:
        return element("mtext", formula.text.toHtmlEscaped());
    case Kind::sign:
        return element("mo", formula.text.toHtmlEscaped());
    case Kind::script:
        return element("msub", joined(formula.parts, &mathMl));
    case Kind::fraction:
        return element("mfrac", joined(formula.parts, &mathMl));
    case Kind::root:
        return element("msqrt", mathMl(formula.parts[0]));
    case Kind::blank:
        return element("mtext", QStringLiteral("____________"));
    }
    return {};
}

} // namespace blinkwright::widgets::formula
