// Measurements: what was measured on the real board, entered and changed, beside what the simulation says.
#pragma once

#include "app/rooms/room.h"
#include "core/study/measured_readings.h"

#include <optional>

class QPushButton;

namespace blinkwright::widgets {
class MeasurementsView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class MeasureRoom : public Room {
    Q_OBJECT
  public:
    /// Asks for a file of an instrument and how it is to be read; nothing where the user thinks better of it.
    using ImportRecord = std::function<std::optional<circuit::Measurement>(QWidget* parent)>;
    /// @param import null: records cannot be imported here
    MeasureRoom(const House& house, ImportRecord import);

    widgets::MeasurementsView& view() { return *m_view; }
    void addCount();
    void addReading();
    void addRecord();
    void change(int row);

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;

  private:
    void makeControls();
    void makeKeys();
    template <class Form>
    void openForm(Form* form, int row);
    void apply(const circuit::Measurements& measurements, const QString& text);
    void showAvailability();

    const ImportRecord m_import;
    widgets::MeasurementsView* m_view;
    QPushButton *m_count = nullptr, *m_reading = nullptr, *m_record = nullptr;
    QPushButton *m_change = nullptr, *m_duplicate = nullptr, *m_delete = nullptr, *m_copy = nullptr;
};

} // namespace blinkwright::app
