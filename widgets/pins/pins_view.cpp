#include "widgets/pins/pins_view.h"
#include "widgets/text/in_sentence.h"

#include "widgets/pins/net_cell.h"
#include "widgets/pins/pins_model.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::widgets {

namespace {

/// A table in which every cell of a row stands for the net cell, where the wiring is edited.
class PinTable : public QTableView {
  public:
    std::function<void()> takeOff;

  protected:
    bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override {
        return QTableView::edit(index.isValid() ? index.siblingAtColumn(netColumn) : index, trigger, event);
    }
    void keyPressEvent(QKeyEvent* event) override {
        const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
        const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
        if (plain && enter && state() != EditingState && currentIndex().isValid()) {
            edit(currentIndex(), EditKeyPressed, event);
        } else if (plain && event->key() == Qt::Key_Backspace) {
            takeOff();
        } else {
            QTableView::keyPressEvent(event);
        }
    }
};

} // namespace

class PinsView::Private {
  public:
    explicit Private(PinsView* view) : q(view) {
        order.setSourceModel(&model);
        filter = new QLineEdit;
        filter->setPlaceholderText(PinsView::tr("Filter: part, role or net"));
        filter->setAccessibleName(PinsView::tr("Filter the pins"));
        filter->setWhatsThis(PinsView::tr(
            "Shows only the pins in whose row each typed word stands, such as R1 or discharge. Enter goes "
            "on to the table."));
        filter->setClearButtonEnabled(true);
        sorting = new QComboBox;
        sorting->setAccessibleName(PinsView::tr("Sort the pins by"));
        sorting->setToolTip(PinsView::tr("Sort the pins by"));
        sorting->setWhatsThis(PinsView::tr(
            "By which column the rows are sorted. A click on the head of a column does the same."));
        for (int c = 0; c < pinColumnCount; ++c)
            sorting->addItem(PinsView::tr("by %1").arg(
                inSentence(model.headerData(c, Qt::Horizontal, Qt::DisplayRole).toString())));
        makeTable();
        nothing = new QLabel(PinsView::tr("No parts yet. Insert adds one."));
        nothing->setAlignment(Qt::AlignCenter);

        auto* top = new QHBoxLayout;
        constexpr int edge = 6;
        top->setContentsMargins(edge, 2, edge, edge);
        top->addWidget(filter, 1);
        top->addWidget(sorting);
        auto* column = new QVBoxLayout(view);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(0);
        column->addLayout(top);
        column->addWidget(table, 1);
        column->addWidget(nothing, 1);
        view->setAccessibleName(PinsView::tr("Pins"));
        view->setMinimumSize(160, 120);
        listen();
        showEmptiness();
    }

