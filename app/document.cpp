#include "app/document.h"

#include "app/circuit_loading.h"
#include "app/undo.h"
#include "app/whole_file.h"
#include "core/io/circuit_file.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

namespace blinkwright::app {

namespace {

/// Of a file's bytes; nothing where there is no such file. Times of files are too coarse to tell two saves
/// apart.
std::optional<QByteArray> digestOf(const QString& path) {
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file)) return std::nullopt;
    return hash.result();
}

} // namespace

Document::Document(QObject* parent) : QObject(parent) {
    connect(&m_undo, &QUndoStack::cleanChanged, this, [this](bool clean) { emit modifiedChanged(!clean); });
}

Result<void> Document::apply(const circuit::Edit& edit, int gesture) {
    const QString text = QString::fromStdString(circuit::describe(m_circuit, edit));
    Result<circuit::Edit> back = circuit::apply(m_circuit, edit);
    if (!back) return back.fault();
    m_undo.push(new EditCommand(*this, text, std::move(back).value(), gesture));
    touch();
    return {};
}

circuit::Edit Document::replay(const circuit::Edit& edit) {
    Result<circuit::Edit> other = circuit::apply(m_circuit, edit);
    Q_ASSERT_X(other.ok(), "Document::replay", "an undo step must always be possible");
    touch();
    return other ? std::move(other).value() : edit;
}

void Document::touch() {
    ++m_revision;
    emit changed();
}

void Document::show(circuit::Circuit circuit, const QString& path) {
    m_circuit = std::move(circuit);
    m_undo.clear();
    if (path.isEmpty() && !m_circuit.parts().empty())
        m_undo.resetClean(); // it is in no file yet
    else
        m_undo.setClean(); // clear() leaves an empty stack as it was
    m_path = path;
    noteDisk();
    m_openedRevision = m_revision + 1;
    ++m_revision;
    emit pathChanged();
    emit opened();
    emit changed();
}

void Document::startWith(circuit::Circuit circuit) {
    show(std::move(circuit), {});
}

void Document::openUnsaved(circuit::Circuit circuit, const QString& path) {
    show(std::move(circuit), path);
    m_undo.resetClean();
    emit modifiedChanged(true);
}

Result<void> Document::open(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    Result<circuit::Circuit> read = loadCircuit(QFile::encodeName(whole).toStdString());
    if (!read) return read.fault();
    show(std::move(read).value(), whole);
    return {};
}

Result<void> Document::save() {
    if (m_path.isEmpty()) return Fault{{}, tr("the circuit has no file yet").toStdString()};
    return saveAs(m_path);
}

Result<void> Document::saveAs(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    if (Result<void> done = writeWhole(whole, QByteArray::fromStdString(io::writeCircuit(m_circuit))); !done)
        return done;
    if (m_path != whole) {
        m_path = whole;
        emit pathChanged();
    }
    noteDisk();
    m_undo.setClean();
    return {};
}

void Document::noteDisk() {
    m_onDisk = m_path.isEmpty() ? QByteArray() : digestOf(m_path).value_or(QByteArray());
}

void Document::acceptDisk() {
    noteDisk();
}

Document::OnDisk Document::onDisk() const {
    if (m_path.isEmpty()) return OnDisk::asItWas;
    const std::optional<QByteArray> now = digestOf(m_path);
    if (!now) return OnDisk::gone;
    return m_onDisk == *now ? OnDisk::asItWas : OnDisk::changed;
}

} // namespace blinkwright::app
