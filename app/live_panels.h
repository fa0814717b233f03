// Joins the panels to the document and to the live run: wishes become edits, every change asks for a run,
// every result is shown.
//
//   LivePanels live(document, {hookup, values, curves, readings, findings});
//   connect(&live, &LivePanels::reported, statusLabel, &QLabel::setText);
#pragma once

#include "app/document.h"
#include "app/live_run.h"
#include "widgets/theme/theme.h"

namespace blinkwright::widgets {
class CurvesView;
class FindingsView;
class HookupView;
class PinsView;
class ReadingsView;
class ValuePanel;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class LivePanels : public QObject {
    Q_OBJECT
  public:
    /// While a hand holds a value, the picture must be quick: the readings show four digits, which this keeps
    /// right. What stays on the screen after the hand has let go is run again at full accuracy.
    static constexpr double dragAccuracy = 1e-5;
    static constexpr double fullAccuracy = 1e-6;

    struct Panels {
        widgets::HookupView& hookup;
        widgets::ValuePanel& values;
        widgets::CurvesView& curves;
        widgets::ReadingsView& readings;
        widgets::FindingsView& findings;
    };
    LivePanels(Document& document, const Panels& panels, QObject* parent = nullptr);

    /// What the panels show now; null before the first result and where no board can be made.
    std::shared_ptr<const study::Study> shown() const { return m_shown; }
    bool hasEcho() const { return m_echo != nullptr; }
    void clearEcho();
    /// @param ofSecond the curves before a change of what is laid over, not of Set A
    void showEcho(std::shared_ptr<const engine::Curves> echo, bool ofSecond);
    /// Whether Set A's next picture is still to come.
    bool isBusy() const { return m_run.isBusy(); }
    bool inGesture() const { return m_gesture != 0; }
    void setTheme(const widgets::Theme& theme);
    void activate(const QString& place); ///< `R1`, `U1:7`: shows it on the Hook-up and among the values

  signals:
    void reported(const QString& line);    ///< what the last run did, for the status bar
    void refused(const QString& sentence); ///< why a wish was not done
    void studyShown();
    void echoChanged(bool there);
    void gestureOver();

  private:
    void connectPanels();
    void beginGesture(circuit::PartSet set);
    void endGesture();
    void wish(circuit::PartSet set, const circuit::ValueRef& which, double value);
    void ask();
    void show(const LiveRun::Outcome& outcome);
    void showCircuit();
    void showNothing();
    void showEmpty();
    void showStudy(std::shared_ptr<const study::Study> study);
    void showGlow();
    bool isStale(const LiveRun::Outcome& outcome) const;
    bool isShownAlready() const;

    Document& m_document;
    Panels m_panels;
    LiveRun m_run;
    QTimer m_slow; ///< says so when a result takes long
    std::shared_ptr<const study::Study> m_shown;
    std::shared_ptr<const engine::Curves> m_echo;
    int m_gesture = 0;             ///< of the document; 0 between gestures
    quint64 m_gestureRevision = 0; ///< the document's when the gesture began
    circuit::Circuit m_asked;      ///< the last circuit that a run was asked for
    bool m_askedRoughly = false;   ///< the last request was of a drag
    bool m_freshFile = false;      ///< the next curves are the first of their file
    bool m_freshDrawing = false;   ///< the next drawing is
};

} // namespace blinkwright::app
