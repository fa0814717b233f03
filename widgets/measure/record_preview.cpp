#include "widgets/measure/record_preview.h"

#include "widgets/text/text_sized.h"

#include <QHeaderView>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr std::size_t rowsBelowHeader = 12, mostRows = 200;
constexpr int widestColumn = 220;

} // namespace

QString traceText(circuit::TraceOf of) {
    switch (of) {
    case circuit::TraceOf::output:
        return RecordPreview::tr("Output");
    case circuit::TraceOf::capacitor:
        return RecordPreview::tr("Timing capacitor");
    case circuit::TraceOf::other:
        break;
    }
    return RecordPreview::tr("Something else");
}

RecordPreview::RecordPreview(QWidget* parent) : QTableWidget(parent), m_theme(Theme::of(Theme::Mode::light)) {
    setObjectName(QStringLiteral("preview"));
    setAccessibleName(tr("First lines of the file"));
    setWhatsThis(
        tr("The beginning of the file as it is split into columns, and what each column is taken for."));
    setEditTriggers(NoEditTriggers);
    setSelectionMode(ContiguousSelection);
    setHorizontalScrollMode(ScrollPerPixel);
    setTabKeyNavigation(false);
    setWordWrap(false);
    sizedByText(*this, [this] { verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6); });
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->setHighlightSections(false);
}

void RecordPreview::setRecordLayout(const io::RecordLayout& layout) {
    m_layout = layout;
    fill();
}

void RecordPreview::setTheme(const Theme& theme) {
    m_theme = theme;
    fill();
}

QString RecordPreview::roleOf(std::size_t column) const {
    if (m_layout.timeColumn == column) return tr("Time");
    for (const io::VoltageColumn& voltage : m_layout.voltages)
        if (voltage.column == column) return traceText(voltage.of);
    return tr("not read");
}

void RecordPreview::fill() {
    const std::size_t above = m_layout.preambleLines + m_layout.headerLines;
    const auto rows = io::firstRows(m_text, m_layout.separator, std::min(above + rowsBelowHeader, mostRows));
    std::size_t columns = m_layout.columns.size();
    for (const auto& row : rows) columns = std::max(columns, row.size());
    clear();
    setRowCount(static_cast<int>(rows.size()));
    setColumnCount(static_cast<int>(columns));
    for (std::size_t c = 0; c < columns; ++c) {
        auto* head = new QTableWidgetItem(QStringLiteral("%1\n%2").arg(c + 1).arg(roleOf(c)));
        setHorizontalHeaderItem(static_cast<int>(c), head);
    }
    for (std::size_t r = 0; r < rows.size(); ++r) {
        setVerticalHeaderItem(static_cast<int>(r), new QTableWidgetItem(QString::number(r + 1)));
        const bool passedOver = r < m_layout.preambleLines, names = !passedOver && r < above;
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            auto* item = new QTableWidgetItem(QString::fromStdString(rows[r][c]));
            const bool used = !passedOver && roleOf(c) != tr("not read");
            item->setForeground(used ? m_theme.ink : m_theme.quietInk);
            if (names) {
                QFont bold = font();
                bold.setBold(true);
                item->setFont(bold);
            } else if (!passedOver) {
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            }
            setItem(static_cast<int>(r), static_cast<int>(c), item);
        }
    }
    // A remark in the first column must not push the numbers out of sight.
    resizeColumnsToContents();
    for (int c = 0; c < columnCount(); ++c) setColumnWidth(c, std::min(columnWidth(c), widestColumn));
    const int first = static_cast<int>(m_layout.preambleLines);
    if (first < rowCount() && columnCount() > 0) scrollTo(model()->index(first, 0), PositionAtTop);
}

} // namespace blinkwright::widgets
