#include "widgets/text/formula_layout.h"

#include <QFontMetricsF>
#include <algorithm>

namespace blinkwright::widgets::formula {

namespace {

using Kind = Formula::Kind;

// Shares of the height of a capital letter, common practice.
constexpr double scriptSize = 0.72, scriptDrop = 0.32, axisHeight = 0.42, fractionGap = 0.22,
                 fractionEdge = 0.18, signSpace = 0.35, rootHook = 0.62, rootGap = 0.2;
constexpr double blankWidths = 22, blankHeight = 1.7; ///< of a blank, in heights of an `x` and of a line
constexpr double barWidth = 0.9;

QFont smaller(QFont font) {
    font.setPixelSize(std::max(6, qRound(font.pixelSize() * scriptSize)));
    return font;
}

QFont fontOf(const Formula& formula, QFont font) {
    font.setItalic(formula.kind == Kind::symbol);
    return font;
}

double capital(const QFont& font) {
    return QFontMetricsF(font).capHeight();
}

struct FractionPlaces {
    double width, axis, over, under; ///< baselines of both parts from the formula's own, down positive
};
FractionPlaces placesOf(const QFont& font, const FormulaBox& over, const FormulaBox& under) {
    const double cap = capital(font), axis = -axisHeight * cap, gap = fractionGap * cap;
    return {std::max(over.width, under.width) + 2 * fractionEdge * cap, axis, axis - gap - over.descent,
            axis + gap + under.ascent};
}

/// How far the bar of a root is above the baseline: over what is seen, not over the line of text.
double rootTop(const Formula& of, const QFont& font) {
    const double cap = capital(font);
    const bool tall = of.kind == Kind::fraction || of.kind == Kind::row;
    return (tall ? measured(of, font).ascent : cap) + rootGap * cap;
}

} // namespace

FormulaBox measured(const Formula& formula, const QFont& font) {
    FormulaBox box;
    switch (formula.kind) {
    case Kind::row:
        for (const Formula& part : formula.parts) {
            const FormulaBox inner = measured(part, font);
            box.width += inner.width;
            box.ascent = std::max(box.ascent, inner.ascent);
            box.descent = std::max(box.descent, inner.descent);
        }
        return box;
    case Kind::symbol:
    case Kind::word:
    case Kind::sign:
    case Kind::blank: {
        const QFontMetricsF metrics(fontOf(formula, font));
        box = {metrics.horizontalAdvance(formula.text), metrics.ascent(), metrics.descent()};
        if (formula.kind == Kind::sign) box.width += 2 * signSpace * metrics.capHeight();
        if (formula.kind == Kind::blank)
            box = {blankWidths * metrics.xHeight(), blankHeight * metrics.ascent(), metrics.descent()};
        return box;
    }
    case Kind::script: {
        const FormulaBox base = measured(formula.parts[0], font);
        const FormulaBox below = measured(formula.parts[1], smaller(font));
        const double drop = scriptDrop * capital(font);
        return {base.width + below.width + 1, base.ascent, std::max(base.descent, below.descent + drop)};
    }
    case Kind::fraction: {
        const FormulaBox over = measured(formula.parts[0], font), under = measured(formula.parts[1], font);
        const FractionPlaces p = placesOf(font, over, under);
        return {p.width, over.ascent - p.over, p.under + under.descent};
    }
    case Kind::root: {
        const FormulaBox of = measured(formula.parts[0], font);
        const double cap = capital(font);
        return {of.width + (rootHook + rootGap) * cap, rootTop(formula.parts[0], font) + barWidth,
                of.descent};
    }
    }
    return box;
}

void paintFormula(QPainter& painter, const Formula& formula, const QFont& font, QPointF at) {
    switch (formula.kind) {
    case Kind::row:
        for (const Formula& part : formula.parts) {
            paintFormula(painter, part, font, at);
            at.rx() += measured(part, font).width;
        }
        return;
    case Kind::symbol:
    case Kind::word:
    case Kind::sign:
        painter.setFont(fontOf(formula, font));
        if (formula.kind == Kind::sign) at.rx() += signSpace * capital(font);
        painter.drawText(at, formula.text);
        return;
    case Kind::blank:
        painter.drawLine(at + QPointF(0, 1), at + QPointF(measured(formula, font).width, 1));
        return;
    case Kind::script: {
        paintFormula(painter, formula.parts[0], font, at);
        const double along = measured(formula.parts[0], font).width + 1;
        paintFormula(painter, formula.parts[1], smaller(font),
                     at + QPointF(along, scriptDrop * capital(font)));
        return;
    }
    case Kind::fraction: {
        const FormulaBox over = measured(formula.parts[0], font), under = measured(formula.parts[1], font);
        const FractionPlaces p = placesOf(font, over, under);
        paintFormula(painter, formula.parts[0], font, at + QPointF((p.width - over.width) / 2, p.over));
        paintFormula(painter, formula.parts[1], font, at + QPointF((p.width - under.width) / 2, p.under));
        painter.save();
        QPen pen = painter.pen();
        pen.setWidthF(barWidth);
        painter.setPen(pen);
        painter.drawLine(at + QPointF(0, p.axis), at + QPointF(p.width, p.axis));
        painter.restore();
        return;
    }
    case Kind::root: {
        const double cap = capital(font), top = -rootTop(formula.parts[0], font), hook = rootHook * cap;
        const double end = measured(formula, font).width;
        painter.save();
        QPen pen = painter.pen();
        pen.setWidthF(barWidth);
        pen.setJoinStyle(Qt::MiterJoin);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        const QPointF way[] = {at + QPointF(0, -0.45 * cap), at + QPointF(0.18 * cap, -0.55 * cap),
                               at + QPointF(0.38 * cap, 0.08 * cap), at + QPointF(hook, top),
                               at + QPointF(end, top)};
        painter.drawPolyline(way, static_cast<int>(std::size(way)));
        painter.restore();
        paintFormula(painter, formula.parts[0], font, at + QPointF(hook + rootGap * cap / 2, 0));
        return;
    }
    }
}

} // namespace blinkwright::widgets::formula
