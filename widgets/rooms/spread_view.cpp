#include "widgets/rooms/spread_view.h"

#include "widgets/rooms/band_plot.h"
#include "widgets/rooms/spread_plot.h"

#include <QHBoxLayout>
#include <algorithm>

namespace blinkwright::widgets {

namespace {

/// Digits in threes, with no-break spaces.
QString inThrees(long boards) {
    QString text = QString::number(boards);
    for (qsizetype at = text.size() - 3; at > 0; at -= 3) text.insert(at, QChar(QChar::Nbsp));
    return text;
}

} // namespace

SpreadView::SpreadView(QWidget* parent)
    : QTabWidget(parent), m_plot(new SpreadPlot(RoomPlot::Use::screen)), m_table(new FiguresTable),
      m_parts(new PartsTable), m_band(new BandPlot(RoomPlot::Use::screen)) {
    setDocumentMode(true);
    auto* distribution = new QWidget;
    auto* row = new QHBoxLayout(distribution);
    row->setContentsMargins(0, 6, 0, 0);
    row->addWidget(m_plot, 1);
    row->addWidget(m_table);
    addTab(distribution, tr("&Distribution"));
    addTab(m_parts, tr("&Parts"));
    addTab(m_band, tr("Cur&ves"));
    setTabWhatsThis(0, tr("How the chosen figure is distributed over the boards, as bars and as figures."));
    setTabWhatsThis(1, tr("Which part does how much of the scatter, and which parts come from one reel."));
    setTabWhatsThis(2, tr("How far the curves of the boards lie apart at each time."));
    connect(m_parts, &PartsTable::reelWished, this, &SpreadView::reelWished);
}

SpreadView::~SpreadView() = default;

void SpreadView::setOutcome(std::shared_ptr<const study::SpreadOutcome> outcome,
                            std::shared_ptr<const study::Band> band, const circuit::Circuit& circuit,
                            circuit::PartSet set) {
    m_outcome = std::move(outcome);
    m_circuit = circuit;
    m_set = set;
    m_figures = spreadFigures(*m_outcome);
    m_band->setBand(std::move(band), set);
    show();
}

void SpreadView::clear() {
    m_outcome.reset();
    m_figures.clear();
    m_band->setBand(nullptr, m_set);
    show();
}

void SpreadView::setFigure(std::size_t figure) {
    m_figure = figure;
    show();
}

void SpreadView::show() {
    if (m_figure >= m_figures.size()) m_figure = 0;
    if (m_figures.empty()) {
        m_plot->clear();
        m_table->setFigure({});
        m_parts->clear();
        m_plot->setSummary({});
        return;
    }
    const SpreadFigureView& figure = m_figures[m_figure];
    m_plot->setFigure(figure, m_set);
    m_plot->setSummary(words());
    m_table->setFigure(figure);
    m_parts->setParts(*m_outcome, figure, m_circuit, m_set);
}

QString SpreadView::words() const {
    if (m_figures.empty()) return {};
    const SpreadFigureView& figure = m_figures[m_figure];
    const study::SpreadFigure& s = figure.statistics;
    const auto blinking = static_cast<long>(figure.values.size());
    QStringList words;
    words << (blinking == m_outcome->boards
                  ? tr("All %1 boards blink.").arg(inThrees(m_outcome->boards))
                  : tr("%1 of %2 boards blink.").arg(inThrees(blinking), inThrees(m_outcome->boards)));
    words << tr("%1 of 9 in 10: %2 to %3.").arg(figure.name, figure.text(s.p5), figure.text(s.p95));
    const long beyond = figure.boardsBeyond();
    if (!m_outcome->cornersBlink)
        words << tr("Some boards at the limits do not blink: the worst case has no true end.");
    else
        words << (beyond == 0 ? tr("Every one lies within the worst case, %1 to %2.")
                                    .arg(figure.text(s.worstLow), figure.text(s.worstHigh))
                              : tr("%1 lie beyond the worst case that was found.").arg(inThrees(beyond)));
    return words.join(u' ');
}

const RoomPlot& SpreadView::plotInFront() const {
    if (currentWidget() == m_band) return *m_band;
    return *m_plot;
}

QString SpreadView::text() const {
    return tableText(currentWidget() == m_parts ? static_cast<const QTableWidget&>(*m_parts) : *m_table);
}

void SpreadView::setTheme(const Theme& theme) {
    m_plot->setTheme(theme);
    m_band->setTheme(theme);
    m_parts->setTheme(theme);
}

} // namespace blinkwright::widgets
