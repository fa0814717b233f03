#include "widgets/text/whole_cells.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QHelpEvent>
#include <QToolTip>

namespace blinkwright::widgets {

WholeCells::WholeCells(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

bool WholeCells::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ToolTip || !watched->isWidgetType()) return false;
    const auto* view = qobject_cast<const QAbstractItemView*>(watched->parent());
    return view && watched == view->viewport() && show(*view, *static_cast<const QHelpEvent*>(event));
}

bool WholeCells::show(const QAbstractItemView& view, const QHelpEvent& wanted) {
    const QModelIndex at = view.indexAt(wanted.pos());
    const QString text = at.data(Qt::DisplayRole).toString(), besides = at.data(Qt::ToolTipRole).toString();
    const QRect cell = view.visualRect(at);
    if (text.isEmpty() || besides.contains(text) || view.sizeHintForIndex(at).width() <= cell.width())
        return false;
    QToolTip::showText(wanted.globalPos(), besides.isEmpty() ? text : text + QStringLiteral("\n\n") + besides,
                       view.viewport(), cell);
    return true;
}

} // namespace blinkwright::widgets
