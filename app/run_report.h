// What a run did, in words for the status bar and over empty strips.
#pragma once

#include "core/study/study.h"

#include <QString>

namespace blinkwright::app {

/// "6 flashes, 812 steps, 0.4 ms", and why the run ended early where it did.
/// @param took_ms time that the whole study took [ms].
QString runReport(const study::Study& study, double took_ms);

/// Why there are no curves to show; empty where there are.
QString whyNoCurves(const study::Study& study);

} // namespace blinkwright::app
