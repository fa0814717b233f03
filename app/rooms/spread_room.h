// Spread: what becomes of the figures when every part is somewhere within its tolerance.
#pragma once

#include "app/rooms/room.h"

#include <atomic>

class QComboBox;
class QSpinBox;

namespace blinkwright::widgets {
class SpreadView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class SpreadRoom : public Room {
    Q_OBJECT
  public:
    explicit SpreadRoom(const House& house);
    ~SpreadRoom() override;

    widgets::SpreadView& view() { return *m_view; }
    enum class Table { boards, figures };
    Result<void> writeTable(const QString& path, Table table) const;
    Result<void> writePicture(const QString& path) const; ///< .png, .svg or .pdf

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;
    double progress() const override;

  private:
    struct Found;
    void makeControls();
    void makeButtons();
    void showAnswer(const Found& found);
    void showFigures();
    void tie(circuit::PartId part, std::optional<circuit::PartId> with);
    void rememberControls();

    QComboBox *m_figure, *m_draw;
    QSpinBox *m_boards, *m_seed;
    widgets::SpreadView* m_view;
    std::shared_ptr<std::atomic<long>> m_done; ///< boards, of the work that runs
    long m_asked = 0;                          ///< boards
};

} // namespace blinkwright::app
