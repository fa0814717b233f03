#include "widgets/curves/curves_export.h"

#include "widgets/curves/page_sheet.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/text/words.h"

#include <QSaveFile>
#include <algorithm>

namespace blinkwright::widgets {

namespace {

/// Vector formats are thinned as for a fine print: 300 dots to the inch.
constexpr double vectorScale = 300 / PageSheet::layoutDpi;

/// Puts the curves on a plot for a page, thinned for so many dots to a layout pixel.
void fill(StripPlot& plot, const PageCurves& curves, const CurvesPage& page, const QSize& room,
          double scale) {
    plot.setFont(PageSheet::font(page.fontPoints));
    plot.setTheme(PageSheet::theme());
    plot.setPageStyle(page.style);
    const auto drawn = [](const engine::Curves* c) {
        return c && c->time_s.size() > 1 && c->time_s.back() > c->time_s.front() ? c : nullptr;
    };
    StripSources sources;
    sources.curves = drawn(curves.first);
    sources.second = drawn(curves.second);
    sources.records = &curves.records;
    std::optional<Span> all;
    for (const engine::Curves* c : {sources.curves, sources.second})
        if (c)
            all = all ? Span{std::min(all->begin, c->time_s.front()), std::max(all->end, c->time_s.back())}
                      : Span{c->time_s.front(), c->time_s.back()};
    const Span span = page.span.value_or(all.value_or(Span{0, 1}));
    if (page.moment_s && sources.curves)
        plot.setMoment(engine::momentOf(*sources.curves, *page.moment_s), false);
    plot.resize(room);
    plot.layOut(room.height());
    plot.setBand(curves.first ? curves.band : nullptr);
    plot.setSecondName(curves.secondName, curves.secondBrief);
    const int columns = static_cast<int>(room.width() * scale);
    const int height = static_cast<int>(room.height() * scale / stripCount);
    plot.setVisibleSpan(span);
    plot.setPicture(stripPicture(sources, span, columns, {height, height, height}), all.has_value());
}

} // namespace

QImage curvesPicture(const PageCurves& curves, const CurvesPage& page) {
    const PageSheet sheet(page);
    StripPlot plot(nullptr, StripPlot::Use::page);
    fill(plot, curves, page, sheet.room().size(), sheet.scale());
    return sheet.image(plot);
}

void paintCurves(QCPPainter& painter, const PageCurves& curves, const QSize& room) {
    StripPlot plot(nullptr, StripPlot::Use::page);
    fill(plot, curves, {}, room, vectorScale);
    painter.save();
    painter.setMode(QCPPainter::pmVectorized);
    painter.setMode(QCPPainter::pmNonCosmetic);
    plot.toPainter(&painter, room.width(), room.height());
    painter.restore();
}

Result<void> exportCurves(const PageCurves& curves, const CurvesPage& page, PageFormat format,
                          const QString& path) {
    const PageSheet sheet(page);
    StripPlot plot(nullptr, StripPlot::Use::page);
    const double scale = format == PageFormat::png ? sheet.scale() : vectorScale;
    fill(plot, curves, page, sheet.room().size(), scale);
    // The file itself comes last, so that nothing half done ever stands in it.
    const Result<QByteArray> bytes = sheet.written(plot, format);
    if (!bytes) return Fault{path.toStdString(), bytes.fault().text};
    QSaveFile file(path);
    // Flushed by hand: commit() of Qt 6.4 overlooks a write that fails while its buffer is emptied.
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.value()) != bytes.value().size() ||
        !file.flush() || !file.commit())
        return Fault{path.toStdString(),
                     Words::tr("cannot be written: %1").arg(file.errorString()).toStdString()};
    return {};
}

} // namespace blinkwright::widgets
