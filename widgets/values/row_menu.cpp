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
    QString ref = QString::fromStdString(part->ref);
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
    to->menuAction()->setWhatsThis(
        tr("Ties this value to another one: it takes that value, and from then on both change together."));
    for (const Part& part : circuit.parts())
        for (const KeyInfo& key : info(part.kind).keys) {
            const ValueRef other{part.id, std::string(key.key)};
            if (!ownKey || key.unit != ownKey->unit || !scaleKind(part.kind, key.key) || other == value ||
                std::find(tied.begin(), tied.end(), other) != tied.end())
                continue;
            QAction* tie = to->addAction(valueName(circuit, other));
            tie->setWhatsThis(
                tr("Ties to %1: this value takes that one, and from then on both change together.")
                    .arg(valueName(circuit, other)));
            connect(tie, &QAction::triggered, this, [this, other] { emit tieWished(other); });
        }
    to->setEnabled(!to->isEmpty());
    QAction* untie = addAction(tr("&Untie"));
    untie->setWhatsThis(
        tr("Frees this value of its tie: it stays as it is, and changes alone from then on."));
    untie->setEnabled(!tied.empty());
    connect(untie, &QAction::triggered, this, &RowMenu::untieWished);
    if (!sets) return;
    addSeparator();
    const bool follows = followsA(circuit, value.part, value.key);
    QAction* same = addAction(tr("Set B: &same as A"));
    same->setWhatsThis(tr("Takes away what Set B has of its own here: it follows Set A from then on."));
    same->setEnabled(!follows);
    connect(same, &QAction::triggered, this, [this] { emit followWished(true); });
    QAction* apart = addAction(tr("Set B: a value of its &own"));
    apart->setWhatsThis(tr("Gives Set B a value of its own here, at first the same as in Set A."));
    apart->setEnabled(follows);
    connect(apart, &QAction::triggered, this, [this] { emit followWished(false); });
}

} // namespace blinkwright::widgets
