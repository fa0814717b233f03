#include "widgets/choose/choose_view.h"

#include "core/base/wording.h"
#include "core/study/proposal.h"
#include "core/study/wiring_list.h"
#include "core/units/engineering.h"
#include "widgets/choose/choice_model.h"
#include "widgets/choose/wish_form.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/text/figure_text.h"
#include "widgets/text/text_sized.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

constexpr int leastTable = 110, leastDrawing = 150, leastParts = 210;

/// Columns that do not touch.
class Spacious : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        constexpr int room = 14;
        return QStyledItemDelegate::sizeHint(option, index) + QSize(room, 0);
    }
};

QString htmlRow(const QString& left, const QString& right) {
    return QStringLiteral("<tr><td>%1</td><td style='padding-left:10px'>%2</td></tr>")
        .arg(left.toHtmlEscaped(), right.toHtmlEscaped());
}

} // namespace

class ChooseView::Private {
  public:
    explicit Private(ChooseView& view) : q(view) {}

    void make() {
        form = new WishForm;
        table = new QTableView;
        table->setObjectName(QStringLiteral("choices"));
        table->setAccessibleName(tr("Proposals, best first"));
        table->setWhatsThis(tr("Circuits that meet the wish, each simulated, the best first. The chosen one "
                               "is drawn below; Enter "
                               "makes it."));
        table->setModel(&model);
        table->setItemDelegate(new Spacious(table));
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->setSelectionMode(QAbstractItemView::SingleSelection);
        table->setAlternatingRowColors(true);
        table->setTabKeyNavigation(false);
        table->setShowGrid(false);
        table->setWordWrap(false);
        table->setMinimumHeight(leastTable);
        rowsByText(*table);
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        table->horizontalHeader()->setHighlightSections(false);
        preview = new HookupView;
        preview->setFocusPolicy(Qt::NoFocus);
        preview->setAttribute(Qt::WA_TransparentForMouseEvents);
        preview->setAccessibleName(tr("Drawing of the chosen circuit"));
        preview->setMinimumHeight(leastDrawing);
        preview->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        preview->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        parts = new QLabel;
        parts->setObjectName(QStringLiteral("parts"));
        parts->setAccessibleName(tr("Parts of the chosen circuit"));
        parts->setTextFormat(Qt::RichText);
        parts->setTextInteractionFlags(Qt::TextSelectableByMouse);
        parts->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        parts->setWordWrap(true);
        parts->setMargin(6);

        reason = new QLabel;
        reason->setObjectName(QStringLiteral("reason"));
        reason->setTextFormat(Qt::PlainText);
        reason->setWordWrap(true);
        nearest = new QPushButton(tr("Take the &nearest wish"));
        nearest->setObjectName(QStringLiteral("nearest"));
        nearest->setWhatsThis(tr("Changes the wish to the nearest one that can be met."));
        nearest->setAutoDefault(false);
        connect(nearest, &QPushButton::clicked, &q, &ChooseView::nearestWished);
        unmet = new QWidget;
        auto* row = new QHBoxLayout(unmet);
        row->setContentsMargins(0, 2, 0, 2);
        row->addWidget(reason, 1);
        row->addWidget(nearest);
        unmet->hide();

        auto* lower = new QSplitter(Qt::Horizontal);
        lower->setChildrenCollapsible(false);
        lower->addWidget(preview);
        auto* list = new QScrollArea;
        list->setFrameShape(QFrame::NoFrame);
        list->setAccessibleName(ChooseView::tr("Parts of the chosen proposal"));
        list->setWidgetResizable(true);
        sizedByText(*list, [list] { list->setMinimumWidth(withText(*list, leastParts)); });
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setWidget(parts);
        lower->addWidget(list);
        lower->setSizes({620, 300});
        lower->setStretchFactor(0, 1);
        both = new QSplitter(Qt::Vertical);
        both->setChildrenCollapsible(false);
        both->addWidget(table);
        both->addWidget(lower);
        both->setSizes({230, 330});
        both->setStretchFactor(0, 1);
        both->setStretchFactor(1, 2);
        auto* whole = new QVBoxLayout(&q);
        whole->setContentsMargins(0, 0, 0, 0);
        whole->addWidget(form);
        whole->addWidget(unmet);
        whole->addWidget(both, 1);
        whole->addStretch(0); // the place of the proposals where there are none
        connect(table->selectionModel(), &QItemSelectionModel::currentRowChanged, &q,
                [this] { showChosen(); });
        connect(table, &QTableView::activated, &q, &ChooseView::activated);
    }

