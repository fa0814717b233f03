#include "widgets/bench/bench_dialog.h"

#include "core/study/wiring_list.h"
#include "widgets/text/rows_by_contents.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include <set>

namespace blinkwright::widgets {

namespace {

constexpr QSize firstSize(760, 640);
enum Column { quantityColumn, partColumn, markingColumn, refsColumn, columnCount };

QString heading(const QString& text) {
    return QStringLiteral("<b>%1</b>").arg(text.toHtmlEscaped());
}

} // namespace

class BenchDialog::Private {
  public:
    explicit Private(BenchDialog& dialog) : q(dialog) {}

    void make() {
        list = new QListWidget;
        list->setObjectName(QStringLiteral("steps"));
        list->setAccessibleName(tr("Steps of the wiring"));
        list->setWhatsThis(tr(
            "What to join, step by step. The space bar ticks a step off; a step that has changed loses its "
            "tick."));
        list->setWordWrap(true);
        list->setAlternatingRowColors(true);
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setResizeMode(QListView::Adjust);
        list->setSpacing(2);
        progress = new QLabel;
        progress->setObjectName(QStringLiteral("progress"));
        parts = new QTableWidget(0, columnCount);
        parts->setObjectName(QStringLiteral("parts"));
        parts->setAccessibleName(tr("Parts list"));
        parts->setWhatsThis(
            tr("What to fetch before building: how many of each part, and how it is marked."));
        parts->setHorizontalHeaderLabels({tr("Quantity"), tr("Part"), tr("Marking"), tr("Designators")});
        parts->setEditTriggers(QAbstractItemView::NoEditTriggers);
        parts->setSelectionBehavior(QAbstractItemView::SelectRows);
        parts->setAlternatingRowColors(true);
        parts->verticalHeader()->hide();
        parts->setTabKeyNavigation(false);
        parts->setShowGrid(false);
        parts->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        parts->horizontalHeader()->setSectionResizeMode(partColumn, QHeaderView::Stretch);
        parts->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        rowsByContents(*parts);
        connect(list, &QListWidget::itemChanged, &q, [this](const QListWidgetItem* item) {
            const QString text = item->data(Qt::UserRole).toString();
            if (item->checkState() == Qt::Checked)
                ticks.insert(text);
            else
                ticks.erase(text);
            showProgress();
        });
        layOut();
    }

    void layOut() {
        auto* upper = new QWidget;
        auto* steps = new QVBoxLayout(upper);
        steps->setContentsMargins(0, 0, 0, 0);
        steps->addWidget(new QLabel(heading(tr("Wiring"))));
        steps->addWidget(list, 1);
        steps->addWidget(progress);
        auto* lower = new QWidget;
        auto* fetch = new QVBoxLayout(lower);
        fetch->setContentsMargins(0, 6, 0, 0);
        fetch->addWidget(new QLabel(heading(tr("Parts"))));
        fetch->addWidget(parts, 1);
        auto* both = new QSplitter(Qt::Vertical);
        both->setChildrenCollapsible(false);
        both->addWidget(upper);
        both->addWidget(lower);
        both->setSizes({330, 230});
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
        const auto add = [&](const char* name, const QString& text, const QString& meaning, auto signal) {
            QPushButton* button = buttons->addButton(text, QDialogButtonBox::ActionRole);
            button->setWhatsThis(meaning);
            button->setObjectName(QLatin1String(name));
            button->setAutoDefault(false);
            connect(button, &QPushButton::clicked, &q, signal);
            needCircuit.push_back(button);
        };
        add("copy", tr("&Copy as text"), tr("Puts steps and parts on the clipboard as text."),
            &BenchDialog::copyWished);
        add("print", tr("&Print…"), tr("Prints steps and parts on paper, to take to the bench."),
            &BenchDialog::printWished);
        add("pdf", tr("Save as P&DF…"), tr("Writes steps and parts to a file, as they would be printed."),
            &BenchDialog::pdfWished);
        add("csv", tr("&Export parts as CSV…"), tr("Writes the parts list as a table, such as for an order."),
            &BenchDialog::exportWished);
        connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::reject);
        sets = new QComboBox;
        sets->setObjectName(QStringLiteral("set"));
        sets->addItem(tr("Set A"), static_cast<int>(circuit::PartSet::A));
        sets->addItem(tr("Set B"), static_cast<int>(circuit::PartSet::B));
        sets->setAccessibleName(tr("Set whose values are listed"));
        sets->setWhatsThis(tr("Whose values stand in steps and parts. The wiring is the same in both sets."));
        auto* setLabel = new QLabel(tr("&Values of"));
        setLabel->setBuddy(sets);
        connect(sets, &QComboBox::activated, &q, [this](int index) {
            emit q.setChosen(static_cast<circuit::PartSet>(sets->itemData(index).toInt()));
        });
        auto* choice = new QHBoxLayout;
        choice->addWidget(setLabel);
        choice->addWidget(sets);
        choice->addStretch(1);
        auto* whole = new QVBoxLayout(&q);
        whole->addLayout(choice);
        whole->addWidget(both, 1);
        whole->addWidget(buttons);
    }

