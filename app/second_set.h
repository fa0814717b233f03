// What Set A is compared with: Set B of the same circuit, or another circuit file. Runs it on a worker of its
// own, after Set A's picture has come, and lays it over in every panel.
//
//   SecondSet second(document, live, {hookup, values, curves, readings, findings});
//   second.showSetB(true);
//   Result<void> done = second.compareWith("winch.blinkwright");   // in place of Set B
//   second.stopComparing();
#pragma once

#include "app/document.h"
#include "app/live_panels.h"
#include "app/live_run.h"

#include <optional>

namespace blinkwright::app {

class SecondSet : public QObject {
    Q_OBJECT
  public:
    SecondSet(Document& document, LivePanels& live, const LivePanels::Panels& panels,
              QObject* parent = nullptr);

    void showSetB(bool on);
    bool showsSetB() const { return m_wantsB; }
    /// Shown when a file is opened that states differences for Set B, else as the user left it.
    void setUsual(bool on) { m_usual = on; }
    /// Reads a file to compare with, instead of Set B. On a fault all stays as it was.
    Result<void> compareWith(const QString& path);
    void stopComparing();
    bool comparesFile() const { return m_other.has_value(); }

    bool isShown() const { return m_wantsB || m_other; }
    QString name() const;  ///< `Set B`, or the file's name
    QString brief() const; ///< `B`, or the file's name without its ending
    /// Null before the first result, where no board can be made, and where nothing is compared.
    std::shared_ptr<const study::Study> shown() const { return m_shown; }
    /// Whether it is drawn beside Set A: Set B is not where it holds the same.
    bool isApart() const { return m_apart; }
    const circuit::Circuit& circuit() const { return m_other ? *m_other : m_document.circuit(); }
    circuit::PartSet set() const { return m_other ? circuit::PartSet::A : circuit::PartSet::B; }

  signals:
    void changed(); ///< what is compared with, or its study
    void said(const QString& sentence);

  private:
    void open();
    void showValues();
    void showMode();
    void follow(bool pictureCame);
    void ask(const circuit::Circuit& circuit);
    void take(const LiveRun::Outcome& outcome);
    void put(std::shared_ptr<const study::Study> study, bool apart);
    void beginGesture(circuit::PartSet set);

    Document& m_document;
    LivePanels& m_live;
    LivePanels::Panels m_panels;
    std::unique_ptr<LiveRun> m_run; ///< made when first needed
    bool m_wantsB = false;
    bool m_usual = false;
    std::optional<circuit::Circuit> m_other; ///< of the file that is compared with
    QString m_otherFile;
    std::shared_ptr<const study::Study> m_shown;
    bool m_apart = false;
    std::optional<circuit::Circuit> m_asked; ///< the last circuit that a run was asked for
    bool m_askedRoughly = false;
    quint64 m_ticket = 0; ///< of the last request
    quint64 m_oldest = 0; ///< earlier results are of something else
};

} // namespace blinkwright::app