    void showChosen() {
        const int row = table->currentIndex().isValid() ? table->currentIndex().row() : -1;
        const study::Choice* choice = row >= 0 && row < model.rowCount() ? &model.choice(row) : nullptr;
        circuit = choice ? study::proposedCircuit(wish, *choice) : circuit::Circuit();
        if (choice)
            circuit.title =
                wording::inWords("Blinker of %1", units::formatQuantity(choice->rate_Hz, units::Unit::hertz));
        both->setVisible(choice);
        preview->setCircuit(circuit);
        preview->fit();
        parts->setText(choice ? partsText(*choice) : QString());
        emit q.choiceChanged();
    }

    /// What to fetch, with what is printed on it, and what the lamps do.
    QString partsText(const study::Choice& choice) const {
        QString text = QStringLiteral("<table cellspacing='2'>");
        int number = 0;
        for (const study::ChosenLamp& lamp : choice.lamps)
            text +=
                htmlRow(tr("D%1 carries").arg(++number),
                        tr("%1 at most, %2 in the mean, and is lit for %3 a cycle")
                            .arg(quantityText(lamp.peak_A, units::Unit::ampere),
                                 quantityText(lamp.mean_A, units::Unit::ampere), secondsText(lamp.lit_s)));
        for (const study::PartsRow& row : study::partsList(circuit, circuit::PartSet::A)) {
            QStringList refs;
            for (const std::string& ref : row.refs) refs << QString::fromStdString(ref);
            QString words = QString::fromStdString(row.description);
            if (!row.marking.empty())
                words += QStringLiteral(" (%1)").arg(QString::fromStdString(row.marking));
            words.replace(QStringLiteral(" %"), QStringLiteral("\u00A0%"));
            text += htmlRow(refs.join(QStringLiteral(", ")), words);
        }
        return text + QStringLiteral("</table>");
    }

    static QString tr(const char* text) { return ChooseView::tr(text); }

    ChooseView& q;
    ChoiceModel model;
    WishForm* form = nullptr;
    QWidget* unmet = nullptr; ///< the reason, with its button
    QLabel* reason = nullptr;
    QPushButton* nearest = nullptr;
    QSplitter* both = nullptr; ///< table and what is under it
    QTableView* table = nullptr;
    HookupView* preview = nullptr;
    QLabel* parts = nullptr;
    study::Wish wish;
    circuit::Circuit circuit;
};

ChooseView::ChooseView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("chooseView"));
    d->make();
}

ChooseView::~ChooseView() {
    d->table->setModel(nullptr); // the model goes before its view does
}

WishForm& ChooseView::form() {
    return *d->form;
}

const ChoiceModel& ChooseView::model() const {
    return d->model;
}

void ChooseView::setChoices(const study::Wish& wish, std::shared_ptr<const study::Choices> choices) {
    d->wish = wish;
    d->model.setChoices(wish, d->form->texts().rateUnit, std::move(choices));
    if (d->model.rowCount() > 0)
        d->table->setCurrentIndex(d->model.index(0, 0)); // which shows it
    else
        d->showChosen();
}

void ChooseView::setReason(const QString& sentence, bool hasNearest) {
    d->reason->setText(sentence);
    d->nearest->setVisible(hasNearest);
    d->unmet->setVisible(!sentence.isEmpty());
}

QString ChooseView::reason() const {
    return d->reason->text();
}

void ChooseView::choose(int row) {
    d->table->setCurrentIndex(d->model.index(row, 0));
}

const study::Choice* ChooseView::chosen() const {
    const QModelIndex at = d->table->currentIndex();
    return at.isValid() ? &d->model.choice(at.row()) : nullptr;
}

const circuit::Circuit& ChooseView::chosenCircuit() const {
    return d->circuit;
}

void ChooseView::setTheme(const Theme& theme) {
    d->form->setTheme(theme);
    d->preview->setTheme(theme);
    QPalette warning = d->reason->palette();
    warning.setColor(QPalette::WindowText, theme.fault);
    d->reason->setPalette(warning);
}

} // namespace blinkwright::widgets
