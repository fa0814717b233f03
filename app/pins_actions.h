// The two faces of the Hook-up, drawing and pins, in one pane: which of them is shown, and what the Pins view
// wishes done to the wiring.
//
//   m_pinsActions = new PinsActions({document, live, hookup, pins, curves, faces}, this);
//   for (QAction* action : m_pinsActions->faces()) menu->addAction(action);
#pragma once

#include "app/document.h"

#include <QElapsedTimer>
#include <QList>

class QAction;
class QStackedWidget;
class QWidget;

namespace blinkwright::widgets {
class CurvesView;
class HookupView;
class PinsView;
class ValuePanel;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class HookupActions;
class LivePanels;
class PlayActions;

class PinsActions : public QObject {
    Q_OBJECT
  public:
    struct Places {
        Document& document;
        LivePanels& live;
        widgets::HookupView& hookup;
        widgets::PinsView& pins;
        widgets::ValuePanel& values;
        widgets::CurvesView& curves;
        QStackedWidget& faces; ///< the drawing first, then the pins
        HookupActions& parts;  ///< whose menus serve the pins, too
    };
    PinsActions(const Places& places, const PlayActions& play, QObject* parent);

    /// Drawing, Pins: one of them is checked.
    const QList<QAction*>& faces() const { return m_faces; }
    /// Two buttons for the head of the pane. The caller owns them.
    QWidget* makeSwitch() const;

  signals:
    void refused(const QString& sentence);

  private:
    void makePartKeys();
    void show(int face);
    bool shown() const;
    void showCircuit();
    void showVoltages(bool atRest);
    void wish(circuit::PinRef pin, const QString& text);

    Places m_at;
    QList<QAction*> m_faces;
    QElapsedTimer m_sinceVoltages;
    bool m_stale = true; ///< the circuit has changed while the drawing was shown
};

} // namespace blinkwright::app
