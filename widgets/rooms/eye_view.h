// What the eye sees of each lamp, as a table: a column a lamp, rows of figures, then rows of stated uses.
//
//   EyeView view;
//   view.setEye(study->eye);
#pragma once

#include "core/study/eye.h"
#include "widgets/theme/theme.h"

#include <QTableWidget>

namespace blinkwright::widgets {

class EyeView : public QTableWidget {
    Q_OBJECT
  public:
    explicit EyeView(QWidget* parent = nullptr);

    void setEye(const std::vector<study::EyeReading>& lamps);
    void setTheme(const Theme& theme);
    QString asText() const; ///< tab separated, for the clipboard

  private:
    void fill();
    void addHeading(const QString& text);
    /// @param cells one a lamp
    void addRow(const QString& name, const QString& meaning, const QStringList& cells);

    std::vector<study::EyeReading> m_lamps;
    Theme m_theme;
};

/// What to beware of, in sentences; never empty.
QString eyeCautions(const std::vector<study::EyeReading>& lamps);

} // namespace blinkwright::widgets
