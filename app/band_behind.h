// The band of simulated boards behind the Curves: made on a worker of its own after each picture has come,
// while it is wanted, and taken away as soon as it belongs to another board.
//
//   BandBehind band(document, live, curves, settings);
//   band.addToViewMenu(menu);
#pragma once

#include "app/document.h"
#include "app/live_panels.h"
#include "app/newest_task.h"
#include "app/settings.h"
#include "core/study/band.h"

class QAction;
class QMenu;

namespace blinkwright::app {

class BandBehind : public QObject {
    Q_OBJECT
  public:
    BandBehind(Document& document, LivePanels& live, widgets::CurvesView& curves, Settings& settings,
               QObject* parent = nullptr);

    void addToViewMenu(QMenu* menu);
    /// What is drawn now; null where there is none.
    std::shared_ptr<const study::Band> shown() const { return m_shown; }
    bool isBusy() const { return m_task.isBusy(); }

  signals:
    void changed();
    void said(const QString& sentence); ///< why there is no band

  private:
    void want(bool on);
    void follow();
    void ask();
    void put(std::shared_ptr<const study::Band> band);

    Document& m_document;
    LivePanels& m_live;
    widgets::CurvesView& m_curves;
    Settings& m_settings;
    bool m_wanted;
    circuit::Circuit m_asked; ///< the circuit that the last band was asked for
    std::shared_ptr<const study::Band> m_shown;
    NewestTask m_task;
};

} // namespace blinkwright::app
