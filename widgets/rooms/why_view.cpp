#include "widgets/rooms/why_view.h"

#include "widgets/rooms/why_words.h"
#include "widgets/text/figure_text.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

enum Column { nameColumn, bridgeColumn, changeColumn, shareColumn, columns };
constexpr int rowSize = 30, bridgeLeast = 200, barHeight = 14, edge = 10;

QString pointsText(double share) {
    return QString::number(std::abs(share * 100), 'f', 2);
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
            painter->setPen(QPen(ink, 2));
            painter->drawLine(QPointF(at(bar.to, cell), middle - barHeight / 2.0),
                              QPointF(at(bar.to, cell), middle + barHeight / 2.0));
        } else {
            const QRectF box = QRectF(QPointF(at(bar.from, cell), middle - barHeight / 2.0),
                                      QPointF(at(bar.to, cell), middle + barHeight / 2.0))
                                   .normalized();
            // Filled where it adds, hollow where it takes away.
            painter->setPen(QPen(q.m_theme.accent, 1.5));
            painter->setBrush(bar.to >= bar.from ? QBrush(q.m_theme.accent) : QBrush(q.m_theme.paper));
            painter->drawRect(box);
        }
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

    void measure() {
        m_low = m_high = q.m_bars.empty() ? 0 : q.m_bars.front().to;
        for (const BridgeBar& bar : q.m_bars) {
            if (!bar.known) continue;
            m_low = std::min({m_low, bar.from, bar.to});
            m_high = std::max({m_high, bar.from, bar.to});
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
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(rowSize);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(bridgeColumn, QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(60);
    horizontalHeader()->setHighlightSections(false);
    setMinimumWidth(bridgeLeast + 260);
    setItemDelegateForColumn(bridgeColumn, m_bridge);
    fill();
}

WhyView::~WhyView() = default;

void WhyView::setWhy(std::shared_ptr<const study::Why> why) {
    m_why = std::move(why);
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

void WhyView::fill() {
    setRowCount(0);
    m_bars.clear();
    const bool ofPeriod = m_quantity == Quantity::period;
    setHorizontalHeaderLabels({tr("From, through, to"), QString(),
                               ofPeriod ? tr("Cycle time") : tr("Duty cycle"), tr("Of the textbook's")});
    setColumnHidden(shareColumn, !ofPeriod);
    if (!m_why || !m_why->textbook) return m_bridge->measure();

    const auto figure = [&](const study::Phase& phase) { return ofPeriod ? phase.period_s() : phase.duty(); };
    const auto change = [&](const study::WhyChange& c) { return ofPeriod ? c.period_s : c.duty; };
    const auto text = [&](double value) { return ofPeriod ? secondsText(value) : shareText(value); };
    const auto changeText = [&](double value) {
        return ofPeriod ? signedText(value, secondsText) : tr("%1 points").arg(signedText(value, pointsText));
    };
    const double book = figure(*m_why->textbook);
    const auto shareOf = [&](double value) { return offText(book + value, book); };

    double level = book;
    addRow(tr("Textbook"), tr("By the formula of the two phases"), {text(book), QString()},
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
               {text(figure(*m_why->simulated)), shareOf(figure(*m_why->simulated) - book)},
               {level, figure(*m_why->simulated), true, true});
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
