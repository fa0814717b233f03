// "Account for it": which part values explain what was measured, what to change for another rate, and the
// budget of uncertainty.
#pragma once

#include "app/rooms/room.h"
#include "core/study/retune.h"
#include "core/study/uncertainty_budget.h"

class QPushButton;

namespace blinkwright::widgets {
class AccountView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class DrawerDesk;

class AccountRoom : public Room {
    Q_OBJECT
  public:
    /// @param openMeasurements shows the room where measurements are entered
    AccountRoom(const House& house, DrawerDesk& desk, const std::function<void()>& openMeasurements);
    ~AccountRoom() override;

    widgets::AccountView& view() { return *m_view; }

  public slots:
    void applyAsSetB();
    void copyText();
    void exportTable();

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;

  private:
    struct Question;
    struct Found;
    Question question() const;
    static Found found(const Question& question, const std::atomic<bool>& cancel);
    void show(std::shared_ptr<const Found> found);
    void showButtons();
    QString sentence() const;

    DrawerDesk& m_desk;
    widgets::AccountView* m_view;
    QPushButton *m_apply, *m_copy, *m_export;
    std::shared_ptr<const Found> m_found;
};

} // namespace blinkwright::app
