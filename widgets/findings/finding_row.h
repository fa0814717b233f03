// One finding as a row: a symbol whose shape tells the severity, the severity in words, the sentence, what to
// do, the places as links, and the source of the limit when asked for.
//
//   FindingRow row;
//   row.setFinding(finding);
//   connect(&row, &FindingRow::placeActivated, ...);
#pragma once

#include "core/study/findings.h"
#include "widgets/text/steady_label.h"
#include "widgets/theme/theme.h"

#include <QFrame>

namespace blinkwright::widgets {

/// Severity for people: "Fault", "Overstress", ...
QString severityWord(study::Severity severity);
QColor severityColour(const Theme& theme, study::Severity severity);
/// Cross in a disc, flash in a triangle's stead, and so on: no two severities share an outline.
void paintSeverity(QPainter& painter, const QRectF& box, study::Severity severity, const Theme& theme);

class FindingRow : public QFrame {
    Q_OBJECT
  public:
    explicit FindingRow(QWidget* parent = nullptr);

    /// @param set that it is about alone (`Set B`); empty where that needs no saying
    void setFinding(const study::Finding& finding, const QString& set = {});
    void setTheme(const Theme& theme);
    void setExpanded(bool on); ///< shows the source

  signals:
    void placeActivated(const QString& place);

  protected:
    void paintEvent(QPaintEvent*) override;
    void keyPressEvent(QKeyEvent*) override;
    void mousePressEvent(QMouseEvent*) override;

  private:
    void fill();
    study::Finding m_finding;
    QString m_set;
    Theme m_theme;
    bool m_expanded = false;
    SteadyLabel *m_head, *m_text, *m_remedy, *m_source;
};

} // namespace blinkwright::widgets
