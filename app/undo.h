// One step of the undo list: an edit by value that toggles between its two directions, never a pointer into
// the circuit.
//
//   Result<Edit> back = circuit::apply(circuit, edit);
//   stack.push(new EditCommand(document, "Set R1 to 47 kΩ", back.value(), gesture));   // already done
#pragma once

#include "core/circuit/edit.h"

#include <QUndoCommand>

namespace blinkwright::app {

class Document;

class EditCommand : public QUndoCommand {
  public:
    /// @param back the inverse of an edit that has been done already: pushing the command does not do it
    /// again.
    /// @param gesture commands of one gesture become one step; 0 stands alone.
    EditCommand(Document& document, const QString& text, circuit::Edit back, int gesture);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* later) override;

  private:
    void toggle();

    Document& m_document;
    circuit::Edit m_edit; ///< the way back while done, the way forth while undone
    int m_gesture;
    bool m_done = true;
};

/// The edit that undoes `later` and then `earlier`. A value that both restore is restored once, so that a
/// drag of a thousand moves stays one small edit.
circuit::Edit joined(const circuit::Edit& later, const circuit::Edit& earlier);

} // namespace blinkwright::app
