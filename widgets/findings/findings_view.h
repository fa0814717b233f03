// Findings: plain sentences, worst first, each with its severity in words, numbers and remedy.
#pragma once

#include "core/study/findings.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class FindingsView : public QWidget {
    Q_OBJECT
  public:
    explicit FindingsView(QWidget* parent = nullptr);
    ~FindingsView() override;

    void setFindings(const std::vector<study::Finding>& findings);
    /// Findings on the set or circuit that Set A is compared with: those that Set A has not are listed too,
    /// marked with its name. An empty name ends the comparison.
    void setSecond(const std::vector<study::Finding>& findings, const QString& name);
    void setTheme(const Theme& theme);

  signals:
    void placeActivated(const QString& place); ///< `U1:4` or `R1`: show it on the Hook-up

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
