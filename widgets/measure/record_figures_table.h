// What a record says of the figures, each with its standard uncertainty: a row a figure, a dash for one that
// it does not have.
//
//   table.setFigures(study::figuresOf(record));
#pragma once

#include "core/study/measured_readings.h"

#include <QTableWidget>

namespace blinkwright::widgets {

class RecordFiguresTable : public QTableWidget {
    Q_OBJECT
  public:
    explicit RecordFiguresTable(QWidget* parent = nullptr);

    void setFigures(const study::RecordFigures& figures); ///< of no record: dashes alone
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }
};

} // namespace blinkwright::widgets