    void showSteps(const std::vector<study::BuildStep>& steps) {
        const QSignalBlocker quiet(list);
        const int row = list->currentRow();
        list->clear();
        std::set<QString> kept;
        int number = 0;
        for (const study::BuildStep& step : steps) {
            const QString text = QString::fromStdString(step.text);
            auto* item = new QListWidgetItem(tr("%1. %2").arg(++number).arg(text), list);
            item->setData(Qt::UserRole, text);
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
            const bool done = ticks.contains(text);
            item->setCheckState(done ? Qt::Checked : Qt::Unchecked);
            if (done) kept.insert(text);
        }
        ticks = std::move(kept); // what a changed step was ticked for is no longer so
        list->setCurrentRow(std::min(row, list->count() - 1));
        showProgress();
    }

    void showParts(const std::vector<study::PartsRow>& rows) {
        parts->setRowCount(static_cast<int>(rows.size()));
        int line = 0;
        for (const study::PartsRow& row : rows) {
            QStringList refs;
            for (const std::string& ref : row.refs) refs << QString::fromStdString(ref);
            const QString texts[] = {QString::number(row.refs.size()),
                                     QString::fromStdString(row.description),
                                     QString::fromStdString(row.marking), refs.join(QStringLiteral(", "))};
            for (int column = 0; column < columnCount; ++column)
                parts->setItem(line, column, new QTableWidgetItem(texts[column]));
            ++line;
        }
    }

    void showProgress() { progress->setText(tr("%1 of %2 steps done").arg(ticks.size()).arg(list->count())); }

    static QString tr(const char* text) { return BenchDialog::tr(text); }

    BenchDialog& q;
    QComboBox* sets = nullptr;
    QListWidget* list = nullptr;
    QLabel* progress = nullptr;
    QTableWidget* parts = nullptr;
    std::vector<QPushButton*> needCircuit;
    std::set<QString> ticks; ///< by the text of the step
};

BenchDialog::BenchDialog(const Theme& theme, QWidget* parent)
    : QDialog(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("benchDialog"));
    setWindowTitle(tr("Wiring list"));
    d->make();
    setTheme(theme);
    resize(withText(*this, firstSize));
}

BenchDialog::~BenchDialog() = default;

void BenchDialog::showCircuit(const circuit::Circuit& circuit, circuit::PartSet set) {
    d->sets->setCurrentIndex(d->sets->findData(static_cast<int>(set)));
    d->showSteps(study::wiringList(circuit, set));
    d->showParts(study::partsList(circuit, set));
    for (QPushButton* button : d->needCircuit) button->setEnabled(!circuit.parts().empty());
}

void BenchDialog::setTheme(const Theme& theme) {
    // The style draws the frame of a box to tick in a darker form of this colour: on dark ground it would be
    // gone.
    QPalette frames = theme.palette();
    frames.setColor(QPalette::Window, theme.quietInk);
    for (QWidget* list : {static_cast<QWidget*>(d->list), static_cast<QWidget*>(d->parts)})
        list->setPalette(frames);
}

void BenchDialog::clearTicks() {
    d->ticks.clear();
}

int BenchDialog::ticked() const {
    return static_cast<int>(d->ticks.size());
}

int BenchDialog::steps() const {
    return d->list->count();
}

} // namespace blinkwright::widgets
