// A field for one quantity in engineering text: `4k7`, `0,22 µF`. What cannot be read stays in the field, and
// the reason is told.
//
//   QuantityField field;
//   field.showText(tr("10 kΩ"));
//   field.setReader([&](const QString& text) { return value.read(text); });
//   connect(&field, &QuantityField::entered, ...);
#pragma once

#include "core/base/result.h"

#include <QLineEdit>
#include <functional>

namespace blinkwright::widgets {

class QuantityField : public QLineEdit {
    Q_OBJECT
  public:
    using Reader = std::function<Result<double>(const QString&)>;
    explicit QuantityField(QWidget* parent = nullptr);

    void setReader(Reader reader) { m_reader = std::move(reader); }
    /// The text of the value that holds; gives way to nothing that is being typed.
    void showText(const QString& text);

  signals:
    void entered(double value);
    void refused(const QString& reason);

  protected:
    void keyPressEvent(QKeyEvent* event) override; ///< Esc takes back what was typed
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void enter();

    Reader m_reader;
    QString m_held;
};

} // namespace blinkwright::widgets
