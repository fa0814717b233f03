// Trend: how a settled figure moves as one value moves over a range.
#pragma once

#include "app/rooms/room.h"
#include "app/rooms/trend_question.h"

class QComboBox;

namespace blinkwright::widgets {
class QuantityField;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class TrendRoom : public Room {
    Q_OBJECT
  public:
    explicit TrendRoom(const House& house);
    ~TrendRoom() override;

    widgets::TrendPlot& plot() { return *m_plot; }
    const widgets::TrendRange& range() const { return m_range; }
    /// Writes what is shown; by the ending of the name: .csv, .png, .svg or .pdf.
    Result<void> write(const QString& path) const;

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;

  private:
    void makeControls();
    void refreshValues();
    void chooseValue();
    void chooseRange(const widgets::TrendRange& range);
    void enterEnd(double value, bool isFrom);
    void chooseUsualRange();
    void showRange();
    void showAnswer(const TrendQuestion& question, TrendAnswer answer);
    void showFigures(const std::vector<std::string>& lamps);
    void showPicture();
    void followPresent();
    void say();
    void wish(circuit::PartSet set, double value);
    double leastSupply_V() const;
    std::vector<widgets::TrendMark> marks() const;
    const widgets::TrendValue* value() const;
    QString valueKey() const; ///< under which its range is remembered: `R2.resistance`

    QComboBox *m_valueBox, *m_figureBox, *m_stepsBox;
    widgets::QuantityField *m_from, *m_to;
    widgets::TrendPlot* m_plot;
    std::vector<widgets::TrendValue> m_values;
    std::vector<widgets::TrendFigure> m_figures;
    std::optional<circuit::ValueRef> m_chosen;
    widgets::TrendRange m_range;
    std::optional<TrendQuestion> m_asked;      ///< of the curves that are shown
    std::vector<widgets::TrendLine> m_lines;   ///< as answered
    std::optional<std::string> m_wantedFigure; ///< remembered from the last time
    int m_gesture = 0;                         ///< of the document; 0 between gestures
};

} // namespace blinkwright::app
