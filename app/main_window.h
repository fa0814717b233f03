// The one window: Hook-up beside Curves and Readings, Values and Findings below, menus and a short tool bar.
//
//   MainWindow window(settings);
//   window.show();
//   window.openFile("mole-light.blinkwright");
// Split by what it does: layout here, menus in actions.cpp, files in file_actions.cpp, exports in
// export_actions.cpp, how symbols are drawn in view_actions.cpp.
#pragma once

#include "app/appearance.h"
#include "app/document.h"
#include "app/live_panels.h"
#include "app/settings.h"

#include <QMainWindow>
#include <optional>
#include <vector>

class QActionGroup;
class QLabel;
class QMenu;
class QSpinBox;
class QStackedWidget;
class QSplitter;
class QToolButton;

namespace blinkwright::widgets {
class PartPalette;
}

namespace blinkwright::app {

namespace help {
class HelpDesk;
}
class BandBehind;
enum class ExportedSets;
struct ExportChoice;
class HookupActions;
class HookupWishes;
class MeasuredPanels;
class Pane;
class PinsActions;
class PlayActions;
class PlayStrip;
class ProjectorView;
class ReadyActions;
class Recovery;
class RoomActions;
class SecondSet;
class SetActions;

class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    explicit MainWindow(Settings& settings, QWidget* parent = nullptr);
    ~MainWindow() override;

    Document& document() { return m_document; }
    LivePanels& live() { return *m_live; }
    Appearance& appearance() { return m_appearance; }
    widgets::HookupView& hookup() { return *m_hookup; }
    widgets::PinsView& pins() { return *m_pins; }
    PlayActions& play() { return *m_play; }
    HookupWishes& hookupWishes() { return *m_wishes; }
    widgets::ValuePanel& values() { return *m_values; }
    widgets::CurvesView& curves() { return *m_curves; }
    widgets::ReadingsView& readings() { return *m_readings; }
    SecondSet& second() { return *m_second; }
    SetActions& setActions() { return *m_setActions; }
    ReadyActions& readyActions() { return *m_readyActions; }
    RoomActions& rooms() { return *m_rooms; }
    BandBehind& band() { return *m_band; }
    help::HelpDesk& help() { return *m_help; }
    widgets::FindingsView& findings() { return *m_findings; }

    /// Opens a file without asking about changes; says in a dialog why it could not.
    bool openFile(const QString& path);
    /// Offers what an earlier program left unsaved, if there is anything.
    void offerLeftBehind();
    ProjectorView& projector() { return *m_projector; }
    Recovery& recovery() { return *m_recovery; }
    /// Shows the window about, at the first start only.
    void offerTour();
    /// Writes the curves that are shown, by the ending of the name.
    Result<void> exportTo(const QString& path);

  public slots:
    void copyPicture();
    void copyNumbers();
    void copyReadings();

  signals:
    /// The first time that curves have been painted: from here on the program is of use.
    void firstCurvePainted();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    // main_window.cpp
    void makeLayout();
    void makeStatusBar();
    void restoreState();
    void keepState();
    void showTheme(const widgets::Theme& theme);
    void showTitle();
    void goToPane(int step);
    void say(const QString& sentence);

    // actions.cpp
    void makeFileMenu();
    void makeEditMenu();
    void makeViewMenu();
    void makeHelpMenu();
    void makeToolBar();
    void fillRecentMenu();
    void zoomBy(double factor); ///< the Hook-up if it has the focus, else the curves
    void setRun(const circuit::RunSettings& run, int gesture);
    void showRun();
    void showAvailability();
    void showIcons(const widgets::Theme& theme);

    // view_actions.cpp
    void addSymbolChoices(QMenu* menu);
    void addLooksChoice(QMenu* menu);
    void addTextSizeChoice(QMenu* menu);
    void addLanguageChoice(QMenu* menu);
    void drawSymbolsAs(const widgets::hookup::SymbolStyle& style);

    // file_actions.cpp
    void startNew();
    void askOpen();
    void openInstead(const QString& path);
    void askImportRecord();
    QString askRecordFile(QWidget* over); ///< empty where the user gave up
    std::optional<circuit::Measurement> readRecord(QWidget* over, const QString& path);
    void importRecord(const QString& path);
    bool save();
    bool askSaveAs();
    bool mayLeave();
    bool mayOverwrite();
    void askAboutDisk();
    bool tellNotSaved(const Fault& fault);
    void tell(const QString& title, const Fault& fault);

    // export_actions.cpp
    struct Exported;           ///< what an export holds now
    Exported exported() const; ///< as it was chosen last
    Exported exported(const ExportChoice& choice, ExportedSets sets) const;
    void askExport();
    void askExportFile(QWidget* over);

    Settings& m_settings;
    Appearance m_appearance;
    Document m_document;

    widgets::HookupView* m_hookup = nullptr;
    widgets::PinsView* m_pins = nullptr;
    QStackedWidget* m_hookupFaces = nullptr; ///< drawing and pins
    Pane* m_hookupPane = nullptr;
    Pane* m_readingsPane = nullptr;
    widgets::ValuePanel* m_values = nullptr;
    widgets::CurvesView* m_curves = nullptr;
    widgets::ReadingsView* m_readings = nullptr;
    widgets::FindingsView* m_findings = nullptr;
    std::vector<Pane*> m_panes; ///< in the order that F6 visits
    QSplitter* m_rows = nullptr;
    QSplitter* m_top = nullptr;
    QSplitter* m_right = nullptr;
    QSplitter* m_bottom = nullptr;
    QLabel* m_report = nullptr;
    LivePanels* m_live = nullptr;
    SecondSet* m_second = nullptr;
    SetActions* m_setActions = nullptr;
    MeasuredPanels* m_measured = nullptr;
    PlayStrip* m_playStrip = nullptr;
    PlayActions* m_play = nullptr;
    PinsActions* m_pinsActions = nullptr;
    widgets::PartPalette* m_palette = nullptr;
    HookupWishes* m_wishes = nullptr;
    HookupActions* m_hookupActions = nullptr;
    ReadyActions* m_readyActions = nullptr;
    RoomActions* m_rooms = nullptr;
    BandBehind* m_band = nullptr;
    help::HelpDesk* m_help = nullptr;
    Recovery* m_recovery = nullptr;
    ProjectorView* m_projector = nullptr;

    QMenu* m_recent = nullptr;
    QAction* m_save = nullptr;
    QAction* m_saveAs = nullptr;
    QAction* m_export = nullptr;
    QAction* m_copyPicture = nullptr;
    QAction* m_copyReadings = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    QAction* m_openAction = nullptr;
    QAction* m_fitCurves = nullptr;
    QAction* m_fitHookup = nullptr;
    QAction* m_zoomIn = nullptr;
    QAction* m_zoomOut = nullptr;
    QAction* m_clearEcho = nullptr;
    QAction* m_fromPowerOn = nullptr;
    QAction* m_settled = nullptr;
    QSpinBox* m_flashes = nullptr;
    std::vector<QToolButton*> m_steadyButtons; ///< whose size stays while their texts change
    bool m_painted = false;
    bool m_askingAboutDisk = false;
};

} // namespace blinkwright::app
