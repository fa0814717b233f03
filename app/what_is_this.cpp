#include "app/what_is_this.h"

#include "app/edit_menu_meanings.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabBar>
#include <QTextDocumentFragment>
#include <QToolButton>
#include <QWhatsThis>

namespace blinkwright::app {

namespace {

constexpr char rangeProperty[] = "range";
constexpr int fewestLetters = 20; ///< of a tool tip that says more than a name

QString paragraph(const QString& text) {
    return text.isEmpty() ? QString() : QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

QString nameOf(const QWidget& control) {
    const auto* item = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(&control));
    return item ? item->text(QAccessible::Name).trimmed() : control.accessibleName();
}

/// A tool tip that only names its control, or begins with its name as `Open (Ctrl+O)` does, is no answer.
bool tells(const QString& tip, const QString& name) {
    return tip.size() >= fewestLetters && (name.isEmpty() || !tip.startsWith(name));
}

/// What the buttons do that the toolkit makes.
QString ofStandardButton(const QWidget& control) {
    const auto* button = qobject_cast<const QPushButton*>(&control);
    if (!button) return {};
    if (qobject_cast<const QMessageBox*>(button->window()))
        return WhatIsThis::tr("Gives this answer to the message, and closes it.");
    const QDialogButtonBox* box = nullptr;
    for (const QWidget* around = button->parentWidget(); around && !box; around = around->parentWidget())
        box = qobject_cast<const QDialogButtonBox*>(around);
    if (!box) return {};
    switch (box->standardButton(const_cast<QPushButton*>(button))) {
    case QDialogButtonBox::Ok:
        return WhatIsThis::tr("Takes over what the form says and closes it. Undo takes it back.");
    case QDialogButtonBox::Cancel:
        return WhatIsThis::tr("Closes the form and leaves everything as it was.");
    case QDialogButtonBox::Close:
        return WhatIsThis::tr("Closes this window. What was entered in it is kept.");
    case QDialogButtonBox::Help:
        return WhatIsThis::tr("Opens the page of the help about this window.");
    default:
        return {};
    }
}

/// Parts that the toolkit adds by itself.
QString ofToolkitPart(const QWidget& control) {
    const QString name = control.objectName();
    if (name == QLatin1String("qt_toolbar_ext_button"))
        return WhatIsThis::tr("Opens the buttons that have no room in the tool bar.");
    if (name == QLatin1String("ScrollLeftButton") || name == QLatin1String("ScrollRightButton"))
        return WhatIsThis::tr("Moves the tabs, where not all of them have room.");
    if (qobject_cast<const QScrollArea*>(&control))
        return WhatIsThis::tr(
            "Holds more than it has room for: arrow keys, Page Up and Page Down scroll it.");
    const auto* label = qobject_cast<const QLabel*>(&control);
    if (label &&
        label->textInteractionFlags() & (Qt::TextSelectableByKeyboard | Qt::LinksAccessibleByKeyboard))
        return WhatIsThis::tr("A text to read. Parts of it can be chosen and copied.");
    return {};
}

/// What a column means and what its cell has to add.
QString ofCell(const QAbstractItemView& view, std::optional<QPoint> at) {
    const QModelIndex cell = at ? view.indexAt(*at) : view.currentIndex();
    if (!cell.isValid()) return {};
    const QString column =
        view.model()->headerData(cell.column(), Qt::Horizontal, Qt::ToolTipRole).toString().trimmed();
    const QString head = view.model()->headerData(cell.column(), Qt::Horizontal).toString();
    const QString own = cell.data(Qt::ToolTipRole).toString().trimmed();
    QString text;
    if (tells(column, head)) text += paragraph(WhatIsThis::tr("%1: %2").arg(head, column));
    if (own != column && tells(own, cell.data().toString())) text += paragraph(own);
    return text;
}

QString rangeOf(const QWidget& control) {
    if (const QString stated = control.property(rangeProperty).toString(); !stated.isEmpty())
        return WhatIsThis::tr("Range: %1").arg(stated);
    QLocale locale = control.locale();
    locale.setNumberOptions(QLocale::OmitGroupSeparator); // as the box writes them
    const QString words = WhatIsThis::tr("Range: %1 to %2%3");
    if (const auto* box = qobject_cast<const QSpinBox*>(&control))
        return words.arg(locale.toString(box->minimum()), locale.toString(box->maximum()), box->suffix());
    if (const auto* box = qobject_cast<const QDoubleSpinBox*>(&control))
        return words.arg(locale.toString(box->minimum(), 'f', box->decimals()),
                         locale.toString(box->maximum(), 'f', box->decimals()), box->suffix());
    return {};
}

QString keysOf(const QWidget& control) {
    const auto* button = qobject_cast<const QToolButton*>(&control);
    const QAction* action = button ? button->defaultAction() : nullptr;
    QKeySequence keys = action ? action->shortcut() : QKeySequence();
    const auto* item = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(&control));
    if (keys.isEmpty() && item) keys = QKeySequence(item->text(QAccessible::Accelerator));
    return keys.isEmpty() ? QString()
                          : WhatIsThis::tr("Key: %1").arg(keys.toString(QKeySequence::NativeText));
}

/// The control that is meant: of a part inside one the whole, of a label the field beside it.
const QWidget& meant(const QWidget& part) {
    if (const auto* label = qobject_cast<const QLabel*>(&part); label && label->buddy())
        return *label->buddy();
    if (const auto* area = qobject_cast<const QAbstractScrollArea*>(part.parentWidget());
        area && area->viewport() == &part)
        return *area;
    return part;
}

QString headingOf(const QHeaderView& header, QPoint at) {
    const int section = header.logicalIndexAt(at);
    const QString tip = header.model()->headerData(section, header.orientation(), Qt::ToolTipRole).toString();
    const QString head = header.model()->headerData(section, header.orientation()).toString();
    return tells(tip, head) ? QStringLiteral("<b>%1</b>").arg(head.toHtmlEscaped()) + paragraph(tip)
                            : QString();
}

/// Of one control alone.
QString ownAnswer(const QWidget& control, std::optional<QPoint> at) {
    if (const auto* header = qobject_cast<const QHeaderView*>(&control))
        return header->model() && at ? headingOf(*header, *at) : QString();
    const QString purpose = purposeOf(control, at);
    if (purpose.isEmpty()) return {};
    const QString name = nameOf(control);
    QString text = name.isEmpty() ? QString() : QStringLiteral("<b>%1</b>").arg(name.toHtmlEscaped());
    text += paragraph(purpose);
    // Where a tool tip says more, such as why something cannot be done now.
    const QString tip = control.toolTip();
    const bool ofAction = qobject_cast<const QToolButton*>(&control) != nullptr;
    if (!ofAction && tip != purpose && tells(tip, name)) text += paragraph(tip);
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&control); view && view->model())
        text += ofCell(*view, at);
    return text + paragraph(rangeOf(control)) + paragraph(keysOf(control));
}

} // namespace

