// Readings: rows of figures with columns Textbook, Set A and how far they are apart; or, while Set A is
// compared with another, Textbook, Set A, the other, and that minus Set A. Where something was measured, that
// and how far it is from Set A stand behind.
#pragma once

#include "core/study/measured_against.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class ReadingsView : public QWidget {
    Q_OBJECT
  public:
    explicit ReadingsView(QWidget* parent = nullptr);
    ~ReadingsView() override;

    using Shared = std::shared_ptr<const study::Readings>;
    void setReadings(Shared readings);
    /// Readings to compare with, under their name (`Set B`), null while they are still to come. An empty name
    /// ends the comparison.
    void setSecond(Shared readings, const QString& name);
    /// What was measured on the real board; empty takes the columns away.
    void setMeasured(std::vector<study::MeasuredAgainst> measured);
    void setTheme(const Theme& theme);
    QString asText() const; ///< the table, tab separated, for the clipboard

  protected:
    void resizeEvent(QResizeEvent*) override;

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
