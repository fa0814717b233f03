// Whether each text of a window has the room that it needs. A cell of a table may be cut, where its tool tip
// has the whole.
//
//   EXPECT_EQ(textsWithoutRoom(window), QStringList());
#pragma once

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSplitterHandle>
#include <QStyleOptionButton>
#include <QStyleOptionComboBox>
#include <QTabBar>
#include <QTableView>
#include <QToolButton>
#include <QToolTip>

namespace blinkwright::test {

inline QString briefly(const QWidget& widget, const QString& text, const QString& what) {
    const QString name =
        widget.objectName().isEmpty() ? widget.metaObject()->className() : widget.objectName();
    return QStringLiteral("%1 \"%2\": %3").arg(name, text.left(40), what);
}

inline QString sizes(QSize has, QSize wants) {
    return QStringLiteral("has %1 x %2, wants %3 x %4")
        .arg(has.width())
        .arg(has.height())
        .arg(wants.width())
        .arg(wants.height());
}

/// What a label or a control with a text of its own wants; an invalid size where it is none.
inline QSize wantedByText(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        if (label->text().isEmpty()) return {};
        if (label->wordWrap()) return {0, label->heightForWidth(label->width())};
        return label->sizeHint();
    }
    if (const auto* button = qobject_cast<const QPushButton*>(&widget)) {
        QStyleOptionButton option;
        option.initFrom(button);
        const QSize frame =
            button->size() -
            button->style()->subElementRect(QStyle::SE_PushButtonContents, &option, button).size();
        return button->fontMetrics().size(Qt::TextShowMnemonic, button->text()) + QSize(frame.width(), 0);
    }
    if (qobject_cast<const QCheckBox*>(&widget) || qobject_cast<const QRadioButton*>(&widget) ||
        qobject_cast<const QToolButton*>(&widget))
        return widget.sizeHint();
    if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        const int room = box->style()
                             ->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box)
                             .width();
        return {box->width() - room + box->fontMetrics().horizontalAdvance(box->currentText()),
                box->fontMetrics().height()};
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
        const QString text = line->text().isEmpty() ? line->placeholderText() : line->displayText();
        const QMargins margins = line->textMargins();
        constexpr int besides = 4; // the toolkit's own margin at both sides
        return {line->fontMetrics().horizontalAdvance(text) + margins.left() + margins.right() + besides,
                line->fontMetrics().height()};
    }
    return {};
}

/// Whether something may stand partly outside its parent: what scrolls, and what slides.
inline bool mayHang(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    const auto* area = qobject_cast<const QAbstractScrollArea*>(parent->parentWidget());
    return widget.isWindow() || (area && area->viewport() == parent) ||
           qobject_cast<const QSplitterHandle*>(&widget) || qobject_cast<const QAbstractItemView*>(parent);
}

/// What a pointer that rests on a cell is told.
inline QString toolTipOver(const QTableView& table, const QRect& cell) {
    const QPoint at = cell.center();
    QHelpEvent rests(QEvent::ToolTip, at, table.viewport()->mapToGlobal(at));
    QCoreApplication::sendEvent(table.viewport(), &rests);
    const QString told = QToolTip::text();
    QToolTip::hideText();
    return told;
}

inline void addFromTable(const QTableView& table, QStringList& out) {
    const QHeaderView& head = *table.horizontalHeader();
    for (int column = 0; head.isVisible() && column < head.count(); ++column) {
        if (head.isSectionHidden(column)) continue;
        const int wants = head.sectionSizeHint(column);
        const QString text = table.model()->headerData(column, Qt::Horizontal).toString();
        if (!text.isEmpty() && head.sectionSize(column) < wants)
            out << briefly(table, text,
                           QStringLiteral("head has %1, wants %2").arg(head.sectionSize(column)).arg(wants));
    }
    for (int row = 0; row < table.model()->rowCount(); ++row)
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            const QModelIndex at = table.model()->index(row, column);
            const QRect cell = table.visualRect(at);
            const QString text = at.data().toString();
            if (text.isEmpty() || cell.isEmpty() || table.isColumnHidden(column)) continue;
            QFont font = table.font();
            if (const QVariant own = at.data(Qt::FontRole); own.isValid())
                font = own.value<QFont>().resolve(font);
            const QFontMetrics metrics(font);
            if (table.rowHeight(row) < metrics.height())
                out << briefly(table, text, QStringLiteral("row has %1").arg(table.rowHeight(row)));
            const bool wide = !text.contains(u'\n') && metrics.horizontalAdvance(text) > cell.width();
            const bool wraps = table.wordWrap() && table.rowHeight(row) >= 2 * metrics.height();
            if (wide && !wraps && !toolTipOver(table, cell).contains(text))
                out << briefly(table, text,
                               QStringLiteral("cell has %1, wants %2")
                                   .arg(cell.width())
                                   .arg(metrics.horizontalAdvance(text)));
        }
}

inline QStringList textsWithoutRoom(const QWidget& window) {
    QStringList out;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window) continue;
        if (!mayHang(*widget) &&
            !widget->parentWidget()->rect().adjusted(-1, -1, 1, 1).contains(widget->geometry()) &&
            !widget->size().isEmpty())
            out << briefly(*widget, {},
                           QStringLiteral("stands outside its parent by size %1 x %2 of %3 x %4")
                               .arg(widget->width())
                               .arg(widget->height())
                               .arg(widget->parentWidget()->width())
                               .arg(widget->parentWidget()->height()));
        const QSize wants = wantedByText(*widget);
        constexpr int rounding = 4; // at scales that are no whole numbers
        if (wants.width() > widget->width() + rounding || wants.height() > widget->height() + 1)
            out << briefly(*widget, widget->property("text").toString(), sizes(widget->size(), wants));
        if (const auto* table = qobject_cast<const QTableView*>(widget)) addFromTable(*table, out);
        if (const auto* bar = qobject_cast<const QTabBar*>(widget))
            for (int k = 0; k < bar->count(); ++k)
                if (bar->fontMetrics().size(Qt::TextShowMnemonic, bar->tabText(k)).width() >
                    bar->tabRect(k).width())
                    out << briefly(*bar, bar->tabText(k), QStringLiteral("tab"));
    }
    return out;
}

} // namespace blinkwright::test