QString purposeOf(const QWidget& control, std::optional<QPoint> at) {
    if (const auto* tabs = qobject_cast<const QTabBar*>(&control))
        return tabs->tabWhatsThis(at ? tabs->tabAt(*at) : tabs->currentIndex());
    if (!control.whatsThis().isEmpty()) return control.whatsThis();
    if (QString text = ofStandardButton(control); !text.isEmpty()) return text;
    const QString name = nameOf(control);
    for (const QString& text : {control.toolTip(), control.accessibleDescription()})
        if (tells(text, name)) return text;
    return ofToolkitPart(control);
}

QString answerFor(const QWidget& control, std::optional<QPoint> at) {
    const QWidget* asked = &control;
    while (asked) {
        const QWidget& whole = meant(*asked);
        if (QString text = ownAnswer(whole, at); !text.isEmpty()) return text;
        if (asked->isWindow()) break;
        if (at) at = asked->mapToParent(*at);
        asked = asked->parentWidget();
    }
    return {};
}

WhatIsThis::WhatIsThis(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

void WhatIsThis::addTo(QMenu* menu) const {
    QAction* ask = menu->addAction(tr("&What is this?"));
    ask->setShortcut(QKeySequence(tr("Shift+F1")));
    ask->setWhatsThis(tr("Click a control after it to read what that is for, with its range and its key. "
                         "Shift+F1 tells it of the control that has the focus."));
    // The key comes here only where nothing has the focus: see the filter.
    connect(ask, &QAction::triggered, this, &QWhatsThis::enterWhatsThisMode);
}

bool WhatIsThis::show(const QWidget& control, std::optional<QPoint> at, QPoint global) {
    const QString text = answerFor(control, at);
    if (text.isEmpty()) return false;
    QWhatsThis::showText(global, text, const_cast<QWidget*>(&control));
    // The bubble is painted: a screen reader has to be told.
    if (QWidget* bubble = QApplication::activePopupWidget())
        bubble->setAccessibleName(QTextDocumentFragment::fromHtml(text).toPlainText());
    return true;
}

bool WhatIsThis::eventFilter(QObject* watched, QEvent* event) {
    const auto* control = qobject_cast<const QWidget*>(watched);
    if (event->type() == QEvent::Show)
        if (const auto* menu = qobject_cast<const QMenu*>(control)) addEditMeanings(*menu);
    if (!control || qobject_cast<const QMenu*>(control) || qobject_cast<const QMenuBar*>(control))
        return false;
    switch (event->type()) {
    case QEvent::ShortcutOverride:
    case QEvent::KeyPress: {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() != Qt::Key_F1 || key->modifiers() != Qt::ShiftModifier) return false;
        if (control != QApplication::focusWidget() || answerFor(*control).isEmpty()) return false;
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            const QRect place = control->inputMethodQuery(Qt::ImCursorRectangle).toRect();
            const QPoint spot =
                control->rect().contains(place.center()) ? place.bottomLeft() : control->rect().center();
            show(*control, {}, control->mapToGlobal(spot));
        }
        return true;
    }
    case QEvent::QueryWhatsThis:
    case QEvent::WhatsThis: {
        const auto* help = static_cast<QHelpEvent*>(event);
        const bool answers = event->type() == QEvent::QueryWhatsThis
                                 ? !answerFor(*control, help->pos()).isEmpty()
                                 : show(*control, help->pos(), help->globalPos());
        event->setAccepted(answers);
        return answers;
    }
    default:
        return false;
    }
}

} // namespace blinkwright::app
