// What all measurements together say, figure by figure, beside what the simulation says.
//
//   MeasuredTable table;
//   table.setFigures(study::measuredAgainst(circuit, set, readings, &study), circuit, tr("Set A"));
#pragma once

#include "core/study/measured_against.h"
#include "widgets/theme/theme.h"

#include <QTableWidget>

namespace blinkwright::widgets {

class MeasuredTable : public QTableWidget {
    Q_OBJECT
  public:
    explicit MeasuredTable(QWidget* parent = nullptr);

    /// @param set what the simulation is of: `Set A`
    void setFigures(const std::vector<study::MeasuredAgainst>& figures, const circuit::Circuit& circuit,
                    const QString& set);
    void setTheme(const Theme& theme);
    QString asText() const; ///< tab separated, for the clipboard

  private:
    void colour();
    QColor m_doubt, m_ink;
};

} // namespace blinkwright::widgets
