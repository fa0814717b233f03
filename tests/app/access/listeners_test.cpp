// What a screen reader finds: each thing that takes the focus or has a value has a name, and values are told.
#include "tests/app/access/access_fixture.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/rooms/room_plot.h"

#include <QAccessible>
#include <QRegularExpression>

#include <set>

namespace blinkwright::test {
namespace {

using Visit = std::function<void(QAccessibleInterface& item)>;

void walk(QAccessibleInterface* item, std::set<QAccessibleInterface*>& seen, const Visit& visit,
          int depth = 0) {
    if (!item || !item->isValid() || item->state().invisible || depth > 40 || !seen.insert(item).second)
        return;
    visit(*item);
    for (int k = 0; k < item->childCount(); ++k) walk(item->child(k), seen, visit, depth + 1);
}

std::string told(const QAccessibleInterface& item) {
    const QObject* object = item.object();
    return (object ? std::string(object->metaObject()->className()) + " " + object->objectName().toStdString()
                   : std::string("item")) +
           ", role " + std::to_string(item.role());
}

bool isCell(const QAccessibleInterface& item) {
    const auto role = item.role();
    return role == QAccessible::Cell || role == QAccessible::ListItem || role == QAccessible::ColumnHeader ||
           role == QAccessible::RowHeader || role == QAccessible::TreeItem;
}

class Listeners : public AccessTest {
  protected:
    Listeners() { QAccessible::setActive(true); }
    ~Listeners() override { QAccessible::setActive(false); }
    static void inTree(QWidget& shown, const Visit& visit) {
        std::set<QAccessibleInterface*> seen;
        walk(QAccessible::queryAccessibleInterface(&shown), seen, visit);
        EXPECT_GE(seen.size(), 3U);
    }
};

TEST_F(Listeners, FindANameOnWhateverTakesTheFocusOrHasAValue) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        inTree(shown, [&](QAccessibleInterface& item) {
            if (isCell(item)) return; // the table has the name, the cell its text
            const bool value = item.valueInterface() && item.role() != QAccessible::ScrollBar &&
                               item.role() != QAccessible::Splitter;
            const QWidget* widget = qobject_cast<QWidget*>(item.object());
            const bool focus = item.state().focusable &&
                               (!widget || ((widget->focusPolicy() & Qt::TabFocus) && !widget->focusProxy()));
            if (!value && !focus) return;
            EXPECT_FALSE(item.text(QAccessible::Name).trimmed().isEmpty()) << name << ": " << told(item);
            EXPECT_NE(item.role(), QAccessible::NoRole) << name << ": " << told(item);
            // What only scrolls, and a page, has no role of its own in the toolkit.
            if (!qobject_cast<QAbstractScrollArea*>(item.object()) &&
                !(item.object() && item.object()->objectName() == u"preview")) {
                EXPECT_NE(item.role(), QAccessible::Client)
                    << name << ": " << told(item) << " says not what it is";
            }
        });
    });
}

TEST_F(Listeners, HearTheValueOfWhateverHasOne) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        inTree(shown, [&](QAccessibleInterface& item) {
            switch (item.role()) {
            case QAccessible::Slider:
            case QAccessible::SpinBox:
            case QAccessible::ProgressBar:
                ASSERT_NE(item.valueInterface(), nullptr) << name << ": " << told(item);
                EXPECT_TRUE(item.valueInterface()->currentValue().isValid()) << name << ": " << told(item);
                break;
            case QAccessible::ComboBox:
                EXPECT_FALSE(item.text(QAccessible::Value).isEmpty()) << name << ": " << told(item);
                break;
            case QAccessible::Chart:
            case QAccessible::Canvas:
                EXPECT_FALSE((item.text(QAccessible::Value) + item.text(QAccessible::Description)).isEmpty())
                    << name << ": " << told(item);
                break;
            default:
                break;
            }
        });
    });
}

TEST_F(Listeners, FindAChartOrADrawingWhereverWeDraw) {
    inEveryWindow([](const std::string& name, QWidget& shown) {
        for (QWidget* widget : shown.findChildren<QWidget*>()) {
            if (!widget->isVisible()) continue;
            const bool plot =
                qobject_cast<widgets::StripPlot*>(widget) || qobject_cast<widgets::RoomPlot*>(widget);
            const bool drawing = qobject_cast<widgets::HookupView*>(widget) != nullptr;
            if (!plot && !drawing) continue;
            const auto* item = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(item, nullptr);
            EXPECT_EQ(item->role(), plot ? QAccessible::Chart : QAccessible::Canvas)
                << name << ": " << told(*item);
            EXPECT_FALSE(item->text(QAccessible::Name).isEmpty()) << name << ": " << told(*item);
            // Figures, not only words: a digit with its unit.
            const QString words = item->text(QAccessible::Value) + item->text(QAccessible::Description);
            EXPECT_TRUE(words.contains(QRegularExpression(QStringLiteral("\\d"))))
                << name << ": " << words.toStdString();
        }
    });
}

TEST_F(Listeners, HearHowBrightALampIs) {
    open();
    const auto lamp = [this]() -> QString {
        QString value;
        inTree(*window, [&](QAccessibleInterface& item) {
            if (item.text(QAccessible::Name).startsWith(QStringLiteral("D1")))
                value = item.text(QAccessible::Value);
        });
        return value;
    };
    const circuit::PartId id = circuit().findRef("D1")->id;
    window->hookup().setGlow({{id, 0.42}});
    EXPECT_TRUE(lamp().contains(QStringLiteral("42 %"))) << lamp().toStdString();
    window->hookup().setGlow({{id, 0}});
    EXPECT_TRUE(lamp().contains(QStringLiteral(" 0 %"))) << lamp().toStdString();
}

} // namespace
} // namespace blinkwright::test
