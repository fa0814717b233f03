#include "widgets/rooms/why_view.h"

#include "widgets/rooms/why_words.h"
#include "widgets/text/figure_text.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/text_sized.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

enum Column { nameColumn, bridgeColumn, changeColumn, shareColumn, columns };
constexpr int rowSize = 30, bridgeLeast = 200, barHeight = 14, capHeight = 8, edge = 10;

QString pointsText(double share) {
    return plainNumber(std::abs(share * 100), 'f', 2);
}

} // namespace

/// Paints one row's part of the bridge, and the line that hands the level on to the next row.
class WhyView::Bridge : public QStyledItemDelegate {
  public:
    explicit Bridge(WhyView& view) : QStyledItemDelegate(&view), q(view) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem ground = option;
        ground.text.clear();
        QStyledItemDelegate::paint(painter, ground, index);
        const auto row = static_cast<std::size_t>(index.row());
        if (row >= q.m_bars.size() || !q.m_bars[row].known) return;
        const BridgeBar& bar = q.m_bars[row];
        const QRectF cell = option.rect;
        const double middle = cell.center().y();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QColor ink = option.state.testFlag(QStyle::State_Selected)
                               ? option.palette.color(QPalette::HighlightedText)
                               : q.m_theme.ink;
        if (bar.end) {
            painter->setPen(QPen(ink, bar.measured ? 3 : 2));
            painter->drawLine(QPointF(at(bar.to, cell), middle - barHeight / 2.0),
                              QPointF(at(bar.to, cell), middle + barHeight / 2.0));
        } else {
            const QRectF box = QRectF(QPointF(at(bar.from, cell), middle - barHeight / 2.0),
                                      QPointF(at(bar.to, cell), middle + barHeight / 2.0))
                                   .normalized();
            // Filled where it adds, hollow where it takes away.
            const QColor colour = bar.measured ? q.m_theme.measured : q.m_theme.accent;
            painter->setPen(QPen(colour, 1.5));
            painter->setBrush(bar.to >= bar.from ? QBrush(colour) : QBrush(q.m_theme.paper));
            painter->drawRect(box);
        }
        if (bar.whisker > 0) drawWhisker(painter, bar, cell);
        // Down to the next row that is drawn, so that the eye can follow the level.
        painter->setPen(QPen(ink, 1, Qt::DotLine));
        if (row + 1 < q.m_bars.size())
            painter->drawLine(QPointF(at(bar.to, cell), middle + barHeight / 2.0),
                              QPointF(at(bar.to, cell), cell.bottom()));
        if (row > 0)
            painter->drawLine(QPointF(at(bar.from, cell), cell.top()),
                              QPointF(at(bar.from, cell), middle - barHeight / 2.0));
        painter->restore();
    }

    /// On paper around it, so that it is seen over the bar too.
    void drawWhisker(QPainter* painter, const BridgeBar& bar, const QRectF& cell) const {
        const double left = at(bar.to - bar.whisker, cell), right = at(bar.to + bar.whisker, cell);
        const double middle = cell.center().y();
        const auto draw = [&](const QPen& pen) {
            painter->setPen(pen);
            painter->drawLine(QPointF(left, middle), QPointF(right, middle));
            for (const double x : {left, right})
                painter->drawLine(QPointF(x, middle - capHeight / 2.0), QPointF(x, middle + capHeight / 2.0));
        };
        draw(QPen(q.m_theme.paper, 4, Qt::SolidLine, Qt::SquareCap));
        draw(QPen(q.m_theme.measured, 1.5));
    }

    void measure() {
        m_low = m_high = q.m_bars.empty() ? 0 : q.m_bars.front().to;
        for (const BridgeBar& bar : q.m_bars) {
            if (!bar.known) continue;
            m_low = std::min({m_low, bar.from, bar.to - bar.whisker});
            m_high = std::max({m_high, bar.from, bar.to + bar.whisker});
        }
    }

  private:
    double at(double value, const QRectF& cell) const {
        const double span = m_high - m_low;
        const double share = span > 0 ? (value - m_low) / span : 0.5;
        return cell.left() + edge + share * (cell.width() - 2 * edge);
    }

    WhyView& q;
    double m_low = 0, m_high = 0;
};

