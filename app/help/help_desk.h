// The help of a window: F1 wherever the user is, the Help menu, the tour.
//
//   HelpDesk help(window, settings, appearance);
//   help.addTo(menu);
//   help.show("trend");
#pragma once

#include "app/appearance.h"
#include "app/help/tour.h"
#include "app/settings.h"

class QMenu;

namespace blinkwright::app::help {

class HelpWindow;

class HelpDesk : public QObject {
    Q_OBJECT
  public:
    /// @param window with its panels and menus; pages are set on the panels (help_pages.h)
    HelpDesk(QMainWindow& window, Settings& settings, Appearance& appearance);

    void addTo(QMenu* menu);
    /// Beside what is in use, also where that is a dialog that blocks other windows.
    HelpWindow& show(const QString& page);
    /// The page that fits where the user is.
    HelpWindow& showHere();
    /// Once in the life of the settings, at the first start.
    void offerTour();
    Tour& tour() { return *m_tour; }

  private:
    HelpWindow& windowFor(QWidget* modal);
    bool eventFilter(QObject* watched, QEvent* event) override;

    QMainWindow& m_window;
    Settings& m_settings;
    Appearance& m_appearance;
    HelpWindow* m_help = nullptr;
    Tour* m_tour;
};

} // namespace blinkwright::app::help
