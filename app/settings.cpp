#include "app/settings.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace blinkwright::app {

namespace {

const QString recentKey = QStringLiteral("files/recent");
const QString exportKey = QStringLiteral("files/export");
const QString folderKey = QStringLiteral("files/folder");
const QString answersGroup = QStringLiteral("answers/");
const QString looksKey = QStringLiteral("window/looks");
const QString textSizeKey = QStringLiteral("window/text-size");
const QString projectedKey = QStringLiteral("window/projected");
const QString languageKey = QStringLiteral("window/language");
const QString tourKey = QStringLiteral("window/tour-seen");
const QString barsKey = QStringLiteral("play/bars");
const QString flickerKey = QStringLiteral("play/answered");

const QString secondKey = QStringLiteral("window/set-b");
const QString bandKey = QStringLiteral("curves/band");
const QString recordsKey = QStringLiteral("view/measured-records");
const QString shapesKey = QStringLiteral("hookup/shapes");
const QString timerKey = QStringLiteral("hookup/timer");
constexpr char ieeeName[] = "IEEE 315", iecName[] = "IEC 60617", blockName[] = "block",
               packageName[] = "package";

struct LooksName {
    Looks looks;
    const char* name;
};
constexpr LooksName looksNames[] = {
    {Looks::light, "light"}, {Looks::dark, "dark"}, {Looks::system, "system"}};

} // namespace

namespace {

/// XDG Base Directory Specification 0.8; the toolkit does not know this folder yet.
QString userState() {
    const QString given = qEnvironmentVariable("XDG_STATE_HOME");
    const bool isUsable = QDir::isAbsolutePath(given); // the specification: others are to be ignored
    return (isUsable ? given : QDir::home().filePath(QStringLiteral(".local/state"))) +
           QStringLiteral("/blinkwright");
}

} // namespace

Settings::Settings()
    : m_store(std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope,
                                          QStringLiteral("blinkwright"), QStringLiteral("blinkwright"))),
      m_data(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
             QStringLiteral("/blinkwright")),
      m_state(userState()) {
}

Settings::Settings(const QString& iniFile)
    : m_store(std::make_unique<QSettings>(iniFile, QSettings::IniFormat)),
      m_data(QFileInfo(iniFile).absolutePath()),
      m_state(QFileInfo(iniFile).absoluteDir().filePath(QStringLiteral("state"))), m_isTrial(true) {
}

QStringList Settings::recentFiles() const {
    return m_store->value(recentKey).toStringList();
}

void Settings::addRecentFile(const QString& path) {
    QStringList files = recentFiles();
    const QString whole = QFileInfo(path).absoluteFilePath();
    files.removeAll(whole);
    files.prepend(whole);
    while (files.size() > mostRecentFiles) files.removeLast();
    m_store->setValue(recentKey, files);
}

void Settings::removeRecentFile(const QString& path) {
    QStringList files = recentFiles();
    files.removeAll(QFileInfo(path).absoluteFilePath());
    m_store->setValue(recentKey, files);
}

void Settings::clearRecentFiles() {
    m_store->remove(recentKey);
}

QByteArray Settings::windowState(const QString& part) const {
    return m_store->value(QStringLiteral("window/") + part).toByteArray();
}

void Settings::setWindowState(const QString& part, const QByteArray& state) {
    m_store->setValue(QStringLiteral("window/") + part, state);
}

Looks Settings::looks() const {
    const QString kept = m_store->value(looksKey).toString();
    for (const LooksName& known : looksNames)
        if (kept == QLatin1String(known.name)) return known.looks;
    return Looks::system;
}

void Settings::setLooks(Looks looks) {
    for (const LooksName& known : looksNames)
        if (looks == known.looks) m_store->setValue(looksKey, QLatin1String(known.name));
}

int Settings::textSize() const {
    return m_store->value(textSizeKey, 100).toInt();
}

void Settings::setTextSize(int percent) {
    m_store->setValue(textSizeKey, percent);
}

bool Settings::projected() const {
    return m_store->value(projectedKey).toBool();
}

void Settings::setProjected(bool on) {
    m_store->setValue(projectedKey, on);
}

QString Settings::language() const {
    return m_store->value(languageKey).toString();
}

void Settings::setLanguage(const QString& code) {
    m_store->setValue(languageKey, code);
}

bool Settings::tourSeen() const {
    return m_store->value(tourKey, m_isTrial).toBool();
}

void Settings::setTourSeen(bool seen) {
    m_store->setValue(tourKey, seen);
}

widgets::hookup::SymbolStyle Settings::symbolStyle() const {
    using namespace widgets::hookup;
    SymbolStyle style;
    if (m_store->value(shapesKey).toString() == QLatin1String(ieeeName)) style.shapes = Shapes::ieee315;
    if (m_store->value(timerKey).toString() == QLatin1String(blockName)) style.timer = TimerLook::block;
    return style;
}

void Settings::setSymbolStyle(const widgets::hookup::SymbolStyle& style) {
    using namespace widgets::hookup;
    m_store->setValue(shapesKey, QLatin1String(style.shapes == Shapes::ieee315 ? ieeeName : iecName));
    m_store->setValue(timerKey, QLatin1String(style.timer == TimerLook::block ? blockName : packageName));
}

bool Settings::secondSetShown() const {
    return m_store->value(secondKey).toBool();
}

void Settings::setSecondSetShown(bool on) {
    m_store->setValue(secondKey, on);
}

bool Settings::bandShown() const {
    return m_store->value(bandKey).toBool();
}

void Settings::setBandShown(bool on) {
    m_store->setValue(bandKey, on);
}

bool Settings::measuredRecordsShown() const {
    return m_store->value(recordsKey, true).toBool();
}

void Settings::setMeasuredRecordsShown(bool on) {
    m_store->setValue(recordsKey, on);
}

QString Settings::lastFolder() const {
    QString kept = m_store->value(folderKey).toString();
    if (!kept.isEmpty() && QDir(kept).exists()) return kept;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

QString Settings::exportEnding() const {
    return m_store->value(exportKey).toString();
}

void Settings::setExportEnding(const QString& ending) {
    m_store->setValue(exportKey, ending);
}

bool Settings::lampsAsBars() const {
    return m_store->value(barsKey).toBool();
}

void Settings::setLampsAsBars(bool on) {
    m_store->setValue(barsKey, on);
}

bool Settings::flickerAnswered() const {
    return m_store->value(flickerKey).toBool();
}

void Settings::setFlickerAnswered() {
    m_store->setValue(flickerKey, true);
}

QVariantMap Settings::answers(const QString& dialog) const {
    return m_store->value(answersGroup + dialog).toMap();
}

void Settings::setAnswers(const QString& dialog, const QVariantMap& answers) {
    m_store->setValue(answersGroup + dialog, answers);
}

QString Settings::dataFile(const QString& name) const {
    return QDir(m_data).filePath(name);
}

void Settings::setLastFolder(const QString& folder) {
    m_store->setValue(folderKey, folder);
}

} // namespace blinkwright::app
