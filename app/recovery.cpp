#include "app/recovery.h"

#include "app/whole_file.h"
#include "core/io/circuit_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>
#include <algorithm>

namespace blinkwright::app {

namespace {

// A line of JSON that says what it is, then the circuit's own file text.
const QString ending = QStringLiteral(".recovery"), lockEnding = QStringLiteral(".lock");
const QString format = QStringLiteral("blinkwright-recovery");
const QString formatKey = QStringLiteral("format"), versionKey = QStringLiteral("version"),
              pathKey = QStringLiteral("path"), whenKey = QStringLiteral("when");
constexpr int version = 1;
constexpr qint64 longestHead = 64 * 1024;

struct Kept {
    Recovery::Left left;
    circuit::Circuit circuit;
};

Result<Kept> readKept(const QString& file) {
    const auto bad = [&](const QString& why) { return Fault{file.toStdString(), why.toStdString()}; };
    const auto bytes =
        io::readBytes(QFile::encodeName(file).toStdString(), io::maxCircuitBytes + std::size_t(longestHead));
    if (!bytes) return bytes.fault();
    const std::size_t end = bytes.value().find('\n');
    if (end == std::string::npos) return bad(Recovery::tr("this is no recovery file"));
    const QJsonObject head =
        QJsonDocument::fromJson(QByteArray::fromStdString(bytes.value().substr(0, end))).object();
    if (head[formatKey].toString() != format || head[versionKey].toInt() != version)
        return bad(Recovery::tr("this is no recovery file"));
    Result<circuit::Circuit> circuit = io::readCircuit(std::string_view(bytes.value()).substr(end + 1));
    if (!circuit) return Fault{file.toStdString(), circuit.fault().message()};
    Kept kept;
    kept.left.file = file;
    kept.left.path = head[pathKey].toString();
    kept.left.when = QDateTime::fromString(head[whenKey].toString(), Qt::ISODateWithMs);
    kept.left.title = QString::fromStdString(circuit.value().title);
    kept.circuit = std::move(circuit).value();
    return kept;
}

/// Whether the program that wrote it is still there.
bool isHeld(const QString& file) {
    QLockFile lock(file + lockEnding);
    lock.setStaleLockTime(0); // only a dead owner makes it stale
    if (!lock.tryLock(0)) return true;
    lock.unlock();
    return false;
}

} // namespace

Recovery::Recovery(Document& document, const QString& folder, QObject* parent)
    : QObject(parent), m_document(document), m_folder(folder),
      m_file(QDir(folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces) + ending)) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(delay_ms);
    connect(&m_soon, &QTimer::timeout, this, &Recovery::write);
    connect(&m_document, &Document::changed, this, &Recovery::follow);
    connect(&m_document, &Document::modifiedChanged, this, &Recovery::follow);
}

Recovery::~Recovery() {
    remove();
}

void Recovery::follow() {
    if (!m_document.isModified()) {
        m_soon.stop();
        return remove();
    }
    // Not put off by further changes: a drag that goes on for long is kept all the while.
    if (m_written != m_document.revision() && !m_soon.isActive()) m_soon.start();
}

void Recovery::flush() {
    if (!m_soon.isActive()) return;
    m_soon.stop();
    write();
}

void Recovery::write() {
    if (!m_document.isModified()) return;
    const auto fail = [this](const Fault& fault) {
        if (!std::exchange(m_saidFailed, true)) emit failed(fault);
        m_soon.start(); // a disk that is full may have room again
    };
    if (!m_lock) {
        if (!QDir().mkpath(m_folder)) return fail(notWritten(m_folder, tr("the folder cannot be made")));
        m_lock = std::make_unique<QLockFile>(m_file + lockEnding);
        m_lock->setStaleLockTime(0);
        if (!m_lock->tryLock(0)) {
            m_lock.reset();
            return fail(notWritten(m_file, tr("the folder cannot be written to")));
        }
    }
    const QJsonObject head{{formatKey, format},
                           {versionKey, version},
                           {pathKey, m_document.path()},
                           {whenKey, QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs)}};
    const QByteArray bytes = QJsonDocument(head).toJson(QJsonDocument::Compact) + '\n' +
                             QByteArray::fromStdString(io::writeCircuit(m_document.circuit()));
    if (Result<void> done = writeWhole(m_file, bytes); !done) return fail(done.fault());
    m_written = m_document.revision();
    m_saidFailed = false;
}

void Recovery::remove() {
    m_written = 0;
    if (!m_lock) return;
    QFile::remove(m_file);
    m_lock.reset(); // and with it the lock's own file
}

std::vector<Recovery::Left> Recovery::leftBehind() const {
    std::vector<Left> list;
    const QDir folder(m_folder);
    for (const QString& name : folder.entryList({u'*' + ending}, QDir::Files)) {
        const QString file = folder.filePath(name);
        if (file == m_file || isHeld(file)) continue;
        if (Result<Kept> kept = readKept(file)) list.push_back(std::move(kept).value().left);
    }
    std::ranges::sort(list, std::greater(), &Left::when);
    return list;
}

Result<void> Recovery::takeUp(const Left& left) {
    Result<Kept> kept = readKept(left.file);
    if (!kept) return kept.fault();
    m_document.openUnsaved(std::move(kept.value().circuit), left.path);
    // The old file goes only when this program's own is safely there.
    m_soon.stop();
    write();
    if (m_written == m_document.revision()) discard(left);
    return {};
}

void Recovery::discard(const Left& left) {
    QFile::remove(left.file);
    QFile::remove(left.file + lockEnding);
}

} // namespace blinkwright::app
