#include "widgets/rooms/trend_words.h"

#include "core/base/wording.h"
#include "core/units/engineering.h"
#include "widgets/text/words.h"

namespace blinkwright::widgets {

namespace {

QString presentWords(const TrendPicture& picture, const TrendLine& line) {
    const QString present = picture.value.text(line.present);
    const QString subject =
        picture.lines.size() > 1 ? line.name + u' ' + present : picture.value.name + u' ' + present;
    if (!picture.range.holds(line.present)) return Words::tr("%1: outside this range.").arg(subject);
    const auto figure = figureAt(line, picture.figure, picture.range, line.present);
    if (!figure) return Words::tr("%1: does not blink.").arg(subject);
    QString words = Words::tr("%1: %2").arg(subject, picture.figure.text(*figure));
    for (const study::TrendPoint& point : line.exact) {
        if (point.value != line.present) continue;
        if (const auto book = textbookOf(picture.figure, point)) {
            words += Words::tr(", %1 to the textbook").arg(offText(*figure, *book));
            break;
        }
    }
    return words + u'.';
}

QString gapWords(const TrendPicture& picture, const TrendLine& line) {
    QStringList all;
    for (const TrendGap& gap : gapsOf(line, picture.range)) {
        const auto text = [&](double value) { return picture.value.text(roundedTo3(value)); };
        const bool fromStart = gap.from <= picture.range.from, toEnd = gap.to >= picture.range.to;
        const QString where = fromStart && toEnd ? Words::tr("anywhere in this range")
                              : fromStart        ? Words::tr("below about %1").arg(text(gap.to))
                              : toEnd            ? Words::tr("above about %1").arg(text(gap.from))
                                      : Words::tr("from about %1 to %2").arg(text(gap.from), text(gap.to));
        all << (picture.lines.size() > 1 ? Words::tr("%1 does not blink %2.").arg(line.name, where)
                                         : Words::tr("Does not blink %1.").arg(where));
    }
    return all.join(u' ');
}

} // namespace

QString trendWords(const TrendPicture& picture) {
    QStringList words;
    if (picture.lines.size() > 1) words << picture.value.name + u':';
    for (const TrendLine& line : picture.lines) words << presentWords(picture, line);
    for (const TrendLine& line : picture.lines)
        if (const QString gaps = gapWords(picture, line); !gaps.isEmpty()) words << gaps;
    return words.join(u' ');
}

QString trendTable(const TrendPicture& picture) {
    const auto unit = [](units::Unit u, bool share) {
        const std::string_view symbol = units::symbol(u);
        return share || symbol.empty() ? QString()
                                       : QStringLiteral(" [%1]").arg(QString::fromUtf8(
                                             symbol.data(), static_cast<int>(symbol.size())));
    };
    const QString figure = picture.figure.name + unit(picture.figure.unit, picture.figure.isShare());
    QStringList head{picture.value.name + unit(picture.value.unit, false)};
    for (const TrendLine& line : picture.lines)
        head << figure + u' ' + line.name << Words::tr("Textbook %1").arg(line.name);
    QString table = head.join(u'\t') + u'\n';
    const auto cell = [](const std::optional<double>& value) {
        if (!value) return QString();
        return QString::fromStdString(units::shortest(*value))
            .replace(u'.', QLatin1Char(wording::decimalSign()));
    };
    if (picture.lines.empty()) return {};
    for (std::size_t k = 0; k < picture.lines.front().trend->points.size(); ++k) {
        QStringList cells{cell(picture.lines.front().trend->points[k].value)};
        for (const TrendLine& line : picture.lines) {
            const study::TrendPoint& point = line.trend->points[k];
            cells << cell(figureOf(picture.figure, point)) << cell(textbookOf(picture.figure, point));
        }
        table += cells.join(u'\t') + u'\n';
    }
    return table;
}

} // namespace blinkwright::widgets
