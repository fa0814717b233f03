#include "app/hookup_actions.h"

#include "app/part_dialog.h"
#include "app/typed_dialog.h"
#include "widgets/hookup/part_view.h"
#include "widgets/text/part_meaning.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QMenu>

namespace blinkwright::app {

namespace {

using circuit::PartKind;

/// Menu entries, with the letter of each that the keyboard chooses it by.
QString addText(PartKind kind) {
    switch (kind) {
    case PartKind::supply:
        return HookupActions::tr("&Supply");
    case PartKind::timer:
        return HookupActions::tr("&Timer");
    case PartKind::resistor:
        return HookupActions::tr("&Resistor");
    case PartKind::variable:
        return HookupActions::tr("&Variable resistor");
    case PartKind::capacitor:
        return HookupActions::tr("&Capacitor");
    case PartKind::lamp:
        return HookupActions::tr("&Lamp");
    case PartKind::diode:
        return HookupActions::tr("&Diode");
    case PartKind::toggle:
        return HookupActions::tr("S&witch");
    }
    return {};
}

QString qs(const std::string& text) {
    return QString::fromStdString(text);
}
/// In a menu, & marks a letter.
QString plain(QString text) {
    return text.replace(u'&', QStringLiteral("&&"));
}

} // namespace

HookupActions::HookupActions(QWidget& window, Document& document, widgets::HookupView& hookup,
                             HookupWishes& wishes)
    : QObject(&window), m_window(window), m_document(document), m_hookup(hookup), m_wishes(wishes) {
    makeEditActions();
    makePartMenu();
    connect(&hookup, &widgets::HookupView::selectionChanged, this, &HookupActions::showAvailability);
    connect(&hookup, &widgets::HookupView::editWished, this, &HookupActions::editPart);
    connect(&hookup, &widgets::HookupView::menuWished, this, &HookupActions::showMenu);
    connect(&document, &Document::changed, this, &HookupActions::showAvailability);
    connect(QApplication::clipboard(), &QClipboard::dataChanged, this, &HookupActions::showAvailability);
    showAvailability();
}

template <class Done>
QAction* HookupActions::action(const QString& text, const QKeySequence& keys, const QString& meaning,
                               Done done) {
    auto* made = new QAction(text, this);
    made->setWhatsThis(meaning);
    made->setShortcut(keys);
    made->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(made, &QAction::triggered, this, done);
    m_hookup.addAction(made);
    return made;
}

void HookupActions::makeEditActions() {
    m_cut = action(tr("Cu&t parts"), QKeySequence::Cut,
                   tr("Takes the chosen parts out of the circuit and puts them on the clipboard."),
                   [this] { m_wishes.cut(); });
    m_copy = action(tr("&Copy parts"), QKeySequence::Copy,
                    tr("Puts the chosen parts on the clipboard with their values and the nets between them."),
                    [this] { m_wishes.copy(); });
    m_paste =
        action(tr("&Paste parts"), QKeySequence::Paste,
               tr("Adds the parts of the clipboard under new names, joined among themselves as they were."),
               [this] { m_wishes.paste(); });
    m_selectAll = action(tr("Choose &all parts"), QKeySequence::SelectAll,
                         tr("Chooses every part, to move, copy or delete all together."),
                         [this] { m_hookup.selectAll(); });
}

void HookupActions::addToEditMenu(QMenu* menu) const {
    menu->addSeparator();
    menu->addActions({m_cut, m_copy, m_paste, m_selectAll});
}

void HookupActions::makePartMenu() {
    m_partMenu = new QMenu(tr("&Part"), &m_window);
    m_addMenu = m_partMenu->addMenu(tr("&Add a part"));
    m_addMenu->menuAction()->setWhatsThis(
        tr("Adds a part where there is room for it, with usual values. Its pins are joined afterwards."));
    for (const PartKind kind : circuit::allKinds)
        m_addMenu->addAction(addText(kind), this, [this, kind] { m_wishes.addNear(kind); })
            ->setWhatsThis(widgets::kindMeaning(kind));
    m_addMenu->menuAction()->setObjectName(QStringLiteral("add"));
    QAction* popUp =
        action(tr("Choose a part to add"), QKeySequence(tr("A")),
               tr("Opens the list of kinds of parts; a letter chooses one."),
               [this] { popUpAdd(m_hookup.viewport()->mapToGlobal(m_hookup.viewport()->rect().topLeft())); });
    m_addMenu->menuAction()->setText(tr("&Add a part") + QLatin1Char('\t') + popUp->shortcut().toString());
    m_partMenu->addSeparator();
    m_edit =
        action(tr("&Name and values…"), QKeySequence(tr("F2")),
               tr("Opens a form with the name of the chosen part and all its values, tolerance and ratings "
                  "among them."),
               [this] {
                   if (const auto part = m_hookup.selected()) editPart(*part);
               });
    m_turn = action(tr("&Turn by a quarter"), QKeySequence(tr("T")),
                    tr("Turns the chosen parts by 90°. Their wires follow; the circuit stays the same."),
                    [this] { m_hookup.turnChosen(); });
    m_mirror = action(
        tr("&Mirror left to right"), QKeySequence(tr("M")),
        tr("Exchanges left and right of the chosen parts. Their wires follow; the circuit stays the same."),
        [this] { m_hookup.mirrorChosen(); });
    m_duplicate = action(tr("D&uplicate"), QKeySequence(tr("Ctrl+D")),
                         tr("Adds the chosen parts once more under new names, with the same values."),
                         [this] { m_wishes.duplicate(); });
    m_delete =
        action(tr("&Delete"), {},
               tr("Takes the chosen parts, or the chosen net, out of the circuit. Undo brings them back."),
               [this] { m_hookup.deleteChosen(); });
    m_delete->setShortcuts({QKeySequence(Qt::Key_Delete), QKeySequence(Qt::Key_Backspace)});
    m_partMenu->addActions({m_edit, m_turn, m_mirror, m_duplicate, m_delete});
    m_partMenu->addSeparator();
    m_join =
        action(tr("&Join two pins…"), QKeySequence(tr("J")),
               tr("Joins a pin to another pin or to a net, by their names, such as R1:1: no wire need be "
                  "drawn by hand."),
               [this] { askJoin(chosenPin()); });
    m_takeOff = action(tr("Take a pin &off its net…"), QKeySequence(tr("Shift+J")),
                       tr("Frees one pin. The other pins of its net stay joined."),
                       [this] { askTakeOff(chosenPin()); });
    m_renameNet = action(
        tr("&Rename a net…"), QKeySequence(tr("Shift+F2")),
        tr("Gives a net another name. The name stands beside its wires, in Pins and in lists."), [this] {
            const circuit::Net* net = chosenNet();
            askRenameNet(net ? qs(net->name) : QString());
        });
    m_removeNet =
        action({}, QKeySequence(tr("Ctrl+Backspace")),
               tr("Takes all wires of a net away. Its pins are free then; the parts stay."), [this] {
                   if (const circuit::Net* net = chosenNet())
                       (void)m_wishes.removeNet(qs(net->name));
                   else
                       askRemoveNet(chosenPin());
               });
    m_partMenu->addActions({m_join, m_takeOff, m_renameNet, m_removeNet});
    connect(m_partMenu, &QMenu::aboutToShow, this, &HookupActions::showNetName);
}

void HookupActions::showAvailability() {
    const bool parts = !m_hookup.selection().parts().empty();
    const bool any = !m_document.circuit().parts().empty();
    const bool nets = !m_document.circuit().nets().empty();
    for (QAction* a : {m_cut, m_copy, m_edit, m_duplicate}) a->setEnabled(parts);
    m_delete->setEnabled(!m_hookup.selection().empty());
    m_paste->setEnabled(HookupWishes::canPaste());
    m_selectAll->setEnabled(any);
    m_join->setEnabled(any);
    for (QAction* a : {m_takeOff, m_renameNet, m_removeNet}) a->setEnabled(nets);
    showNetName();
}

void HookupActions::showNetName() {
    const circuit::Net* net = chosenNet();
    m_removeNet->setText(net ? tr("R&emove net %1").arg(plain(qs(net->name))) : tr("R&emove a net…"));
}

const circuit::Net* HookupActions::chosenNet() const {
    auto net = m_netOfPins ? m_netOfPins() : std::nullopt;
    if (!net) net = m_hookup.selection().net();
    return net ? m_document.circuit().find(*net) : nullptr;
}

void HookupActions::popUpAdd(QPoint global) {
    m_addMenu->popup(global + QPoint(12, 12));
    m_addMenu->setActiveAction(m_addMenu->actions().constFirst());
}

void HookupActions::fillForPin(QMenu& menu, circuit::PinRef pin) {
    const circuit::Circuit& circuit = m_document.circuit();
    const QString name = qs(circuit.pinText(pin));
    menu.addAction(tr("Join %1 to…").arg(name), this, [this, name] { askJoin(name); })
        ->setWhatsThis(m_join->whatsThis());
    if (const auto net = circuit.netOf(pin))
        menu.addAction(tr("Take %1 off net %2").arg(name, plain(qs(circuit.find(*net)->name))), this,
                       [this, name] { (void)m_wishes.takeOff(name); })
            ->setWhatsThis(m_takeOff->whatsThis());
    menu.addSeparator();
}

void HookupActions::fillForNet(QMenu& menu, circuit::NetId net) {
    const circuit::Net* found = m_document.circuit().find(net);
    if (!found) return;
    const QString name = qs(found->name);
    menu.addAction(tr("Rename net %1…").arg(plain(name)), this, [this, name] { askRenameNet(name); })
        ->setWhatsThis(m_renameNet->whatsThis());
    menu.addAction(tr("Remove net %1").arg(plain(name)), this, [this] { m_hookup.deleteChosen(); })
        ->setWhatsThis(m_removeNet->whatsThis());
}

void HookupActions::showMenu(QPoint global, const widgets::HookupView::Spot& spot) {
    auto* menu = new QMenu(&m_window);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (spot.pin) fillForPin(*menu, *spot.pin);
    if (spot.part) {
        menu->addActions({m_edit, m_turn, m_mirror, m_duplicate, m_delete});
        menu->addSeparator();
        menu->addActions({m_cut, m_copy});
    } else if (spot.net) {
        fillForNet(*menu, *spot.net);
    } else {
        QMenu* here = menu->addMenu(tr("&Add a part here"));
        here->menuAction()->setWhatsThis(
            tr("Adds a part where the menu was opened, with usual values. Its pins are joined afterwards."));
        for (const PartKind kind : circuit::allKinds)
            here->addAction(addText(kind), this,
                            [this, kind, at = spot.at] { m_wishes.addAt(kind, m_hookup.placeAt(kind, at)); })
                ->setWhatsThis(widgets::kindMeaning(kind));
        menu->addActions({m_paste, m_selectAll});
    }
    menu->popup(global);
}

QString HookupActions::chosenPin() const {
    const auto& parts = m_hookup.selection().parts();
    const circuit::Part* part = parts.size() == 1 ? m_document.circuit().find(parts.front()) : nullptr;
    return part ? qs(part->ref) + QLatin1Char(':') : QString();
}

QStringList HookupActions::pins(bool joinedOnly) const {
    const circuit::Circuit& circuit = m_document.circuit();
    QStringList all;
    for (const circuit::Part& part : circuit.parts())
        for (int k = 0; k < static_cast<int>(circuit::info(part.kind).pins.size()); ++k)
            if (!joinedOnly || circuit.netOf({part.id, k})) all << qs(circuit.pinText({part.id, k}));
    return all;
}

QStringList HookupActions::nets() const {
    QStringList all;
    for (const circuit::Net& net : m_document.circuit().nets()) all << qs(net.name);
    return all;
}

void HookupActions::askJoin(const QString& pin) {
    TypedDialog::ask(
        &m_window, tr("Join two pins"),
        {{tr("&Pin"), pins(false), pin,
          tr("The pin to be joined, by part and pin, such as R1:1. Names that fit are offered.")},
         {tr("&To pin or net"),
          pins(false) + nets(),
          {},
          tr("Another pin, such as U1:7, or the name of a net. A pin's whole net is joined.")}},
        [this](const QStringList& typed) { return m_wishes.join(typed[0], typed[1]); });
}

void HookupActions::askTakeOff(const QString& pin) {
    TypedDialog::ask(
        &m_window, tr("Take a pin off its net"),
        {{tr("&Pin"), pins(true), pin,
          tr("The pin to be freed, by part and pin, such as R1:1. Names that fit are offered.")}},
        [this](const QStringList& typed) { return m_wishes.takeOff(typed[0]); });
}

void HookupActions::askRenameNet(const QString& net) {
    TypedDialog::ask(
        &m_window, tr("Rename a net"),
        {{tr("&Net"), nets(), net, tr("The net that gets another name. Names that fit are offered.")},
         {tr("New &name"), {}, {}, tr("Its name from then on. No other net may have it.")}},
        [this](const QStringList& typed) { return m_wishes.renameNet(typed[0], typed[1]); });
}

void HookupActions::askRemoveNet(const QString& netOrPin) {
    TypedDialog::ask(&m_window, tr("Remove a net"),
                     {{tr("&Net, or a pin in it"), nets() + pins(true), netOrPin,
                       tr("The net to be removed, by its name or by one of its pins, such as R1:1.")}},
                     [this](const QStringList& typed) { return m_wishes.removeNet(typed[0]); });
}

void HookupActions::editPart(circuit::PartId part) {
    if (!m_document.circuit().find(part)) return;
    auto* dialog = new PartDialog(&m_window, m_document.circuit(), part,
                                  [this](const circuit::Edit& edit) { return m_wishes.apply(edit); });
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace blinkwright::app
