// The layout of a record's file in controls: what was taken for what, to be changed.
//
//   form.setRecordLayout(guessed);
//   connect(&form, &LayoutForm::changed, [&] { read(form.recordLayout()); });
#pragma once

#include "core/io/record_layout.h"

#include <QWidget>
#include <array>

class QComboBox;
class QGridLayout;
class QLabel;
class QSpinBox;

namespace blinkwright::widgets {

class QuantityField;

class LayoutForm : public QWidget {
    Q_OBJECT
  public:
    explicit LayoutForm(QWidget* parent = nullptr);

    /// Tells nobody.
    void setRecordLayout(const io::RecordLayout& layout);
    const io::RecordLayout& recordLayout() const { return m_layout; }

  signals:
    void changed();      ///< another column, unit or meaning
    void tableChanged(); ///< other columns may be there: separator, decimal mark or the lines above
    void refused(const QString& reason);

  private:
    struct Voltage {
        QComboBox *column, *unit, *of;
    };
    QComboBox* chooser(const char* object, const QString& accessible, const QStringList& texts);
    void addRow(QGridLayout& grid, int row, const QString& label, std::initializer_list<QWidget*> parts);
    void showLayout();
    void take(); ///< from the controls

    io::RecordLayout m_layout;
    bool m_showing = false;
    QComboBox *m_separator, *m_mark, *m_names, *m_time, *m_timeUnit;
    QSpinBox* m_above;
    QuantityField* m_step;
    QLabel *m_unitWord, *m_stepWord;
    std::array<Voltage, 2> m_voltages;
};

} // namespace blinkwright::widgets
