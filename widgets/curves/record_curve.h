// A record of the real board, laid over the curves: drawn, never copied.
//
//   RecordCurves records{{measurement, *study::recordShift(record, curves, true)}};
//   view.setRecords(records);
#pragma once

#include "core/circuit/measurement.h"

#include <memory>
#include <vector>

namespace blinkwright::widgets {

struct RecordCurve {
    std::shared_ptr<const circuit::Measurement> measurement; ///< of a record
    double shift_s = 0; ///< where the record's time 0 stands on the time axis

    const circuit::Record& record() const { return std::get<circuit::Record>(measurement->what); }
    /// Null where the record has no such trace.
    const std::vector<double>* values(circuit::TraceOf of) const {
        for (const circuit::Trace& trace : record().traces)
            if (trace.of == of) return &trace.values_V;
        return nullptr;
    }
    bool operator==(const RecordCurve&) const = default; ///< the same measurement, not an equal one
};
using RecordCurves = std::vector<RecordCurve>;

} // namespace blinkwright::widgets
