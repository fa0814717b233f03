#include "app/help/help_desk.h"

#include "app/help/about_dialog.h"
#include "app/help/help_keys.h"
#include "app/help/help_pages.h"
#include "app/help/help_window.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QMenuBar>

namespace blinkwright::app::help {

HelpDesk::HelpDesk(QMainWindow& window, Settings& settings, Appearance& appearance)
    : QObject(&window), m_window(window), m_settings(settings), m_appearance(appearance),
      m_tour(new Tour(window, tourSteps(window))) {
    connect(&appearance, &Appearance::themeChanged, m_tour, &Tour::setTheme);
    m_tour->setTheme(appearance.theme());
    QApplication::instance()->installEventFilter(this); // for windows that have no menu
}

void HelpDesk::addTo(QMenu* menu) {
    const auto add = [&](const QString& text, const QString& keys, const QString& meaning, auto done) {
        QAction* action = menu->addAction(text);
        action->setShortcut(QKeySequence(keys));
        action->setWhatsThis(meaning);
        connect(action, &QAction::triggered, this, done);
        return action;
    };
    add(tr("&Help on this panel"), tr("F1"),
        tr("The page of the help about where you are, in a window of its own."), [this] { showHere(); });
    add(tr("How the &blinker works"), tr("Ctrl+F1"),
        tr("The timer's switching levels, the formulas of the astable, and what they leave out."),
        [this] { show(QStringLiteral("works")); });
    add(tr("&Keys"), tr("Ctrl+F2"), tr("All keys of the menus in one list."),
        [this] { show(QStringLiteral("keys")); });
    add(tr("&Tour of the window"), tr("Ctrl+F3"),
        tr("Five steps through the window, as at the first start; Esc leaves them."),
        [this] { m_tour->begin(); });
    menu->addSeparator();
    add(tr("&Cautions"), tr("Ctrl+Shift+F1"),
        tr("What to heed with flashing light, strong lamps, capacitors and batteries, and how far the "
           "figures can "
           "be trusted."),
        [this] { show(QStringLiteral("cautions")); });
    QAction* about =
        add(tr("&About Blinkwright…"), tr("Ctrl+Shift+F2"),
            tr("Version and licence, and the libraries that the program is built with."), [this] {
                auto* dialog = new AboutDialog(&m_window);
                dialog->setAttribute(Qt::WA_DeleteOnClose);
                dialog->open();
            });
    about->setMenuRole(QAction::AboutRole);
}

HelpWindow& HelpDesk::windowFor(QWidget* modal) {
    const auto make = [this](QWidget* parent) {
        return new HelpWindow(
            m_settings, m_appearance, [this] { return keysTable(*m_window.menuBar()); }, parent);
    };
    if (!modal) {
        if (!m_help) m_help = make(&m_window);
        return *m_help;
    }
    // Beside a dialog that blocks all other windows only a child of its own can be read.
    if (auto* own = modal->findChild<HelpWindow*>()) return *own;
    return *make(modal);
}

HelpWindow& HelpDesk::show(const QString& page) {
    HelpWindow& help = windowFor(QApplication::activeModalWidget());
    help.open(page);
    return help;
}

HelpWindow& HelpDesk::showHere() {
    const QWidget* active = QApplication::activeWindow();
    const QWidget* focus = QApplication::focusWidget();
    return show(pageOf(focus && focus->window() == active ? focus : active));
}

void HelpDesk::offerTour() {
    if (m_settings.tourSeen()) return;
    m_settings.setTourSeen();
    m_tour->begin();
}

bool HelpDesk::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType()) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() != Qt::Key_F1 || key->modifiers() != Qt::NoModifier) return false;
    show(pageOf(static_cast<const QWidget*>(watched)));
    return true;
}

} // namespace blinkwright::app::help
