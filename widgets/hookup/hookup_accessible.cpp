#include "widgets/hookup/hookup_accessible.h"

#include "widgets/hookup/drawing.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/text/words.h"

#include <QAccessibleWidget>
#include <QPointer>
#include <QWindow>
#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::widgets::hookup {

using circuit::PartId;

namespace {

constexpr double pinReach = 7; ///< half of the side of the square that stands for a pin [units]

/// Children that are made when they are asked for, and go when this goes.
template <class Key>
class Children {
  public:
    Children() = default;
    Children(const Children&) = delete;
    Children& operator=(const Children&) = delete;
    ~Children() {
        for (const auto& child : m_ids) QAccessible::deleteAccessibleInterface(child.second);
    }
    template <class Make>
    QAccessibleInterface* at(Key key, Make make) const {
        auto& id = m_ids[key];
        if (id == 0) id = QAccessible::registerAccessibleInterface(make());
        return QAccessible::accessibleInterface(id);
    }

  private:
    mutable std::map<Key, QAccessible::Id> m_ids;
};

QRect onScreen(const HookupView& view, const QRectF& area) {
    const QRect inView = view.toViewport(area).toAlignedRect();
    return {view.viewport()->mapToGlobal(inView.topLeft()), inView.size()};
}

QRectF pinArea(const PartView& part, int pin, TimerLook look) {
    const Point at = placed(pinsOf(part.kind, look)[static_cast<std::size_t>(pin)], part.pose);
    return {at.x - pinReach, at.y - pinReach, 2 * pinReach, 2 * pinReach};
}

QRectF partArea(const PartView& part, TimerLook look) {
    const Box box = placed(extentOf(part.kind, look), part.pose).grown(static_cast<int>(pinReach));
    return {QPointF(box.left, box.top), QPointF(box.right, box.bottom)};
}

/// What parts and pins have in common: they are no objects of the toolkit and take no text.
class Item : public QAccessibleInterface {
  public:
    Item(HookupView* view, PartId id) : m_view(view), m_id(id) {}
    const PartView* part() const { return m_view ? m_view->drawing().find(m_id) : nullptr; }
    bool isValid() const override { return part() != nullptr; }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return m_view ? m_view->window()->windowHandle() : nullptr; }
    void setText(QAccessible::Text, const QString&) override {}
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name && part() ? name(*part()) : QString();
    }
    QRect rect() const override { return part() ? onScreen(*m_view, area(*part())) : QRect(); }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int k = 0; k < childCount(); ++k)
            if (QAccessibleInterface* found = child(k); found && found->rect().contains(x, y)) return found;
        return nullptr;
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.invalid = !isValid();
        state.invisible = !m_view || !m_view->isVisible();
        state.offscreen =
            m_view && part() &&
            !m_view->viewport()->rect().intersects(m_view->toViewport(area(*part())).toAlignedRect());
        return state;
    }

  protected:
    virtual QString name(const PartView& part) const = 0;
    virtual QRectF area(const PartView& part) const = 0;
    TimerLook look() const { return m_view->drawing().style().timer; }
    QPointer<HookupView> m_view;
    PartId m_id;
};

