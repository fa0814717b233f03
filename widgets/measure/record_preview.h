// The first lines of a record's file as a table: above each column what it was taken for, lines that are
// passed over in quiet ink.
//
//   preview.setText(beginning);
//   preview.setRecordLayout(layout);
#pragma once

#include "core/io/record_layout.h"
#include "widgets/theme/theme.h"

#include <QTableWidget>
#include <string>

namespace blinkwright::widgets {

class RecordPreview : public QTableWidget {
    Q_OBJECT
  public:
    explicit RecordPreview(QWidget* parent = nullptr);

    void setText(std::string beginning) { m_text = std::move(beginning); }
    void setRecordLayout(const io::RecordLayout& layout);
    void setTheme(const Theme& theme);

    QSize sizeHint() const override { return {420, 190}; }
    QSize minimumSizeHint() const override { return {240, 110}; }

  private:
    void fill();
    QString roleOf(std::size_t column) const;

    std::string m_text;
    io::RecordLayout m_layout;
    Theme m_theme;
};

/// "Output", "Timing capacitor", "Something else".
QString traceText(circuit::TraceOf of);

} // namespace blinkwright::widgets