WhyView::WhyView(QWidget* parent)
    : QTableWidget(0, columns, parent), m_theme(Theme::of(Theme::Mode::light)), m_bridge(new Bridge(*this)) {
    setObjectName(QStringLiteral("bridge"));
    setAccessibleName(tr("From the textbook to the board"));
    setWhatsThis(tr("From the figure of the textbook down to that of the board: each row is one cause and "
                    "what it adds. What "
                    "was measured stands last."));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    verticalHeader()->hide();
    rowsByText(*this, rowSize);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(bridgeColumn, QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(60);
    horizontalHeader()->setHighlightSections(false);
    sizedByText(*this, [this] { setMinimumWidth(withText(*this, bridgeLeast + 260)); });
    setItemDelegateForColumn(bridgeColumn, m_bridge);
    fill();
}

WhyView::~WhyView() = default;

void WhyView::setWhy(std::shared_ptr<const study::Why> why, const study::WhyMeasured& measured) {
    m_why = std::move(why);
    m_measured = measured;
    fill();
}

void WhyView::setQuantity(Quantity quantity) {
    m_quantity = quantity;
    fill();
}

void WhyView::setTheme(const Theme& theme) {
    m_theme = theme;
    viewport()->update();
}

void WhyView::addRow(const QString& name, const QString& meaning, const QStringList& cells,
                     const BridgeBar& bar) {
    const int row = rowCount();
    insertRow(row);
    m_bars.push_back(bar);
    const QStringList texts{name, QString(), cells[0], cells[1]};
    for (int column = 0; column < columns; ++column) {
        auto* item = new QTableWidgetItem(texts[column]);
        item->setToolTip(meaning);
        if (column >= changeColumn) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        if (column == bridgeColumn)
            item->setData(Qt::AccessibleTextRole, QStringLiteral("%1, %2").arg(cells[0], cells[1]));
        if (bar.end) {
            QFont strong = item->font();
            strong.setBold(true);
            item->setFont(strong);
        }
        setItem(row, column, item);
    }
}

double WhyView::figureOf(const study::Phase& phase) const {
    return m_quantity == Quantity::period ? phase.period_s() : phase.duty();
}

QString WhyView::textOf(double value) const {
    return m_quantity == Quantity::period ? secondsText(value) : shareText(value);
}

QString WhyView::changeText(double value) const {
    return m_quantity == Quantity::period ? signedText(value, secondsText)
                                          : tr("%1 points").arg(signedText(value, pointsText));
}

void WhyView::addMeasured(double book) {
    const bool ofPeriod = m_quantity == Quantity::period;
    const auto& unexplained = ofPeriod ? m_measured.unexplainedPeriod_s : m_measured.unexplainedDuty;
    const auto& measured = ofPeriod ? m_measured.period_s : m_measured.duty;
    if (!unexplained || !measured) return;
    const double simulated = measured->value - unexplained->value;
    const bool uncertain = unexplained->uncertainty > 0;
    const QString multiples =
        uncertain ? tr(" (%1)").arg(multiplesText(unexplained->value / unexplained->uncertainty)) : QString();
    addRow(tr("Unexplained"),
           tr("Measured minus simulated; the whisker is the standard uncertainty u of the measurement. Parts "
              "off "
              "their stated values are a likely reason."),
           {changeText(unexplained->value) + multiples, offText(book + unexplained->value, book)},
           {simulated, measured->value, false, true, true, unexplained->uncertainty});
    addRow(tr("This board, measured"), tr("All measurements in use together"),
           {measuredText(*measured, ofPeriod ? secondsText : shareText), offText(measured->value, book)},
           {measured->value, measured->value, true, true, true, 0});
}

void WhyView::fill() {
    setRowCount(0);
    m_bars.clear();
    const bool ofPeriod = m_quantity == Quantity::period;
    setHorizontalHeaderLabels({tr("From, through, to"), QString(),
                               ofPeriod ? tr("Cycle time") : tr("Duty cycle"), tr("Of the textbook's")});
    setColumnHidden(shareColumn, !ofPeriod);
    if (!m_why || !m_why->textbook) return m_bridge->measure();

    const auto change = [&](const study::WhyChange& c) { return ofPeriod ? c.period_s : c.duty; };
    const double book = figureOf(*m_why->textbook);
    const auto shareOf = [&](double value) { return offText(book + value, book); };

    double level = book;
    addRow(tr("Textbook"), tr("By the formula of the two phases"), {textOf(book), QString()},
           {level, level, true, true});
    for (const study::WhyStep& step : m_why->steps) {
        const QString name = causeName(step.imperfection), meaning = causeMeaning(step.imperfection);
        if (!step.change) {
            addRow(name, meaning + u' ' + tr("With this alone the circuit does not blink."),
                   {tr("does not blink"), QString()}, {level, level, false, false});
            continue;
        }
        const double by = change(*step.change);
        addRow(name, meaning, {changeText(by), shareOf(by)}, {level, level + by, false, true});
        level += by;
    }
    if (m_why->interaction) {
        const double by = change(*m_why->interaction);
        addRow(tr("Together"), tr("What the causes do to each other, beyond what each does alone"),
               {changeText(by), shareOf(by)}, {level, level + by, false, true});
        level += by;
    }
    if (m_why->simulated)
        addRow(tr("This board, simulated"), tr("The settled board with all of it"),
               {textOf(figureOf(*m_why->simulated)), shareOf(figureOf(*m_why->simulated) - book)},
               {level, figureOf(*m_why->simulated), true, true});
    addMeasured(book);
    m_bridge->measure();
    viewport()->update();
}

QString WhyView::asText() const {
    QString text;
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (const int column : {nameColumn, changeColumn, shareColumn})
            if (!isColumnHidden(column)) cells << item(row, column)->text();
        text += cells.join(u'\t') + u'\n';
    }
    return text;
}

} // namespace blinkwright::widgets
