#include "widgets/values/row_menu.h"

#include "core/base/wording.h"
#include "core/circuit/set_edits.h"
#include "widgets/values/value_scale.h"

#include <algorithm>

namespace blinkwright::widgets {

using namespace circuit;

QString valueName(const Circuit& circuit, const ValueRef& value) {
    const Part* part = circuit.find(value.part);
    if (!part) return {};
    const QString ref = QString::fromStdString(part->ref);
    const KindInfo& kind = info(part->kind);
    const KeyInfo* key = findKey(kind, value.key);
    if (key == kind.keys.data()) return ref;
    const std::string label = wording::inWords(key ? key->label : std::string_view(value.key));
    return RowMenu::tr("%1 of %2").arg(QString::fromStdString(label), ref);
}

RowMenu::RowMenu(const Circuit& circuit, const ValueRef& value, bool sets, QWidget* parent) : QMenu(parent) {
    setObjectName(QStringLiteral("rowMenu"));
    setAttribute(Qt::WA_DeleteOnClose);
    const Part* own = circuit.find(value.part);
    const KeyInfo* ownKey = own ? findKey(info(own->kind), value.key) : nullptr;
    const std::vector<ValueRef> tied = tiedTo(circuit, value);
    QMenu* to = addMenu(tr("&Tie to"));
    for (const Part& part : circuit.parts())
        for (const KeyInfo& key : info(part.kind).keys) {
            const ValueRef other{part.id, std::string(key.key)};
            if (!ownKey || key.unit != ownKey->unit || !scaleKind(part.kind, key.key) || other == value ||
                std::find(tied.begin(), tied.end(), other) != tied.end())
                continue;
            connect(to->addAction(valueName(circuit, other)), &QAction::triggered, this,
                    [this, other] { emit tieWished(other); });
        }
    to->setEnabled(!to->isEmpty());
    QAction* untie = addAction(tr("&Untie"));
    untie->setEnabled(!tied.empty());
    connect(untie, &QAction::triggered, this, &RowMenu::untieWished);
    if (!sets) return;
    addSeparator();
    const bool follows = followsA(circuit, value.part, value.key);
    QAction* same = addAction(tr("Set B: &same as A"));
    same->setEnabled(!follows);
    connect(same, &QAction::triggered, this, [this] { emit followWished(true); });
    QAction* apart = addAction(tr("Set B: a value of its &own"));
    apart->setEnabled(follows);
    connect(apart, &QAction::triggered, this, [this] { emit followWished(false); });
}

} // namespace blinkwright::widgets
