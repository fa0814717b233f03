// A record as it was reduced: its traces over time, the switchings that were found marked on their level. Of
// a long one the beginning is shown; wheel, drag, arrows, + and - go through it, Home shows all of it.
//
//   RecordPlot plot(RoomPlot::Use::screen);
//   plot.setRecord(std::make_shared<const circuit::Record>(record));
#pragma once

#include "widgets/rooms/room_plot.h"

namespace blinkwright::circuit {
enum class TraceOf;
struct Record;
} // namespace blinkwright::circuit

namespace blinkwright::widgets {

class ScaleTicker;

class RecordPlot final : public RoomPlot {
    Q_OBJECT
  public:
    explicit RecordPlot(Use use, QWidget* parent = nullptr);

    void setRecord(std::shared_ptr<const circuit::Record> record); ///< null: empty
    std::unique_ptr<RoomPlot> forPage() const override;
    QSize minimumSizeHint() const override { return {370, 180}; } // the keys side by side

  protected:
    void restyle() override;
    void paintOver(QCPPainter& painter) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void showFirst(); ///< as much from the beginning as marks have room for
    void keepWithin(const QCPRange& range);
    std::size_t marksWithin(const QCPRange& range) const;
    void draw();
    QColor colourOf(circuit::TraceOf of) const;
    void paintMarks(QCPPainter& painter) const;

    std::shared_ptr<const circuit::Record> m_record;
    QSharedPointer<ScaleTicker> m_time, m_volts;
};

} // namespace blinkwright::widgets
