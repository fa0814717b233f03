// Readings: rows of figures with columns Textbook and Set A (later Set B and Measured).
#pragma once

#include "core/study/readings.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class ReadingsView : public QWidget {
    Q_OBJECT
  public:
    explicit ReadingsView(QWidget* parent = nullptr);
    ~ReadingsView() override;

    void setReadings(std::shared_ptr<const study::Readings> readings);
    void setTheme(const Theme& theme);
    QString asText() const; ///< the table, tab separated, for the clipboard

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
