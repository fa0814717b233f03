// Name and values of one part, all of them: what the rows of Values leave out stands here too. An empty field
// takes the default, which it shows.
//
//   auto* dialog = new PartDialog(window, document.circuit(), r1, [&](const Edit& e) { return apply(e); });
//   dialog->open();
#pragma once

#include "core/circuit/edit.h"

#include <QDialog>
#include <functional>
#include <map>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace blinkwright::app {

class PartDialog : public QDialog {
    Q_OBJECT
  public:
    using Apply = std::function<Result<void>(const circuit::Edit&)>;

    PartDialog(QWidget* parent, circuit::Circuit circuit, circuit::PartId part, Apply apply);

    QLineEdit* name() const { return m_name; }
    /// The field of a value that is typed, or null.
    QLineEdit* field(const std::string& key) const;
    /// The list of a value that is chosen, or null.
    QComboBox* choice(const std::string& key) const;
    void accept() override;

  private:
    void addRow(QFormLayout& form, const circuit::KeyInfo& key);
    Result<circuit::Edit> edit() const; ///< a Group; empty where nothing was changed
    void refuse(const QString& why, QWidget* where);

    const circuit::Circuit m_circuit;
    const circuit::PartId m_part;
    Apply m_apply;
    QLineEdit* m_name;
    QLabel* m_why;
    struct Row {
        const circuit::KeyInfo* key = nullptr;
        QLineEdit* field = nullptr;
        QComboBox* choice = nullptr;
        QString before; ///< the text as it stood at first
        int chosenBefore = 0;
    };
    std::vector<Row> m_rows;
    mutable QWidget* m_wrong = nullptr; ///< where the last edit() was refused
};

} // namespace blinkwright::app
