#include "widgets/keyboard/tab_order.h"

#include <QApplication>
#include <QDialogButtonBox>
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

std::vector<QWidget*> proxied(const QWidget& window) {
    std::vector<QWidget*> found;
    for (QWidget* widget : window.findChildren<QWidget*>())
        if (widget->window() == &window && widget->focusProxy()) found.push_back(widget);
    return found;
}

const QWidget* standsFor(const QWidget* widget) {
    while (widget->focusProxy()) widget = widget->focusProxy();
    return widget;
}

/// What hands the focus on belongs beside the one that gets it: before it where it holds that one, behind it
/// where it is a part of it. Anywhere else it would take Tab there from the middle of the way.
void addProxied(const std::vector<QWidget*>& holders, std::vector<QWidget*>& order) {
    for (QWidget* holder : holders) {
        const auto at = std::ranges::find(order, standsFor(holder));
        if (at == order.end()) continue;
        order.insert(holder->isAncestorOf(*at) ? at : at + 1, holder);
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
    // A box of buttons hands the focus on to its first button, and where that one is disabled, Tab would go
    // no further. Its buttons are all reached without it.
    for (auto* box : window.findChildren<QDialogButtonBox*>()) box->setFocusProxy(nullptr);
    std::vector<QWidget*> order = readingOrder(window);
    const std::vector<QWidget*> holders = proxied(window);
    addProxied(holders, order);
    if (isLaid(window, order)) return;
    // With a widget the toolkit moves what it takes for its parts, by the proxies, and all that is between
    // them. Without proxies it moves the one alone.
    std::vector<std::pair<QWidget*, QWidget*>> kept;
    for (QWidget* holder : holders) kept.emplace_back(holder, holder->focusProxy());
    for (QWidget* holder : holders) holder->setFocusProxy(nullptr);
    QWidget* last = &window;
    for (QWidget* next : order) {
        QWidget::setTabOrder(last, next);
        last = next;
    }
    for (const auto& [holder, proxy] : kept) holder->setFocusProxy(proxy);
}

TabOrder::TabOrder(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

bool TabOrder::eventFilter(QObject* watched, QEvent* event) {
    if ((event->type() != QEvent::Show && event->type() != QEvent::KeyPress) || !watched->isWidgetType())
        return false;
    auto* widget = static_cast<QWidget*>(watched);
    if (event->type() == QEvent::Show) { // the first in the order gets the focus then
        if (widget->windowType() == Qt::Dialog || widget->windowType() == Qt::Window) layTabOrder(*widget);
        return false;
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Tab || key == Qt::Key_Backtab) layTabOrder(*widget->window());
    return false;
}

} // namespace blinkwright::widgets