class PinItem : public Item {
  public:
    PinItem(HookupView* view, PartId part, int pin, QAccessibleInterface* owner)
        : Item(view, part), m_pin(pin), m_owner(QAccessible::uniqueId(owner)) {}
    QAccessible::Role role() const override { return QAccessible::StaticText; }
    QAccessibleInterface* parent() const override { return QAccessible::accessibleInterface(m_owner); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    int pin() const { return m_pin; }

  protected:
    QString name(const PartView& part) const override {
        const QString net = m_view->drawing().netName(m_id, m_pin), pin = pinText(part.kind, m_pin);
        return net.isEmpty() ? Words::tr("%1, in no net").arg(pin) : Words::tr("%1, on net %2").arg(pin, net);
    }
    QRectF area(const PartView& part) const override { return pinArea(part, m_pin, look()); }

  private:
    int m_pin;
    QAccessible::Id m_owner;
};

class PartItem : public Item, public QAccessibleActionInterface {
  public:
    using Item::Item;
    QAccessible::Role role() const override { return QAccessible::Graphic; }
    QAccessibleInterface* parent() const override {
        return m_view ? QAccessible::queryAccessibleInterface(m_view) : nullptr;
    }
    int childCount() const override {
        return part() ? static_cast<int>(pinsOf(part()->kind, look()).size()) : 0;
    }
    QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount()) return nullptr;
        return m_pins.at(index,
                         [&] { return new PinItem(m_view, m_id, index, const_cast<PartItem*>(this)); });
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        const auto* pin = dynamic_cast<const PinItem*>(child);
        return pin && pin->parent() == this ? pin->pin() : -1;
    }
    QAccessible::State state() const override {
        QAccessible::State state = Item::state();
        state.focusable = state.selectable = true;
        state.selected = m_view && m_view->selection().holds(m_id);
        state.focused = m_view && m_view->selected() == m_id && m_view->hasFocus();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }
    QStringList actionNames() const override { return {setFocusAction()}; }
    void doAction(const QString& action) override {
        if (action != setFocusAction() || !isValid()) return;
        m_view->setFocus(Qt::OtherFocusReason);
        m_view->select(m_id);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }
    PartId id() const { return m_id; }
    /// A lamp's value is what its lens or its bar shows.
    QString text(QAccessible::Text kind) const override {
        const PartView* lamp = part();
        if (kind != QAccessible::Value || !lamp || lamp->kind != circuit::PartKind::lamp)
            return Item::text(kind);
        return Words::tr("glows at %1 % of its rated current").arg(std::lround(100 * m_view->glow(m_id)));
    }

  protected:
    QString name(const PartView& part) const override { return partText(part); }
    QRectF area(const PartView& part) const override { return partArea(part, look()); }

  private:
    Children<int> m_pins;
};

class DrawingItem : public QAccessibleWidget {
  public:
    explicit DrawingItem(HookupView* view) : QAccessibleWidget(view, QAccessible::Canvas) {}
    int childCount() const override { return static_cast<int>(parts().size()); }
    QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount()) return nullptr;
        const PartId id = parts()[static_cast<std::size_t>(index)].id;
        return m_parts.at(id, [&] { return new PartItem(view(), id); });
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        const auto* item = dynamic_cast<const PartItem*>(child);
        return item ? indexOf(item->id()) : -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        // The drawing's own idea of what lies there: the part itself before the room about another one.
        const QPointF at = view()->toDrawing(view()->viewport()->mapFromGlobal(QPoint(x, y)));
        if (const auto pin = view()->drawing().pinAt(at, pinReach)) return child(indexOf(pin->part));
        const auto part = view()->drawing().partAt(at);
        return part ? child(indexOf(*part)) : nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        const auto chosen = view()->selected();
        return chosen && view()->hasFocus() ? child(indexOf(*chosen)) : nullptr;
    }

  private:
    HookupView* view() const { return static_cast<HookupView*>(widget()); }
    const std::vector<PartView>& parts() const { return view()->drawing().parts(); }
    int indexOf(PartId id) const {
        const auto found = std::ranges::find(parts(), id, &PartView::id);
        return found == parts().end() ? -1 : static_cast<int>(found - parts().begin());
    }
    Children<PartId> m_parts;
};

QAccessibleInterface* make(const QString& className, QObject* object) {
    if (className != QLatin1String(HookupView::staticMetaObject.className())) return nullptr;
    return new DrawingItem(static_cast<HookupView*>(object));
}

} // namespace

void makeAccessible(HookupView& view) {
    static const bool installed = [] {
        QAccessible::installFactory(make);
        return true;
    }();
    Q_UNUSED(installed);
    QObject::connect(&view, &HookupView::selectionChanged, &view, [&view] {
        const auto chosen = view.selected();
        if (!chosen || !QAccessible::isActive()) return;
        const auto& parts = view.drawing().parts();
        const auto found = std::ranges::find(parts, *chosen, &PartView::id);
        if (found == parts.end()) return;
        for (const QAccessible::Event kind : {QAccessible::Selection, QAccessible::Focus}) {
            QAccessibleEvent event(&view, kind);
            event.setChild(static_cast<int>(found - parts.begin()));
            QAccessible::updateAccessibility(&event);
        }
    });
}

} // namespace blinkwright::widgets::hookup
