#include "widgets/pins/net_cell.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QKeyEvent>
#include <QLineEdit>

namespace blinkwright::widgets {

namespace {
constexpr int shownOffers = 12;

/// While the list of offers is open, Enter is its own and would only close it. Here it ends the cell as well:
/// with the offer that is marked, else with what was typed.
class EnterInList : public QObject {
  public:
    EnterInList(QComboBox* box, std::function<void()> done)
        : QObject(box), m_box(box), m_done(std::move(done)) {}

  protected:
    bool eventFilter(QObject* list, QEvent* event) override {
        if (event->type() != QEvent::KeyPress) return false;
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key != Qt::Key_Return && key != Qt::Key_Enter) return false;
        auto* offers = static_cast<QAbstractItemView*>(list);
        if (offers->currentIndex().isValid()) m_box->setEditText(offers->currentIndex().data().toString());
        offers->hide();
        QMetaObject::invokeMethod(m_box, m_done, Qt::QueuedConnection);
        return true;
    }

  private:
    QComboBox* m_box;
    std::function<void()> m_done;
};

/// Keeps the key that takes a word back from a shortcut of the window: a line edit asks for plain keys only.
class WordKeys : public QObject {
  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::ShortcutOverride &&
            static_cast<QKeyEvent*>(event)->matches(QKeySequence::DeleteStartOfWord)) {
            event->accept();
            return true;
        }
        return false;
    }
};
} // namespace

NetCell::NetCell(Offers offers, QObject* parent) : QStyledItemDelegate(parent), m_offers(std::move(offers)) {
}

QWidget* NetCell::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
    auto* box = new QComboBox(parent);
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->setFrame(false);
    box->installEventFilter(new WordKeys(box));
    box->setMaxVisibleItems(shownOffers);
    box->addItems(m_offers(index));
    box->setAccessibleName(tr("Net, or a pin to join to"));
    box->setWhatsThis(tr("A net or a pin, such as U1:7: the pin of this row is joined to it. A new name "
                         "makes a new net, nothing "
                         "frees the pin."));
    box->lineEdit()->setPlaceholderText(tr("net or pin"));
    // The list only offers: what is typed counts as typed, or a new net could not begin like an old one.
    QCompleter* offer = box->completer();
    offer->setCompletionMode(QCompleter::PopupCompletion);
    offer->setFilterMode(Qt::MatchContains);
    offer->setCaseSensitivity(Qt::CaseInsensitive);
    offer->setMaxVisibleItems(shownOffers);
    auto* cell = const_cast<NetCell*>(this);
    const auto done = [cell, box] {
        emit cell->commitData(box);
        emit cell->closeEditor(box);
    };
    connect(offer, qOverload<const QString&>(&QCompleter::activated), box, done, Qt::QueuedConnection);
    offer->popup()->installEventFilter(new EnterInList(box, done));
    return box;
}

void NetCell::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    option->state &= ~QStyle::State_HasFocus;
}

void NetCell::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* box = static_cast<QComboBox*>(editor);
    const QString text = index.data(Qt::EditRole).toString();
    if (box->property("begun").toBool()) return; // a run that comes in must not undo what is being typed
    box->setProperty("begun", true);
    box->setCurrentIndex(box->findText(text));
    box->setEditText(text);
    box->lineEdit()->selectAll();
}

void NetCell::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    model->setData(index, static_cast<QComboBox*>(editor)->currentText(), Qt::EditRole);
}

void NetCell::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                   const QModelIndex&) const {
    // A control needs more height than a row of text has.
    QRect place = option.rect;
    const int lacking = editor->sizeHint().height() - place.height();
    if (lacking > 0) place.adjust(0, -lacking / 2, 0, lacking - lacking / 2);
    editor->setGeometry(place);
}

} // namespace blinkwright::widgets
