#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/io/study_reports.h"

#include <algorithm>
#include <ostream>

namespace blinkwright::app::verbs {

namespace {

constexpr int mostPoints = 10000;

/// One end of the range, written as a value of the part.
Result<double> readEnd(const Arguments& arguments, std::string_view option, const circuit::Circuit& circuit,
                       const std::string& over) {
    const auto text = arguments.last(option);
    if (!text) return Fault{std::string(option), "is missing"};
    const auto value = devices::parseOverride(circuit, over + "=" + *text);
    if (!value) return Fault{std::string(option) + " " + *text, value.fault().message()};
    const double* number = std::get_if<double>(&value.value().value);
    if (!number) return Fault{"--over " + over, "is no number that could move over a range"};
    return *number;
}

Result<ExitCode> runTrend(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const auto over = arguments.last("--over");
    if (!over) return Fault{"--over", "is missing"};
    const auto dot = over->find('.');
    if (dot == std::string::npos) return Fault{"--over " + *over, "must look like R1.resistance"};
    const Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();

    study::TrendRequest request;
    request.ref = over->substr(0, dot);
    request.key = over->substr(dot + 1);
    const Result<double> from = readEnd(arguments, "--from", file.value().circuit, *over);
    if (!from) return from.fault();
    const Result<double> to = readEnd(arguments, "--to", file.value().circuit, *over);
    if (!to) return to.fault();
    request.from = from.value();
    request.to = to.value();
    request.even = arguments.has("--even");
    if (const auto text = arguments.last("--points")) {
        const Result<int> points = readWhole("--points", *text, 2, mostPoints);
        if (!points) return points.fault();
        request.points = points.value();
    }
    const Result<study::Trend> trend = study::trend(file.value().circuit, file.value().set, request);
    if (!trend) return Fault{"--over " + *over, trend.fault().text};
    out << io::trendCsv(trend.value());
    if (std::ranges::any_of(trend.value().points,
                            [](const auto& point) { return point.settled.has_value(); }))
        return done;
    err << "blinkwright trend: " << arguments.operands.front() << ": blinks nowhere in this range.\n";
    return answerIsNo;
}

std::vector<Option> options() {
    std::vector<Option> all = commonOptions();
    all.push_back({"--over", "REF.KEY", "the value that moves, e.g. R1.resistance"});
    all.push_back({"--from", "TEXT", "where it begins, e.g. 1k"});
    all.push_back({"--to", "TEXT", "where it ends, e.g. 1M"});
    all.push_back({"--points", "N", "how many points, 2 to 10000 (40)"});
    all.push_back({"--even", "", "even steps instead of logarithmic ones"});
    return all;
}

} // namespace

const Verb& trendVerb() {
    static const Verb verb{
        "trend",
        "prints the settled figures against one value as CSV",
        "Where the circuit does not blink, cells are empty. Exit code 1 where it blinks nowhere.",
        {"FILE"},
        options(),
        runTrend};
    return verb;
}

} // namespace blinkwright::app::verbs
