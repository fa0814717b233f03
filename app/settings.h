// What the program remembers between two starts: recent files, the window as it was left, looks, the last
// folder.
//
//   Settings settings;                      // the user's own
//   Settings trial("/tmp/x/trial.ini");     // a file of its own, for tests
//   settings.addRecentFile(path);
#pragma once

#include "widgets/hookup/geometry.h"

#include <QByteArray>
#include <QSettings>
#include <QStringList>
#include <QVariantMap>
#include <memory>

namespace blinkwright::app {

/// What the user asked for; `system` follows the desktop.
enum class Looks { light, dark, system };

class Settings {
  public:
    static constexpr int mostRecentFiles = 10;

    Settings();
    explicit Settings(const QString& iniFile);

    /// Newest first, absolute paths, none twice.
    QStringList recentFiles() const;
    void addRecentFile(const QString& path);
    void removeRecentFile(const QString& path);
    void clearRecentFiles();

    QByteArray windowState(const QString& part) const; ///< by part of the window, empty if never kept
    void setWindowState(const QString& part, const QByteArray& state);

    Looks looks() const;
    void setLooks(Looks looks);

    /// The size of texts over the desktop's [%].
    int textSize() const;
    void setTextSize(int percent);
    /// Whether the window was left in its view for a class.
    bool projected() const;
    void setProjected(bool on);

    /// The language of the window by its code; empty for the desktop's.
    QString language() const;
    void setLanguage(const QString& code);

    /// Whether the tour of the window was begun. A trial file has seen it: nothing comes up unasked there.
    bool tourSeen() const;
    void setTourSeen(bool seen = true);

    /// How the Hook-up draws its symbols.
    widgets::hookup::SymbolStyle symbolStyle() const;
    void setSymbolStyle(const widgets::hookup::SymbolStyle& style);

    /// Whether Set B is shown beside Set A also where both hold the same.
    bool secondSetShown() const;
    void setSecondSetShown(bool on);
    /// Whether the band of simulated boards stands behind the curves.
    bool bandShown() const;
    void setBandShown(bool on);

    /// Whether records of the real board are laid over the curves.
    bool measuredRecordsShown() const;
    void setMeasuredRecordsShown(bool on);

    /// The folder that file dialogs start in; the user's documents at first.
    QString lastFolder() const;
    void setLastFolder(const QString& folder);

    /// The kind of the last export, by the ending of its name; empty before the first.
    QString exportEnding() const;
    void setExportEnding(const QString& ending);

    /// Whether lamps are shown as bars, for people whom flicker bothers; asked once before anything flashes
    /// fast.
    bool lampsAsBars() const;
    void setLampsAsBars(bool on);
    bool flickerAnswered() const;
    void setFlickerAnswered();
    /// What was answered last in a dialog, by its name; empty before the first time.
    QVariantMap answers(const QString& dialog) const;
    void setAnswers(const QString& dialog, const QVariantMap& answers);

    /// The folder of what must outlive a crash, but is no data of the user's own. It lies beside a trial
    /// file.
    QString stateFolder() const { return m_state; }
    /// A file of the user's own data, by its name. It lies beside a trial file of settings.
    QString dataFile(const QString& name) const;

    void sync() { m_store->sync(); }

  private:
    std::unique_ptr<QSettings> m_store;
    QString m_data; ///< the folder of data files
    QString m_state;
    bool m_isTrial = false;
};

} // namespace blinkwright::app
