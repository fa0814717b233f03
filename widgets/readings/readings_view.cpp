#include "widgets/readings/readings_view.h"

#include "widgets/readings/reading_rows.h"
#include "widgets/readings/tinted_head.h"
#include "widgets/text/steady_label.h"
#include "widgets/text/text_sized.h"

#include <QAbstractTableModel>
#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QScrollBar>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

namespace blinkwright::widgets {

namespace {

enum Column { figure, textbook, setA, difference, second, against, measured, off, columnCount };
constexpr int headRoom = 24; ///< of a head, beside its text [px]
constexpr int nameRoom = 16; ///< beside the longest name of a figure [px]

class ReadingModel : public QAbstractTableModel {
  public:
    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(rows.size());
    }
    int columnCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : Column::columnCount;
    }

    static const ReadingCell& cellOf(const ReadingRow& row, int column) {
        switch (column) {
        case Column::textbook:
            return row.textbook;
        case Column::setA:
            return row.setA;
        case Column::second:
            return row.second;
        case Column::against:
            return row.against;
        case Column::measured:
            return row.measured;
        case Column::off:
            return row.off;
        default:
            return row.difference;
        }
    }
    QVariant data(const QModelIndex& index, int role) const override {
        const ReadingRow& row = rows[static_cast<std::size_t>(index.row())];
        const int column = index.column();
        const bool first = column == Column::figure;
        switch (role) {
        case Qt::DisplayRole:
            return first ? row.figure : cellOf(row, column).text;
        case Qt::ToolTipRole:
            return first ? row.meaning : cellOf(row, column).why;
        case Qt::TextAlignmentRole:
            return QVariant(Qt::AlignVCenter | (first ? Qt::AlignLeft : Qt::AlignRight));
        case Qt::AccessibleTextRole:
            if (first || row.heading) return first ? row.figure : QString();
            return QStringLiteral("%1, %2: %3")
                .arg(row.figure, headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                     cellOf(row, column).why.isEmpty() ? cellOf(row, column).text : cellOf(row, column).why);
        case Qt::FontRole:
            if (row.heading) {
                QFont bold = QApplication::font();
                bold.setBold(true);
                return bold;
            }
            return {};
        case Qt::ForegroundRole:
            if (!first && (column == Column::textbook || column == Column::difference ||
                           !cellOf(row, column).why.isEmpty()))
                return theme.quietInk;
            return theme.ink;
        case Qt::BackgroundRole:
            return row.heading ? QVariant(theme.window) : QVariant();
        default:
            return {};
        }
    }
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
        if (orientation != Qt::Horizontal) return {};
        if (role == Qt::TextAlignmentRole)
            return QVariant(Qt::AlignVCenter | (section == figure ? Qt::AlignLeft : Qt::AlignRight));
        if (role == Qt::ToolTipRole && section == Column::difference)
            return ReadingsView::tr("Set A against the textbook");
        if (role == Qt::ToolTipRole && section == Column::second) return name;
        if (role == Qt::ToolTipRole && section == Column::against)
            return ReadingsView::tr("%1 minus Set A").arg(name);
        if (role == Qt::ToolTipRole && section == Column::measured)
            return ReadingsView::tr("On the real board, with its standard uncertainty");
        if (role == Qt::ToolTipRole && section == Column::off)
            return ReadingsView::tr("Measured minus Set A; u is the standard uncertainty of the measurement");
        if (role == Qt::ForegroundRole && section == Column::measured) return theme.measured;
        if (role == Qt::ForegroundRole && section == Column::setA) return theme.setA;
        if (role == Qt::ForegroundRole && section == Column::second) return theme.setB;
        if (role != Qt::DisplayRole) return {};
        switch (section) {
        case figure:
            return ReadingsView::tr("Figure");
        case textbook:
            return ReadingsView::tr("Textbook");
        case setA:
            return ReadingsView::tr("Set A");
        case second:
            return shortName;
        case against:
            return shortName == name ? differenceName() : ReadingsView::tr("Difference");
        case Column::measured:
            return ReadingsView::tr("Measured");
        case off:
            return ReadingsView::tr("Measured − A");
        default:
            return ReadingsView::tr("Difference");
        }
    }

    /// @return whether the rows themselves are others than before.
    bool take(std::vector<ReadingRow> fresh) {
        const bool same =
            std::equal(rows.begin(), rows.end(), fresh.begin(), fresh.end(),
                       [](auto& a, auto& b) { return a.heading == b.heading && a.figure == b.figure; });
        if (!same) {
            beginResetModel();
            rows = std::move(fresh);
            endResetModel();
            return true;
        }
        for (std::size_t k = 0; k < rows.size(); ++k) {
            int low = Column::columnCount, high = -1;
            for (int c = Column::textbook; c < Column::columnCount; ++c)
                if (!(cellOf(rows[k], c) == cellOf(fresh[k], c))) {
                    low = std::min(low, c);
                    high = c;
                }
            if (high < 0) continue;
            rows[k] = std::move(fresh[k]);
            emit dataChanged(index(static_cast<int>(k), low), index(static_cast<int>(k), high),
                             {Qt::DisplayRole});
        }
        return false;
    }

    std::vector<ReadingRow> rows;
    QString differenceName() const { return ReadingsView::tr("%1 − Set A").arg(name); }

    QString name;      ///< of what Set A is compared with; empty without a comparison
    QString shortName; ///< the same, cut down to the width of its column
    Theme theme = Theme::of(Theme::Mode::light);
};

} // namespace

