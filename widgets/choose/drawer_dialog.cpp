#include "widgets/choose/drawer_dialog.h"

#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

namespace blinkwright::widgets {

using study::Stock;

namespace {

constexpr QSize firstSize(620, 480);
constexpr int rowSize = 28;
constexpr Stock::Kind kinds[] = {Stock::Kind::resistor, Stock::Kind::variable, Stock::Kind::capacitor};

/// The kind is chosen, not typed.
class KindDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const override {
        auto* list = new QComboBox(parent);
        list->setAccessibleName(DrawerDialog::tr("Kind"));
        list->setWhatsThis(DrawerDialog::tr(
            "Resistor, variable resistor or capacitor: it says in which unit the value is."));
        for (const Stock::Kind kind : kinds)
            list->addItem(DrawerModel::kindText(kind), static_cast<int>(kind));
        return list;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* list = static_cast<QComboBox*>(editor);
        list->setCurrentIndex(list->findData(index.data(Qt::EditRole)));
    }
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        model->setData(index, static_cast<QComboBox*>(editor)->currentData());
    }
};

} // namespace

class DrawerDialog::Private {
  public:
    explicit Private(DrawerDialog& dialog) : q(dialog) {}

    void make() {
        table = new QTableView;
        table->setObjectName(QStringLiteral("stock"));
        table->setAccessibleName(tr("Parts in the drawer"));
        table->setWhatsThis(tr("The own stock: kind, value with unit, tolerance, rating and quantity of each "
                               "part. Typing into a "
                               "cell changes it; Delete takes the row away. It is kept at once."));
        table->setModel(&model);
        table->setItemDelegateForColumn(0, new KindDelegate(table));
        table->setSelectionBehavior(QAbstractItemView::SelectItems);
        table->setAlternatingRowColors(true);
        table->setTabKeyNavigation(false); // the arrows go from cell to cell, and Tab leaves
        rowsByText(*table, rowSize);
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
        table->horizontalHeader()->setHighlightSections(false);
        table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                               QAbstractItemView::AnyKeyPressed);
        message = new QLabel;
        message->setObjectName(QStringLiteral("message"));
        message->setTextFormat(Qt::PlainText);
        message->setWordWrap(true);
        sizedByText(*message,
                    [this] { message->setMinimumHeight(2 * message->fontMetrics().lineSpacing()); });
        message->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        layOut();
        connect(&model, &DrawerModel::edited, &q, [this] { showState(); });
        connect(&model, &DrawerModel::modelReset, &q, [this] { showState(); });
        for (const auto& [keys, step] : {std::pair(QKeySequence(QKeySequence::Undo), &DrawerModel::undo),
                                         std::pair(QKeySequence(QKeySequence::Redo), &DrawerModel::redo)})
            connect(new QShortcut(keys, &q), &QShortcut::activated, &model, step);
        auto* remove = new QShortcut(QKeySequence(Qt::Key_Delete), table);
        remove->setContext(Qt::WidgetShortcut);
        connect(remove, &QShortcut::activated, &q, [this] { removeChosen(); });
        showState();
    }

    void layOut() {
        auto* rows = new QHBoxLayout;
        add(rows, "addRow", tr("&Add a part"),
            tr("Adds a row of the kind of the chosen one, ready for its value."), [this] { addRow(); });
        removeButton = add(rows, "removeRow", tr("&Remove"), tr("Takes the chosen rows out of the drawer."),
                           [this] { removeChosen(); });
        undoButton =
            add(rows, "undo", tr("&Undo"),
                tr("Takes back the last change of the drawer. Changes of the circuit are apart from it."),
                [this] { model.undo(); });
        redoButton = add(rows, "redo", tr("Re&do"), tr("Does the change again that was taken back last."),
                         [this] { model.redo(); });
        rows->addStretch(1);
        add(rows, "import", tr("&Import…"), tr("Adds the parts of a table (.csv) to the drawer."),
            [this] { emit q.importWished(); });
        exportButton = add(rows, "export", tr("&Export…"),
                           tr("Writes the drawer as a table (.csv), which can be imported elsewhere."),
                           [this] { emit q.exportWished(); });
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
        connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::reject);
        auto* foot = new QHBoxLayout;
        foot->addWidget(message, 1);
        foot->addWidget(buttons, 0, Qt::AlignTop);
        auto* whole = new QVBoxLayout(&q);
        whole->addLayout(rows);
        whole->addWidget(table, 1);
        whole->addLayout(foot);
    }

    template <class Done>
    QPushButton* add(QHBoxLayout* into, const char* name, const QString& text, const QString& meaning,
                     Done done) {
        auto* button = new QPushButton(text);
        button->setWhatsThis(meaning);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(false);
        into->addWidget(button);
        connect(button, &QPushButton::clicked, &q, done);
        return button;
    }

    /// The new part is of the kind of the one that is chosen: drawers are listed kind by kind.
    void addRow() {
        const QModelIndex at = table->currentIndex();
        const auto kind = at.isValid()
                              ? static_cast<Stock::Kind>(model.index(at.row(), 0).data(Qt::EditRole).toInt())
                              : Stock::Kind::resistor;
        const QModelIndex value = model.index(model.addRow(kind), 1);
        table->setCurrentIndex(value);
        table->setFocus();
        table->edit(value);
    }

    void removeChosen() {
        std::vector<int> rows;
        for (const QModelIndex& index : table->selectionModel()->selectedIndexes())
            if (std::ranges::find(rows, index.row()) == rows.end()) rows.push_back(index.row());
        if (rows.empty() && table->currentIndex().isValid()) rows.push_back(table->currentIndex().row());
        model.removeRows(rows);
    }

    void showState() {
        const QString fault = model.fault();
        const int kindsOwned = static_cast<int>(model.stock().size());
        say(!fault.isEmpty() ? fault
            : model.rowCount() == 0
                ? tr("The drawer is empty: add the parts that you own, or import a list.")
                : tr("Kinds of parts: %1. What is typed is kept at once.").arg(kindsOwned),
            !fault.isEmpty());
        undoButton->setEnabled(model.canUndo());
        redoButton->setEnabled(model.canRedo());
        removeButton->setEnabled(model.rowCount() > 0);
        exportButton->setEnabled(kindsOwned > 0);
    }

    void say(const QString& sentence, bool isFault) {
        message->setText(sentence);
        faulty = isFault;
        colour();
    }
    void colour() {
        QPalette palette = message->palette();
        palette.setColor(QPalette::WindowText, faulty ? theme->fault : theme->quietInk);
        message->setPalette(palette);
    }

    static QString tr(const char* text) { return DrawerDialog::tr(text); }

    DrawerDialog& q;
    DrawerModel model;
    QTableView* table = nullptr;
    QLabel* message = nullptr;
    QPushButton *removeButton = nullptr, *undoButton = nullptr, *redoButton = nullptr,
                *exportButton = nullptr;
    const Theme* theme = &Theme::of(Theme::Mode::light);
    bool faulty = false;
};

DrawerDialog::DrawerDialog(const Theme& theme, QWidget* parent)
    : QDialog(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("drawer"));
    setWindowTitle(tr("The drawer"));
    d->make();
    setTheme(theme);
    resize(withText(*this, firstSize));
    growWithTexts(*this);
}

DrawerDialog::~DrawerDialog() {
    d->table->setModel(nullptr); // the model goes before its view does
}

DrawerModel& DrawerDialog::model() {
    return d->model;
}

void DrawerDialog::setTheme(const Theme& theme) {
    d->theme = &Theme::of(theme.mode);
    d->model.setTheme(theme);
    d->colour();
}

void DrawerDialog::say(const QString& sentence, bool isFault) {
    d->say(sentence, isFault);
}

QString DrawerDialog::message() const {
    return d->message->text();
}

} // namespace blinkwright::widgets
