#include "app/rooms/trend_question.h"

#include "core/circuit/edit.h"
#include "core/devices/board.h"
#include "widgets/text/words.h"

namespace blinkwright::app {

using widgets::Words;

using circuit::PartSet;

namespace {

/// The circuit with its present value put aside.
circuit::Circuit without(const TrendQuestion& question) {
    circuit::Circuit plain = question.circuit;
    for (const PartSet set : {PartSet::A, PartSet::B})
        (void)circuit::apply(plain, circuit::setValue(plain, set, question.value.which.part,
                                                      question.value.which.key, question.range.from));
    return plain;
}

} // namespace

bool TrendQuestion::hasCurvesOf(const TrendQuestion& other) const {
    return value == other.value && range == other.range && sets == other.sets &&
           without(*this).sameAs(without(other));
}

double presentOf(const circuit::Circuit& circuit, PartSet set, const circuit::ValueRef& which) {
    const auto value = devices::effectiveValue(circuit, set, which.part, which.key);
    const double* number = value ? std::get_if<double>(&*value) : nullptr;
    return number ? *number : 0;
}

TrendAnswer answerTrend(const TrendQuestion& question, const std::vector<widgets::TrendLine>& curves,
                        const std::atomic<bool>& cancel) {
    TrendAnswer answer;
    study::TrendRequest request;
    request.ref = question.value.ref;
    request.key = question.value.which.key;
    request.from = question.range.from;
    request.to = question.range.to;
    request.even = question.range.even;
    if (request.even) request.points = 80; // a rate bends most near its smallest values
    request.cancel = &cancel;
    for (const PartSet set : question.sets) {
        widgets::TrendLine line;
        line.set = set;
        line.name = set == PartSet::A ? Words::tr("Set A") : Words::tr("Set B");
        line.present = presentOf(question.circuit, set, question.value.which);
        if (answer.lines.size() < curves.size()) {
            line.trend = curves[answer.lines.size()].trend;
        } else {
            auto found = study::trend(question.circuit, set, request);
            if (!found) {
                answer.fault = found.fault();
                return answer;
            }
            line.trend = std::make_shared<const study::Trend>(std::move(found).value());
        }
        std::vector<double> singles = question.marks;
        singles.push_back(line.present);
        auto exact = study::trendAt(question.circuit, set, request, singles);
        if (!exact) {
            answer.fault = exact.fault();
            return answer;
        }
        line.exact = std::move(exact).value();
        answer.lines.push_back(std::move(line));
    }
    return answer;
}

} // namespace blinkwright::app