class ReadingsView::Private {
  public:
    using Shared = ReadingsView::Shared;

    explicit Private(ReadingsView* view) : q(view) {
        verdict = new SteadyLabel;
        verdict->label()->setWordWrap(true);
        verdict->label()->setContentsMargins(8, 3, 8, 4);
        verdict->label()->setTextFormat(Qt::PlainText);
        verdict->label()->setTextInteractionFlags(Qt::TextSelectableByMouse);
        // Its width is the panel's business: a longer sentence wraps, it does not widen the window.
        verdict->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
        QFont bold = verdict->font();
        bold.setBold(true);
        verdict->label()->setFont(bold);
        table = new QTableView;
        table->setHorizontalHeader(new TintedHead(Qt::Horizontal, table));
        table->horizontalHeader()->setSectionsClickable(true);
        table->setModel(&model);
        table->setFrameShape(QFrame::NoFrame);
        table->setShowGrid(false);
        table->setWordWrap(false);
        table->setSelectionMode(QAbstractItemView::SingleSelection);
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->setTabKeyNavigation(false);
        table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
        table->verticalHeader()->hide();
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setHighlightSections(false);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setSectionResizeMode(figure, QHeaderView::Stretch);
        sizedByText(*table, [this] { measure(); });
        table->setAccessibleName(ReadingsView::tr("Readings"));
        table->setWhatsThis(ReadingsView::tr(
            "What the simulated circuit does, beside the formula of the textbook, what it is compared "
            "with, and what was measured. Ctrl+C copies the table."));
        auto* layout = new QVBoxLayout(view);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(0);
        layout->addWidget(verdict);
        layout->addWidget(table, 1);
        view->setFocusProxy(table);
        view->setAccessibleName(ReadingsView::tr("Readings"));
        auto* copy = new QShortcut(QKeySequence::Copy, table);
        copy->setContext(Qt::WidgetShortcut);
        QObject::connect(copy, &QShortcut::activated, view,
                         [view] { QApplication::clipboard()->setText(view->asText()); });
    }

    void measure() {
        const QFontMetrics metrics = table->fontMetrics();
        table->verticalHeader()->setDefaultSectionSize(metrics.height() + 4);
        wide = metrics.horizontalAdvance(QStringLiteral("0.0000 Hz")) + 26;
        for (int c : {Column::textbook, Column::setA, Column::difference, Column::second}) widths[c] = wide;
        const auto fit = [&](Column c, const char* text) {
            widths[c] = metrics.horizontalAdvance(QString::fromUtf8(text)) + 18;
        };
        fit(Column::against, "+0.000 percentage points");
        fit(Column::measured, "000.0 ± 0.0 ms");
        fit(Column::off, "+0.00 % (0.0 u)");
        for (const auto& [c, width] : widths) table->setColumnWidth(c, width);
        // Its head at least stays whole, however many columns there are beside it.
        QHeaderView& head = *table->horizontalHeader();
        head.setMinimumSectionSize(metrics.horizontalAdvance(ReadingsView::tr("Figure")) + headRoom);
        if (comparing()) model.shortName = metrics.elidedText(model.name, Qt::ElideRight, wide - 12);
        fitMeasured(model.rows);
        showColumns();
    }

