// Keeps the medians of a benchmark run's repetitions, for figures that are ratios of two of them.
//
//   Medians medians;
//   benchmark::RunSpecifiedBenchmarks(&medians);
//   medians.of("wait") / medians.of("solve");
#pragma once

#include <benchmark/benchmark.h>

#include <map>
#include <string>
#include <vector>

namespace blinkwright {

class Medians : public benchmark::ConsoleReporter {
  public:
    Medians() : ConsoleReporter(OO_Tabular) {}
    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs)
            if (run.aggregate_name == "median")
                m_medians[run.run_name.function_name] = run.GetAdjustedRealTime();
        ConsoleReporter::ReportRuns(runs);
    }
    double of(const std::string& name) const { return m_medians.at(name); }

  private:
    std::map<std::string, double> m_medians;
};

} // namespace blinkwright