    void makeTable() {
        table = new PinTable;
        table->setModel(&order);
        table->setItemDelegate(
            new NetCell([this](const QModelIndex& at) { return netOffers(model.rows(), rowOf(at).pin); }, q));
        table->setFrameShape(QFrame::NoFrame);
        table->setShowGrid(false);
        table->setWordWrap(false);
        table->setSelectionMode(QAbstractItemView::SingleSelection);
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                               QAbstractItemView::AnyKeyPressed);
        table->setTabKeyNavigation(false);
        table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
        table->setAccessibleName(PinsView::tr("Pins"));
        table->setWhatsThis(PinsView::tr("Every pin of every part. Type into the column Net: the name of a "
                                         "net, or of a pin to join to; an "
                                         "empty cell frees the pin. Voltages are those at the moment line."));
        table->verticalHeader()->hide();
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        QHeaderView* head = table->horizontalHeader();
        head->setHighlightSections(false);
        head->setSectionResizeMode(QHeaderView::Interactive);
        head->setSectionResizeMode(netColumn, QHeaderView::Stretch);
        sizedByText(*table, [this, head] {
            const auto wide = [this](const char* text) {
                return table->fontMetrics().horizontalAdvance(QString::fromUtf8(text)) + 20;
            };
            table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 6);
            head->resizeSection(pinColumn, wide("RV1:wiper"));
            head->resizeSection(partColumn, wide("555 timer, bipolar"));
            head->resizeSection(roleColumn, wide("control voltage"));
            head->resizeSection(voltageColumn, wide("-000.0 mV "));
            head->setMinimumSectionSize(wide("Net"));
        });
        table->setSortingEnabled(true);
        table->sortByColumn(pinColumn, Qt::AscendingOrder);
        q->setFocusProxy(table);
    }

    void listen() {
        connect(filter, &QLineEdit::textChanged, q, [this](const QString& text) {
            const auto kept = current();
            order.setWords(text);
            choose(kept);
            showEmptiness();
        });
        connect(filter, &QLineEdit::returnPressed, q, [this] {
            if (!current() && order.rowCount() > 0) table->selectRow(0);
            table->setFocus(Qt::TabFocusReason);
        });
        connect(sorting, &QComboBox::activated, q,
                [this](int column) { table->sortByColumn(column, Qt::AscendingOrder); });
        connect(table->horizontalHeader(), &QHeaderView::sortIndicatorChanged, q,
                [this](int column) { sorting->setCurrentIndex(column); });
        connect(&model, &PinsModel::netWished, q, &PinsView::netWished);
        connect(table->selectionModel(), &QItemSelectionModel::currentRowChanged, q,
                [this](const QModelIndex& now) {
                    if (!quiet && now.isValid()) emit q->partActivated(rowOf(now).pin.part);
                });
        table->takeOff = [this] {
            if (const auto pin = current()) emit q->netWished(*pin, {});
        };
    }

    const PinRow& rowOf(const QModelIndex& shown) const {
        return model.rows().at(static_cast<std::size_t>(order.mapToSource(shown).row()));
    }
    std::optional<circuit::PinRef> current() const {
        const QModelIndex at = table->currentIndex();
        return at.isValid() ? std::optional(rowOf(at).pin) : std::nullopt;
    }
    /// @return false where there is no such pin or the filter hides it.
    template <class Wanted>
    bool chooseFirst(Wanted wanted) {
        const auto found = std::ranges::find_if(model.rows(), wanted);
        const QModelIndex at =
            found == model.rows().end()
                ? QModelIndex()
                : order.mapFromSource(model.index(static_cast<int>(found - model.rows().begin()), netColumn));
        quiet = true;
        table->setCurrentIndex(at);
        quiet = false;
        if (at.isValid()) table->scrollTo(at);
        return at.isValid();
    }
    bool choose(std::optional<circuit::PinRef> pin) {
        return chooseFirst([&](const PinRow& row) { return row.pin == pin; });
    }

    void showEmptiness() {
        const bool any = order.rowCount() > 0;
        nothing->setText(model.rows().empty() ? PinsView::tr("No parts yet. Insert adds one.")
                                              : PinsView::tr("No pin fits the filter."));
        const bool first = any && table->isHidden() && filter->hasFocus() && filter->text().isEmpty();
        table->setVisible(any);
        nothing->setVisible(!any);
        // Keys of this view need the focus somewhere in it, also while it has no row.
        q->setFocusProxy(any ? static_cast<QWidget*>(table) : filter);
        if (first) table->setFocus(Qt::OtherFocusReason);
    }

    PinsView* q;
    PinsModel model;
    PinsOrder order;
    QLineEdit* filter;
    QComboBox* sorting;
    PinTable* table;
    QLabel* nothing;
    bool quiet = false; ///< a choice that the program makes is no wish
};

PinsView::PinsView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(this)) {
}

PinsView::~PinsView() {
    d->table->setModel(nullptr);
}

void PinsView::setCircuit(const circuit::Circuit& circuit) {
    const auto kept = d->current();
    d->quiet = true;
    const bool anew = d->model.setRows(pinRows(circuit));
    if (!anew) d->order.invalidate();
    d->quiet = false;
    // A part that has gone takes the choice along; its neighbour in the list is a better place than none.
    if (kept && !d->choose(kept))
        d->chooseFirst([&](const PinRow& row) { return row.pin.part >= kept->part; });
    d->showEmptiness();
}

void PinsView::setVoltages(const std::map<circuit::NetId, double>& voltages, bool atRest) {
    d->model.setVoltages(voltages);
    if (atRest && d->order.sortColumn() == voltageColumn) d->order.invalidate();
}

void PinsView::setTheme(const Theme& theme) {
    d->model.setTheme(theme);
    setPalette(theme.palette());
    QPalette p = theme.palette();
    p.setColor(QPalette::Base, theme.paper);
    d->table->setPalette(p);
    QPalette quietInk = theme.palette();
    quietInk.setColor(QPalette::WindowText, theme.quietInk);
    d->nothing->setPalette(quietInk);
    d->table->viewport()->update();
}

void PinsView::selectPart(std::optional<circuit::PartId> part) {
    const auto now = d->current();
    if (part && now && now->part == *part) return;
    d->chooseFirst([&](const PinRow& row) { return part && row.pin.part == *part; });
}

void PinsView::selectPin(circuit::PinRef pin) {
    d->choose(pin);
}

std::optional<circuit::PinRef> PinsView::selectedPin() const {
    return d->current();
}

void PinsView::focusFilter() {
    d->filter->setFocus(Qt::ShortcutFocusReason);
    d->filter->selectAll();
}

} // namespace blinkwright::widgets