    bool comparing() const { return !model.name.isEmpty(); }
    std::vector<int> columns() const {
        std::vector<int> all{textbook, setA};
        if (comparing())
            all.insert(all.end(), {second, against});
        else
            all.push_back(difference);
        if (!measuredFigures.empty()) all.insert(all.end(), {Column::measured, off});
        return all;
    }
    /// Where not all find room beside the names of the figures, the difference to the textbook goes first,
    /// then the textbook's figures.
    void showColumns() {
        std::vector<int> shown = columns();
        // The table itself gets its new size only after the view.
        int room = q->width() - table->verticalScrollBar()->sizeHint().width() - nameRoom -
                   table->fontMetrics().horizontalAdvance(ReadingsView::tr("Pulse width (high)"));
        for (int c : shown) room -= widths.at(c);
        if (comparing() || !measuredFigures.empty())
            for (const int c : {difference, textbook}) {
                if (room >= 0) break;
                if (std::erase(shown, c) > 0) room += widths.at(c);
            }
        for (int c = textbook; c < columnCount; ++c)
            table->setColumnHidden(c, std::find(shown.begin(), shown.end(), c) == shown.end());
    }
    /// As wide as the longest that has stood in them: how many figures there are depends on the uncertainty.
    void fitMeasured(const std::vector<ReadingRow>& rows) {
        if (measuredFigures.empty()) return;
        bool wider = false;
        for (const int c : {int(Column::measured), int(off)})
            for (const ReadingRow& row : rows) {
                const QString& text = ReadingModel::cellOf(row, c).text;
                const int need = table->fontMetrics().horizontalAdvance(text) + 18;
                if (need <= widths[c]) continue;
                widths[c] = need;
                table->setColumnWidth(c, need);
                wider = true;
            }
        if (wider) showColumns();
    }
    void show() {
        ReadingTable fresh;
        if (readings)
            fresh = readingTable(*readings);
        else
            fresh.verdict = ReadingsView::tr("No readings yet.");
        if (readings && !measuredFigures.empty()) addMeasured(fresh, measuredFigures);
        if (comparing() && readings) {
            if (other)
                compareTables(fresh, readingTable(*other), model.name);
            else
                compareWithNothing(fresh, model.name);
        }
        fitMeasured(fresh.rows);
        if (verdict->text() != fresh.verdict) {
            verdict->setText(fresh.verdict);
            verdict->label()->setAccessibleName(fresh.verdict);
        }
        if (!model.take(std::move(fresh.rows))) return;
        table->scrollToTop(); // another circuit is read from its first row
        table->clearSpans();
        for (std::size_t k = 0; k < model.rows.size(); ++k)
            if (model.rows[k].heading) table->setSpan(static_cast<int>(k), 0, 1, columnCount);
    }

    ReadingsView* q;
    Shared readings, other;
    std::vector<study::MeasuredAgainst> measuredFigures;
    int wide = 0;              ///< of a column of figures [px]
    std::map<int, int> widths; ///< by column, of figures [px]
    ReadingModel model;
    SteadyLabel* verdict;
    QTableView* table;
};

ReadingsView::ReadingsView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(this)) {
}
ReadingsView::~ReadingsView() {
    d->table->setModel(nullptr);
}

void ReadingsView::setReadings(Shared readings) {
    d->readings = std::move(readings);
    d->show();
}

void ReadingsView::setSecond(Shared readings, const QString& name) {
    if (d->other == readings && d->model.name == name) return;
    d->other = std::move(readings);
    if (d->model.name != name) {
        d->model.name = name;
        d->model.shortName = d->table->fontMetrics().elidedText(name, Qt::ElideRight, d->wide - 12);
        emit d->model.headerDataChanged(Qt::Horizontal, second, against);
        d->showColumns();
    }
    d->show();
}

void ReadingsView::setMeasured(std::vector<study::MeasuredAgainst> measured) {
    const bool columns = measured.empty() != d->measuredFigures.empty();
    d->measuredFigures = std::move(measured);
    if (columns) d->showColumns();
    d->show();
}

void ReadingsView::resizeEvent(QResizeEvent*) {
    d->showColumns();
}

void ReadingsView::setTheme(const Theme& theme) {
    d->model.theme = theme;
    setPalette(theme.palette());
    QPalette p = theme.palette();
    p.setColor(QPalette::Base, theme.paper);
    d->table->setPalette(p);
    d->table->viewport()->update();
}

QString ReadingsView::asText() const {
    const std::vector<int> columns = d->columns();
    QString text = d->verdict->text() + QLatin1Char('\n') +
                   d->model.headerData(figure, Qt::Horizontal, Qt::DisplayRole).toString();
    for (int c : columns)
        text += QLatin1Char('\t') +
                (c == second    ? d->model.name
                 : c == against ? d->model.differenceName()
                                : d->model.headerData(c, Qt::Horizontal, Qt::DisplayRole).toString());
    text += QLatin1Char('\n');
    for (const ReadingRow& row : d->model.rows) {
        text += row.figure;
        if (!row.heading)
            for (int c : columns) text += QLatin1Char('\t') + ReadingModel::cellOf(row, c).text;
        text += QLatin1Char('\n');
    }
    return text;
}

} // namespace blinkwright::widgets
