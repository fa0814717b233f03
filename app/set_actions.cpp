#include "app/set_actions.h"

#include "core/circuit/set_edits.h"
#include "core/devices/board.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QActionGroup>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>

#include <tuple>

namespace blinkwright::app {

using circuit::PartSet;
using widgets::ValuePanel;

SetActions::SetActions(QWidget& parent, Document& document, SecondSet& second, ValuePanel& values,
                       Settings& settings, Window window)
    : QObject(&parent), m_parent(parent), m_document(document), m_second(second), m_settings(settings),
      m_window(std::move(window)) {
    makeMenu();
    connectValues(values);
    m_second.setUsual(m_settings.secondSetShown());
    m_second.showSetB(m_settings.secondSetShown());
    connect(&m_document, &Document::changed, this, &SetActions::showAvailability);
    connect(&m_second, &SecondSet::changed, this, &SetActions::showAvailability);
    connect(&m_second, &SecondSet::said, this, m_window.say);
}

void SetActions::makeMenu() {
    m_menu = new QMenu(tr("&Sets"), &m_parent);
    const auto add = [this](const QString& text, const QString& keys, const QString& meaning, auto edit) {
        QAction* action = m_menu->addAction(text);
        action->setWhatsThis(meaning);
        action->setShortcut(QKeySequence(keys));
        connect(action, &QAction::triggered, this, [this, edit] { apply(edit(m_document.circuit())); });
        return action;
    };
    using circuit::Circuit;
    m_copyToB =
        add(tr("Copy &A to B"), tr("Ctrl+Shift+B"), tr("Gives Set B all values of Set A, in one step."),
            [](const Circuit& c) { return circuit::copySet(c, PartSet::A, PartSet::B); });
    m_copyToA =
        add(tr("Copy &B to A"), tr("Ctrl+Shift+A"), tr("Gives Set A all values of Set B, in one step."),
            [](const Circuit& c) { return circuit::copySet(c, PartSet::B, PartSet::A); });
    m_swap = add(tr("S&wap A and B"), tr("Ctrl+Shift+W"),
                 tr("Exchanges the values of the two sets: what was Set A is Set B then."),
                 [](const Circuit& c) { return circuit::swapSets(c); });
}

void SetActions::connectValues(ValuePanel& values) {
    connect(&values, &ValuePanel::followWished, this, &SetActions::follow);
    connect(&values, &ValuePanel::tieWished, this,
            [this](const circuit::ValueRef& which, const circuit::ValueRef& to) {
                apply(circuit::tieValues(m_document.circuit(), which, to));
            });
    connect(&values, &ValuePanel::untieWished, this, [this](const circuit::ValueRef& which) {
        apply(circuit::untieValue(m_document.circuit(), which));
    });
}

void SetActions::addToFileMenu(QMenu* menu) {
    m_compare = menu->addAction(tr("&Compare with file…"));
    m_compare->setShortcut(QKeySequence(tr("Ctrl+Shift+O")));
    m_compare->setWhatsThis(
        tr("Shows curves, readings and findings of another circuit file beside Set A, in place of "
           "Set B. That file is only read."));
    connect(m_compare, &QAction::triggered, this, &SetActions::askCompare);
    m_stop = menu->addAction(tr("S&top comparing"));
    m_stop->setShortcut(QKeySequence(tr("Ctrl+Shift+E")));
    m_stop->setWhatsThis(tr("Puts the file away that Set A is compared with. Set B takes its place again."));
    connect(m_stop, &QAction::triggered, &m_second, &SecondSet::stopComparing);
    showAvailability();
}

void SetActions::addExportChoiceTo(QMenu* menu) {
    QMenu* choice = menu->addMenu(tr("E&xports hold"));
    choice->menuAction()->setWhatsThis(tr("Which curves go into exports and copies, where two are shown."));
    m_exported = new QActionGroup(choice);
    const std::tuple<ExportedSets, QString, QString> all[] = {
        {ExportedSets::both, tr("&all curves that are shown"),
         tr("Exports hold Set A and what it is compared with.")},
        {ExportedSets::first, tr("&Set A alone"), tr("Exports leave out what Set A is compared with.")},
        {ExportedSets::second, tr("what it is &compared with alone"),
         tr("Exports hold Set B, or the file that is compared with, and not Set A.")}};
    for (const auto& [sets, text, meaning] : all) {
        QAction* action = m_exported->addAction(choice->addAction(text));
        action->setWhatsThis(meaning);
        action->setCheckable(true);
        action->setChecked(sets == ExportedSets::both);
        action->setData(static_cast<int>(sets));
    }
    showAvailability();
}

ExportedSets SetActions::exported() const {
    const QAction* chosen = m_exported && m_second.isApart() ? m_exported->checkedAction() : nullptr;
    return chosen ? static_cast<ExportedSets>(chosen->data().toInt()) : ExportedSets::both;
}

void SetActions::setExported(ExportedSets sets) {
    for (QAction* action : m_exported->actions())
        if (action->data().toInt() == static_cast<int>(sets)) action->setChecked(true);
}

void SetActions::addToViewMenu(QMenu* menu) {
    m_show = menu->addAction(tr("Compare with Set &B"));
    m_show->setShortcut(QKeySequence(tr("Ctrl+B")));
    m_show->setWhatsThis(
        tr("Shows Set B, a second set of values for the same parts, beside Set A: in Values, Curves, "
           "Readings and Findings."));
    m_show->setCheckable(true);
    connect(m_show, &QAction::triggered, this, [this](bool on) {
        m_settings.setSecondSetShown(on);
        m_second.setUsual(on);
        m_second.showSetB(on);
    });
    showAvailability();
}

void SetActions::apply(const Result<circuit::Edit>& edit) {
    if (!edit) return m_window.say(QString::fromStdString(edit.fault().message()));
    const QString text = QString::fromStdString(circuit::describe(m_document.circuit(), edit.value()));
    if (Result<void> done = m_document.apply(edit.value()); !done)
        m_window.say(QString::fromStdString(done.fault().message()));
    else
        m_window.say(text);
}

void SetActions::follow(const circuit::ValueRef& which, bool on) {
    const circuit::Circuit& now = m_document.circuit();
    if (on) return apply(circuit::followA(now, which.part, which.key));
    if (const auto value = devices::effectiveValue(now, PartSet::B, which.part, which.key))
        apply(circuit::setValue(now, PartSet::B, which.part, which.key, *value));
}

bool SetActions::compareWith(const QString& path) {
    if (Result<void> done = m_second.compareWith(path); !done) {
        m_window.tell(tr("The file cannot be compared with"), done.fault());
        return false;
    }
    m_window.say(tr("Set A is compared with %1. Stop comparing is in the File menu.").arg(m_second.name()));
    return true;
}

void SetActions::askCompare() {
    const QString path =
        QFileDialog::getOpenFileName(&m_parent, tr("Compare with a circuit file"), m_settings.lastFolder(),
                                     tr("Circuits (*.blinkwright);;All files (*)"));
    if (path.isEmpty()) return;
    m_settings.setLastFolder(QFileInfo(path).absolutePath());
    compareWith(path);
}

void SetActions::showAvailability() {
    const circuit::Circuit& now = m_document.circuit();
    const bool differ = !circuit::setsAgree(now);
    for (QAction* action : {m_copyToB, m_copyToA, m_swap}) action->setEnabled(differ);
    if (m_show) {
        m_show->setChecked(m_second.showsSetB());
        m_show->setEnabled(!m_second.comparesFile());
    }
    if (m_compare) m_compare->setEnabled(!now.parts().empty());
    if (m_stop) m_stop->setEnabled(m_second.comparesFile());
    if (m_exported) m_exported->setEnabled(m_second.isApart());
}

} // namespace blinkwright::app
