// Symptoms: from what is seen and measured on a board that was built, to what is likely wrong with it; and
// the check card of readings that a sound one gives.
#pragma once

#include "app/rooms/room.h"
#include "core/study/expected_readings.h"
#include "core/study/symptoms.h"

#include <atomic>

class QLabel;
class QPrinter;
class QPushButton;
class QTabWidget;

namespace blinkwright::widgets {
class CheckCardView;
class SuspectsView;
class SymptomForm;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class SymptomsRoom : public Room {
    Q_OBJECT
  public:
    explicit SymptomsRoom(const House& house);

    widgets::SymptomForm& form() { return *m_form; }
    widgets::SuspectsView& suspects() { return *m_suspects; }
    widgets::CheckCardView& card() { return *m_card; }
    Result<void> writeCard(const QString& path) const; ///< by its ending: .pdf or .txt

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;
    double progress() const override;

  private:
    /// What is known of one circuit in one set, whatever is observed.
    struct Known {
        circuit::Circuit circuit;
        circuit::PartSet set{};
        std::shared_ptr<const study::FaultLibrary> library;
        study::ExpectedReadings expected;
    };
    struct Counter {
        std::atomic<long> done = 0, total = 0;
    };
    void makeBody();
    void makeButtons();
    void show(const std::shared_ptr<const Known>& known, study::Diagnosis diagnosis);
    void say();
    void copy();
    void print();
    void printCard(QPrinter& printer) const;

    widgets::SymptomForm* m_form;
    widgets::SuspectsView* m_suspects;
    widgets::CheckCardView* m_card;
    QTabWidget* m_pages;
    QLabel* m_cautions;
    QPushButton *m_print = nullptr, *m_export = nullptr;
    std::shared_ptr<const Known> m_known;
    std::shared_ptr<Counter> m_counter = std::make_shared<Counter>();
};

} // namespace blinkwright::app
