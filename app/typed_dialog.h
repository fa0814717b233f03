// A small dialog with one or two fields that complete what is typed, for what is named by text: pins and
// nets. It stays open, and says why, until what was typed can be done.
//
//   TypedDialog::ask(window, tr("Join two pins"),
//                    {{tr("&Pin"), pins, "R1:"}, {tr("&To pin or net"), pinsAndNets, {}}},
//                    [=](const QStringList& typed) { return wishes->join(typed[0], typed[1]); });
#pragma once

#include "core/base/result.h"

#include <QDialog>
#include <functional>
#include <vector>

class QLabel;
class QLineEdit;

namespace blinkwright::app {

class TypedDialog : public QDialog {
    Q_OBJECT
  public:
    struct Field {
        QString label;
        QStringList choices;
        QString text;
        QString meaning; ///< for "What is this?"
    };
    using Done = std::function<Result<void>(const QStringList& typed)>;

    TypedDialog(QWidget* parent, const QString& title, const std::vector<Field>& fields, Done done);
    /// Opens one over a window; it goes away when closed.
    static TypedDialog* ask(QWidget* parent, const QString& title, const std::vector<Field>& fields,
                            Done done);

    QLineEdit* field(std::size_t k) const { return m_fields[k]; }
    void accept() override;

  private:
    std::vector<QLineEdit*> m_fields;
    QLabel* m_why;
    Done m_done;
};

} // namespace blinkwright::app
