#include "core/io/reports.h"

#include "core/base/csv.h"
#include "core/io/measured_report.h"
#include "core/io/report_text.h"
#include "core/units/engineering.h"

#include <charconv>
#include <cmath>

namespace blinkwright::io {

namespace {

Json timerJson(const study::TimerReading& timer) {
    Json json = {{"ref", timer.ref},
                 {"switchings", timer.switchings_s},
                 {"first_high", number(timer.firstHigh_s)},
                 {"settled", phaseJson(timer.settled)},
                 {"textbook", nullptr}};
    if (timer.textbook) {
        json["textbook"] = phaseJson(timer.textbook->phase);
        json["textbook"]["formula"] = timer.textbook->formula;
        json["textbook"]["rounded"] = timer.textbook->rounded;
    }
    return json;
}

Json eyeJson(const study::EyeReading& eye) {
    Json json = {{"ref", eye.ref},
                 {"look", std::string(name(eye.look))},
                 {"rhythm", std::string(name(eye.rhythm))},
                 {"rate", number(eye.rate_Hz)},
                 {"flash", number(eye.flash_s)},
                 {"mean_of_rated", number(eye.meanOfRated)},
                 {"effective_of_peak", number(eye.effectiveOfPeak)},
                 {"effective_intensity", number(eye.effective_cd)},
                 {"flicker_caution", eye.flickers},
                 {"uses", Json::array()}};
    for (std::size_t k = 0; k < eye.uses.size(); ++k) {
        const study::LightUse& use = study::lightUses()[k];
        json["uses"].push_back({{"use", std::string(use.name)},
                                {"verdict", std::string(name(eye.uses[k]))},
                                {"source", std::string(use.source)}});
    }
    return json;
}

} // namespace

std::string readingsJson(const study::Readings& readings, const std::vector<study::EyeReading>& eye,
                         const circuit::Circuit* measuredOn) {
    Json json = {
        {"format", "blinkwright-readings"}, {"version", 1}, {"verdict", std::string(name(readings.verdict))}};
    if (readings.verdict != study::Verdict::blinks || !readings.reasons.empty()) {
        json["reasons"] = readings.reasons;
        json["places"] = readings.places;
    }
    json["timers"] = Json::array();
    for (const auto& timer : readings.timers) json["timers"].push_back(timerJson(timer));
    json["lamps"] = Json::array();
    for (const auto& lamp : readings.lamps) {
        json["lamps"].push_back({{"ref", lamp.ref},
                                 {"peak", number(lamp.peak_A)},
                                 {"mean", number(lamp.mean_A)},
                                 {"rms", number(lamp.rms_A)},
                                 {"charge_per_period", number(lamp.charge_C)},
                                 {"lit_time", number(lamp.litTime_s)},
                                 {"reverse_peak", number(lamp.reversePeak_V)}});
    }
    json["supply"] = nullptr;
    if (readings.supply) {
        json["supply"] = {{"mean_current", number(readings.supply->mean_A)},
                          {"peak_current", number(readings.supply->peak_A)},
                          {"energy_per_period", number(readings.supply->energy_J)}};
    }
    json["eye"] = Json::array();
    for (const study::EyeReading& lamp : eye) json["eye"].push_back(eyeJson(lamp));
    json["parts"] = Json::array();
    for (const auto& part : readings.parts) {
        json["parts"].push_back({{"ref", part.ref},
                                 {"mean_power", number(part.meanPower_W)},
                                 {"peak_current", number(part.peakCurrent_A)},
                                 {"peak_voltage", number(part.peakVoltage_V)}});
    }
    if (measuredOn) {
        const study::MeasuredReadings measured = study::measuredReadings(*measuredOn);
        if (!measured.empty() || !measured.parts.empty())
            json["measured"] = measuredJson(measured, *measuredOn);
    }
    if (readings.overRun) json["over"] = "run";
    json["run"] = {{"accuracy", number(readings.run.accuracy)},
                   {"steps", readings.run.steps},
                   {"reason", std::string(engine::describe(readings.run.reason))}};
    return written(json);
}

std::string findingsJson(const std::vector<study::Finding>& findings) {
    Json json = {{"format", "blinkwright-findings"}, {"version", 1}, {"findings", Json::array()}};
    for (const auto& finding : findings) {
        json["findings"].push_back({{"kind", finding.kind},
                                    {"severity", std::string(name(finding.severity))},
                                    {"places", finding.places},
                                    {"text", finding.text},
                                    {"remedy", finding.remedy},
                                    {"number", number(finding.number)},
                                    {"limit", number(finding.limit)},
                                    {"source", finding.source}});
    }
    return written(json);
}

namespace {

/// One run's columns of a table.
class CurvesColumns {
  public:
    CurvesColumns(const engine::Curves& curves, std::string before)
        : m_curves(curves), m_before(std::move(before)) {}

    std::size_t rows() const { return m_curves.time_s.size(); }
    void addHeads(std::string& csv) const {
        csv += csvField(m_before + "time [s]") + ',' + csvField(m_before + "output [V]") + ',' +
               csvField(m_before + "capacitor [V]");
        for (const auto& lamp : m_curves.lamps) csv += ',' + csvField(m_before + lamp.ref + " current [A]");
    }
    void addRow(std::string& csv, std::size_t k) const {
        const bool there = k < rows();
        if (there) csv += units::shortest(m_curves.time_s[k]);
        add(csv, there, m_curves.output_V, k);
        add(csv, there, m_curves.capacitor_V, k);
        for (const auto& lamp : m_curves.lamps) add(csv, there, lamp.current_A, k);
    }

  private:
    // Nine digits tell more than any instrument; a time keeps all, so that no two moments fall together.
    static void add(std::string& csv, bool there, const std::vector<double>& values, std::size_t k) {
        csv += ',';
        if (!there || !std::isfinite(values[k])) return;
        char digits[32];
        const auto end =
            std::to_chars(digits, digits + sizeof digits, values[k], std::chars_format::general, 9).ptr;
        csv.append(digits, end);
    }
    const engine::Curves& m_curves;
    std::string m_before;
};

std::string csvOf(const std::vector<CurvesColumns>& runs) {
    std::string csv;
    std::size_t rows = 0;
    for (const CurvesColumns& run : runs) {
        if (&run != runs.data()) csv += ',';
        run.addHeads(csv);
        rows = std::max(rows, run.rows());
    }
    csv += "\r\n";
    for (std::size_t k = 0; k < rows; ++k) {
        for (const CurvesColumns& run : runs) {
            if (&run != runs.data()) csv += ',';
            run.addRow(csv, k);
        }
        csv += "\r\n";
    }
    return csv;
}

} // namespace

std::string curvesCsv(const engine::Curves& curves) {
    return csvOf({{curves, ""}});
}

std::string curvesCsv(const engine::Curves& curves, const engine::Curves& second,
                      const std::string& secondName) {
    return csvOf({{curves, ""}, {second, secondName + " "}});
}

} // namespace blinkwright::io
