#include "widgets/measure/record_figures_table.h"

#include "widgets/text/figure_text.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"

#include <QHeaderView>

namespace blinkwright::widgets {

namespace {

enum Column { name, value, uncertainty, columns };
constexpr int figuresWidth = 320;

// An uncertainty is stated to two digits (JCGM 100:2008, 7.2.6).
QString timeUncertainty(double value_s) {
    return QString::fromStdString(units::formatQuantity(value_s, units::Unit::second, 2));
}
QString shareUncertainty(double share) {
    return QString::fromStdString(units::formatQuantity(100 * share, units::Unit::none, 2)) + QChar(0xA0) +
           u'%';
}

} // namespace

RecordFiguresTable::RecordFiguresTable(QWidget* parent) : QTableWidget(parent) {
    setObjectName(QStringLiteral("figures"));
    setAccessibleName(tr("Figures of the record"));
    setWhatsThis(tr("What the record says of the blinker, each figure with its standard uncertainty."));
    setEditTriggers(NoEditTriggers);
    setSelectionMode(ContiguousSelection);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setColumnCount(columns);
    setHorizontalHeaderLabels({tr("Figure"), tr("Measured"), tr("Uncertainty")});
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeaderItem(uncertainty)->setToolTip(tr("Standard uncertainty: one standard deviation, k = 1"));
    horizontalHeader()->setSectionResizeMode(name, QHeaderView::ResizeToContents);
    verticalHeader()->hide();
    sizedByText(*this, [this] { verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6); });
    setFigures({});
}

QSize RecordFiguresTable::sizeHint() const {
    const int rows = rowCount() * verticalHeader()->defaultSectionSize();
    return {withText(*this, figuresWidth), rows + horizontalHeader()->sizeHint().height() + 2 * frameWidth()};
}

void RecordFiguresTable::setFigures(const study::RecordFigures& figures) {
    struct Row {
        QString name;
        const std::optional<circuit::Measured>& figure;
        FigureText text, uncertainty;
    };
    const Row rows[] = {{tr("Cycle time"), figures.period_s, secondsText, timeUncertainty},
                        {tr("Pulse width (high)"), figures.high_s, secondsText, timeUncertainty},
                        {tr("Space width (low)"), figures.low_s, secondsText, timeUncertainty},
                        {tr("Duty cycle"), figures.duty, shareText, shareUncertainty},
                        {tr("First flash"), figures.firstHigh_s, secondsText, timeUncertainty}};
    setRowCount(static_cast<int>(std::size(rows)));
    int r = 0;
    for (const Row& row : rows) {
        const auto put = [&](Column column, const QString& text) {
            auto* item = new QTableWidgetItem(text);
            if (column != name) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            setItem(r, column, item);
        };
        put(name, row.name);
        put(value, row.figure ? row.text(row.figure->value) : noValue);
        put(uncertainty, row.figure ? row.uncertainty(row.figure->uncertainty) : noValue);
        ++r;
    }
}

} // namespace blinkwright::widgets
