#include "app/pins_actions.h"

#include "app/hookup_actions.h"
#include "app/live_panels.h"
#include "app/play_actions.h"
#include "core/circuit/net_text.h"
#include "core/study/net_voltages.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/pins/pins_view.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>
#include <QStackedWidget>
#include <QToolButton>

namespace blinkwright::app {

namespace {
/// Digits that change more often than this cannot be read.
constexpr qint64 readable_ms = 120;
} // namespace

PinsActions::PinsActions(const Places& places, const PlayActions& play, QObject* parent)
    : QObject(parent), m_at(places) {
    auto* group = new QActionGroup(this);
    const std::pair<QString, QString> texts[] = {{tr("&Drawing of the Hook-up"), tr("Ctrl+3")},
                                                 {tr("&Pins of the Hook-up"), tr("Ctrl+4")}};
    const QString words[] = {tr("Drawing"), tr("Pins")};
    const QString meanings[] = {
        tr("Shows the circuit as a drawing: parts are placed, moved and wired by hand in it."),
        tr("Shows the circuit as a table: each pin with its role, its net and its voltage at the moment "
           "line. A net "
           "can be typed into it.")};
    for (int face = 0; face < 2; ++face) {
        auto* action = new QAction(texts[face].first, group);
        action->setIconText(words[face]);
        action->setShortcut(QKeySequence(texts[face].second));
        action->setToolTip(
            tr("%1 (%2)").arg(words[face], action->shortcut().toString(QKeySequence::NativeText)));
        action->setCheckable(true);
        action->setWhatsThis(meanings[face]);
        connect(action, &QAction::triggered, this, [this, face] { show(face); });
        m_faces << action;
    }
    m_faces.front()->setChecked(true);

    makePartKeys();
    const auto select = [this](circuit::PartId part) { m_at.pins.selectPart(part); };
    connect(&m_at.document, &Document::changed, this, [this] {
        m_stale = true;
        if (shown()) showCircuit();
    });
    connect(&m_at.live, &LivePanels::studyShown, this, [this] { showVoltages(true); });
    connect(&m_at.curves, &widgets::CurvesView::momentMoved, this, [this] { showVoltages(true); });
    connect(&play, &PlayActions::momentChanged, this,
            [this, &play] { showVoltages(!play.play().running()); });
    connect(&m_at.hookup, &widgets::HookupView::selectionChanged, this, [this] {
        if (const auto part = m_at.hookup.selected()) m_at.pins.selectPart(part);
    });
    connect(&m_at.values, &widgets::ValuePanel::partActivated, this, select);
    connect(&m_at.pins, &widgets::PinsView::partActivated, this, [this](circuit::PartId part) {
        m_at.hookup.select(part);
        m_at.values.showPart(part);
    });
    connect(&m_at.pins, &widgets::PinsView::netWished, this, &PinsActions::wish);
}

void PinsActions::makePartKeys() {
    // The letters that the drawing takes for these begin a net's name here.
    const auto add = [this](const QString& text, const QString& keys, const QString& meaning, auto done) {
        auto* action = new QAction(text, &m_at.pins);
        action->setWhatsThis(meaning);
        action->setShortcut(QKeySequence(keys));
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, done);
        m_at.pins.addAction(action);
    };
    add(tr("Choose a part to add"), tr("Ins"), tr("Opens the list of kinds of parts; a letter chooses one."),
        [this] { m_at.parts.popUpAdd(m_at.pins.mapToGlobal(QPoint(0, 0))); });
    add(tr("&Delete"), tr("Del"), tr("Takes the part of this pin out of the circuit. Undo brings it back."),
        [this] {
            const auto pin = m_at.pins.selectedPin();
            if (!pin) return;
            m_at.hookup.select(pin->part); // it alone
            m_at.hookup.deleteChosen();
        });
    add(tr("&Name and values…"), tr("Ctrl+Return"),
        tr("Opens a form with the name of this pin's part and all its values."), [this] {
            if (const auto pin = m_at.pins.selectedPin()) m_at.parts.editPart(pin->part);
        });
    m_at.parts.setNetOfPins([this] {
        const auto pin = shown() ? m_at.pins.selectedPin() : std::nullopt;
        return pin ? m_at.document.circuit().netOf(*pin) : std::nullopt;
    });
    m_at.pins.addAction(m_at.parts.removeNet());
    m_at.pins.setContextMenuPolicy(Qt::CustomContextMenu);
    connect(&m_at.pins, &QWidget::customContextMenuRequested, this, [this](QPoint at) {
        m_at.parts.showNetName();
        auto* menu = new QMenu(&m_at.pins);
        menu->setAttribute(Qt::WA_DeleteOnClose);
        menu->addActions(m_at.pins.actions());
        menu->popup(m_at.pins.mapToGlobal(at));
    });
}

QWidget* PinsActions::makeSwitch() const {
    auto* made = new QWidget;
    auto* row = new QHBoxLayout(made);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    for (QAction* action : m_faces) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::TabFocus);
        row->addWidget(button);
    }
    return made;
}

void PinsActions::show(int face) {
    if (m_at.faces.currentIndex() != face) {
        if (m_stale) showCircuit();
        const auto part = m_at.hookup.selected();
        m_at.faces.setCurrentIndex(face);
        if (part) m_at.pins.selectPart(part);
        showVoltages(true);
    }
    m_at.faces.currentWidget()->setFocus(Qt::OtherFocusReason); // to where the keys were asked to go
}

bool PinsActions::shown() const {
    return m_at.faces.currentWidget() == &m_at.pins;
}

void PinsActions::showCircuit() {
    m_stale = false;
    m_at.pins.setCircuit(m_at.document.circuit());
    m_at.pins.setVoltages({}, false); // what there were are those of the wiring before
}

void PinsActions::showVoltages(bool atRest) {
    if (!shown()) return;
    if (!atRest && m_sinceVoltages.isValid() && m_sinceVoltages.elapsed() < readable_ms) return;
    m_sinceVoltages.start();
    const auto study = m_at.live.shown();
    m_at.pins.setVoltages(study ? study::netVoltages(*study, m_at.curves.moment_s())
                                : std::map<circuit::NetId, double>{},
                          atRest);
}

void PinsActions::wish(circuit::PinRef pin, const QString& text) {
    const auto edit = circuit::editForNetText(m_at.document.circuit(), pin, text.toStdString());
    if (!edit) return;
    const Result<void> done = *edit ? m_at.document.apply(edit->value()) : Result<void>(edit->fault());
    if (!done) emit refused(QString::fromStdString(done.fault().message()));
}

} // namespace blinkwright::app
