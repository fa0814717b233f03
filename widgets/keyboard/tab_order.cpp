#include "widgets/keyboard/tab_order.h"

#include <QApplication>
#include <QKeyEvent>
#include <QWidget>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr int slack = 4; ///< by which neighbours may overlap and still stand in two rows, or columns [pixels]

/// A child of one parent, and what in it takes the focus.
struct Block {
    QRect at;
    std::vector<QWidget*> stops;
};
using Blocks = std::vector<Block>;

/// Cuts where nothing crosses: into rows by tops and bottoms, into columns by left and right edges.
std::vector<Blocks> cut(Blocks blocks, int (QRect::*low)() const, int (QRect::*high)() const) {
    std::ranges::stable_sort(blocks, {}, [low](const Block& block) { return (block.at.*low)(); });
    std::vector<Blocks> groups;
    int end = 0;
    for (Block& block : blocks) {
        const int from = (block.at.*low)(), to = (block.at.*high)();
        if (groups.empty() || from > end - slack) groups.emplace_back();
        end = groups.back().empty() ? to : std::max(end, to);
        groups.back().push_back(std::move(block));
    }
    return groups;
}

void read(Blocks blocks, std::vector<QWidget*>& stops) {
    std::vector<Blocks> groups = cut(std::move(blocks), &QRect::top, &QRect::bottom);
    if (groups.size() == 1) groups = cut(std::move(groups.front()), &QRect::left, &QRect::right);
    if (groups.size() > 1) {
        for (Blocks& group : groups) read(std::move(group), stops);
        return;
    }
    // One alone, or some that lie over one another.
    for (Blocks& group : groups)
        for (const Block& block : group) stops.insert(stops.end(), block.stops.begin(), block.stops.end());
}

std::vector<QWidget*> stopsIn(QWidget& widget) {
    std::vector<QWidget*> stops;
    if (!widget.isWindow() && widget.focusPolicy() != Qt::NoFocus && !widget.focusProxy())
        stops.push_back(&widget);
    Blocks blocks;
    for (QWidget* child : widget.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (child->isWindow() || child->isHidden()) continue;
        if (std::vector<QWidget*> inner = stopsIn(*child); !inner.empty())
            blocks.push_back({child->geometry(), std::move(inner)});
    }
    read(std::move(blocks), stops);
    return stops;
}

constexpr char standIn[] = "focusPart"; ///< property: which part of a widget gets the focus in its place

/// A widget that hands the focus on to a part of its own takes Tab back to that part from wherever it stands
/// in the chain, and nowhere at all where the part is disabled. Tab needs it not; setFocus() finds the part
/// by the property.
void takeOver(QWidget& window) {
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        QWidget* part = widget->focusProxy();
        if (!part || widget->window() != &window || !widget->isAncestorOf(part)) continue;
        widget->setFocusProxy(nullptr);
        widget->setFocusPolicy(Qt::NoFocus);
        widget->setProperty(standIn, QVariant::fromValue<QObject*>(part));
        QObject::connect(part, &QObject::destroyed, widget, [widget] { widget->setProperty(standIn, {}); });
    }
}

bool isLaid(const QWidget& window, const std::vector<QWidget*>& order) {
    auto wanted = order.begin();
    for (QWidget* at = window.nextInFocusChain(); at && at != &window; at = at->nextInFocusChain())
        if (wanted != order.end() && at == *wanted) ++wanted;
    return wanted == order.end();
}

} // namespace

std::vector<QWidget*> readingOrder(QWidget& window) {
    return stopsIn(window);
}

void layTabOrder(QWidget& window) {
    takeOver(window);
    const std::vector<QWidget*> order = readingOrder(window);
    if (isLaid(window, order)) return;
    // With a widget the toolkit moves what it takes for its parts, by the proxies, and all that is between
    // them; and it passes over what takes no focus itself, such as the window.
    const Qt::FocusPolicy policy = window.focusPolicy();
    window.setFocusPolicy(Qt::StrongFocus);
    // From the last on, each to the front.
    for (auto next = order.rbegin(); next != order.rend(); ++next) QWidget::setTabOrder(&window, *next);
    window.setFocusPolicy(policy);
}

TabOrder::TabOrder(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

bool TabOrder::eventFilter(QObject* watched, QEvent* event) {
    if (!watched->isWidgetType()) return false;
    auto* widget = static_cast<QWidget*>(watched);
    if (event->type() == QEvent::FocusIn)
        if (auto* part = qobject_cast<QWidget*>(widget->property(standIn).value<QObject*>()))
            part->setFocus(static_cast<QFocusEvent*>(event)->reason());
    if (event->type() != QEvent::Show && event->type() != QEvent::KeyPress) return false;
    if (event->type() == QEvent::Show) { // the first in the order gets the focus then
        if (widget->windowType() == Qt::Dialog || widget->windowType() == Qt::Window) layTabOrder(*widget);
        return false;
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Tab || key == Qt::Key_Backtab) layTabOrder(*widget->window());
    return false;
}

} // namespace blinkwright::widgets
