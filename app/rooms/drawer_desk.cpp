#include "app/rooms/drawer_desk.h"

#include "app/help/help_pages.h"
#include "app/whole_file.h"
#include "core/io/circuit_file.h"
#include "core/io/drawer_file.h"
#include "widgets/choose/drawer_dialog.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>

namespace blinkwright::app {

namespace {

const QString drawerFile = QStringLiteral("drawer.csv");

QString tableFilter() {
    return DrawerDesk::tr("Table (*.csv);;All files (*)");
}

Result<std::vector<study::Stock>> readFile(const QString& path) {
    const auto bytes = io::readBytes(QFile::encodeName(path).toStdString(), io::maxDrawerBytes);
    if (!bytes) return bytes.fault();
    return io::readDrawer(bytes.value());
}

} // namespace

DrawerDesk::DrawerDesk(const Room::House& house)
    : QObject(&house.window), m_house(house), m_path(house.settings.dataFile(drawerFile)) {
}

widgets::DrawerDialog& DrawerDesk::dialog() {
    if (m_dialog) return *m_dialog;
    m_dialog = new widgets::DrawerDialog(m_house.appearance.theme(), &m_house.window);
    help::setPage(m_dialog, QStringLiteral("drawer"));
    connect(&m_house.appearance, &Appearance::themeChanged, m_dialog, &widgets::DrawerDialog::setTheme);
    connect(m_dialog, &widgets::DrawerDialog::importWished, this, &DrawerDesk::askImport);
    connect(m_dialog, &widgets::DrawerDialog::exportWished, this, &DrawerDesk::askExport);
    load();
    connect(&m_dialog->model(), &widgets::DrawerModel::edited, this, [this] {
        keep();
        emit changed();
    });
    return *m_dialog;
}

std::vector<study::Stock> DrawerDesk::stock() {
    return dialog().model().stock();
}

void DrawerDesk::open() {
    widgets::DrawerDialog& shown = dialog();
    shown.show();
    shown.raise();
    shown.activateWindow();
}

void DrawerDesk::load() {
    if (!QFileInfo::exists(m_path)) return;
    const auto stock = readFile(m_path);
    if (stock) return m_dialog->model().setStock(stock.value());
    m_unread = true;
    m_dialog->say(tr("The drawer could not be read: %1. Its file is put aside at the first edit.")
                      .arg(QString::fromStdString(stock.fault().message())),
                  true);
}

void DrawerDesk::keep() {
    if (m_unread) {
        // Whatever is in there is the user's: the last one put aside goes, this one stays.
        const QString aside = m_path + QStringLiteral(".unread");
        QFile::remove(aside);
        m_unread = !QFile::rename(m_path, aside);
    }
    QDir().mkpath(QFileInfo(m_path).absolutePath());
    const Result<void> done = m_unread
                                  ? notWritten(m_path, tr("what is there could not be put aside"))
                                  : writeWhole(m_path, QByteArray::fromStdString(io::writeDrawer(stock())));
    if (!done) m_dialog->say(QString::fromStdString(done.fault().message()), true);
}

Result<void> DrawerDesk::importFrom(const QString& path) {
    const auto stock = readFile(path);
    if (!stock) return Fault{QDir::toNativeSeparators(path).toStdString(), stock.fault().message()};
    dialog().model().addStock(stock.value());
    return {};
}

Result<void> DrawerDesk::exportTo(const QString& path) {
    return writeWhole(path, QByteArray::fromStdString(io::writeDrawer(stock())));
}

void DrawerDesk::askImport() {
    const QString path = QFileDialog::getOpenFileName(m_dialog, tr("Import parts into the drawer"),
                                                      m_house.settings.lastFolder(), tableFilter());
    if (path.isEmpty()) return;
    m_house.settings.setLastFolder(QFileInfo(path).absolutePath());
    if (const Result<void> done = importFrom(path); !done)
        m_dialog->say(QString::fromStdString(done.fault().message()), true);
}

void DrawerDesk::askExport() {
    QFileDialog dialog(m_dialog, tr("Export the drawer"), m_house.settings.lastFolder(), tableFilter());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("csv"));
    dialog.selectFile(drawerFile);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return;
    const QString path = dialog.selectedFiles().front();
    const Result<void> done = exportTo(path);
    m_dialog->say(done ? tr("Exported to %1").arg(QFileInfo(path).fileName())
                       : QString::fromStdString(done.fault().message()),
                  !done);
    if (done) m_house.settings.setLastFolder(QFileInfo(path).absolutePath());
}

} // namespace blinkwright::app
