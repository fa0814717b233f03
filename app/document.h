// The open circuit, its file, and the one door through which it changes.
//
//   Document document;
//   document.open("mole.blinkwright");
//   document.apply(circuit::setValue(document.circuit(), PartSet::A, r1, "resistance", 47000.0), gesture);
//   document.undoStack().undo();
//   document.save();
#pragma once

#include "core/circuit/edit.h"

#include <QByteArray>
#include <QObject>
#include <QUndoStack>

namespace blinkwright::app {

class Document : public QObject {
    Q_OBJECT
  public:
    explicit Document(QObject* parent = nullptr);

    const circuit::Circuit& circuit() const { return m_circuit; }
    QUndoStack& undoStack() { return m_undo; }
    /// Grows by one with every change, undo and redo included.
    quint64 revision() const { return m_revision; }
    /// The revision at which this file was opened: runs of earlier ones are of another circuit.
    quint64 openedRevision() const { return m_openedRevision; }
    bool isModified() const { return !m_undo.isClean(); }
    /// Absolute; empty while nothing has been opened or saved.
    QString path() const { return m_path; }

    /// A fresh id for the edits of one gesture.
    int newGesture() { return ++m_lastGesture; }
    /// Does an edit as one undo step; edits of the same gesture, one after the other, stay one step.
    /// On a fault nothing has changed.
    Result<void> apply(const circuit::Edit& edit, int gesture = 0);

    /// A circuit without a file in place of the open one: by default an empty one. One with parts counts as
    /// modified until it is saved.
    void startWith(circuit::Circuit circuit = {});
    /// A circuit with changes that are in no file yet, though it came from one.
    /// @param path the file that it came from, empty for none
    void openUnsaved(circuit::Circuit circuit, const QString& path);
    /// Reads a file in place of the open circuit. On a fault what was open stays as it was.
    Result<void> open(const QString& path);
    /// What has become of the file since it was read or written by us.
    enum class OnDisk { asItWas, changed, gone };
    OnDisk onDisk() const;
    /// From here on the file as it is now counts as the one that was read: the user was asked.
    void acceptDisk();
    /// Writes to the file it came from; a fault where there is none yet.
    Result<void> save();
    /// Writes a whole new file beside the old and then puts it in its place; clean only after that succeeded.
    Result<void> saveAs(const QString& path);

  signals:
    void opened();  ///< another circuit; comes before changed()
    void changed(); ///< the circuit is another one than before
    void pathChanged();
    void modifiedChanged(bool modified);

  private:
    friend class EditCommand;
    void show(circuit::Circuit circuit, const QString& path);
    /// Applies one direction of an undo step and answers with the other.
    circuit::Edit replay(const circuit::Edit& edit);
    void touch();
    void noteDisk();

    circuit::Circuit m_circuit;
    QUndoStack m_undo;
    QString m_path;
    quint64 m_revision = 0;
    quint64 m_openedRevision = 0;
    QByteArray m_onDisk; ///< digest of the file as it was read or written; empty while there is none
    int m_lastGesture = 0;
};

} // namespace blinkwright::app
