#include "app/verbs/all.h"
#include "app/verbs/studying.h"
#include "core/io/study_reports.h"

#include <charconv>
#include <limits>
#include <ostream>

namespace blinkwright::app::verbs {

namespace {

constexpr int mostBoards = 10'000'000;

Result<std::uint64_t> readSeed(const std::string& text) {
    std::uint64_t seed = 0;
    const char* end = text.data() + text.size();
    const auto [at, error] = std::from_chars(text.data(), end, seed);
    if (error != std::errc() || at != end)
        return Fault{"--seed", "must be a whole number from 0 to " +
                                   std::to_string(std::numeric_limits<std::uint64_t>::max()) + ", got '" +
                                   text + "'"};
    return seed;
}

Result<Spread> readDraw(const std::string& text) {
    if (text == "uniform") return Spread::uniform;
    if (text == "normal") return Spread::normal;
    if (text == "triangular") return Spread::triangular;
    return Fault{"--draw", "must be uniform, normal or triangular, got '" + text + "'"};
}

Result<ExitCode> runSpread(const Arguments& arguments, std::ostream& out, std::ostream&) {
    study::SpreadRequest request;
    if (const auto text = arguments.last("--boards")) {
        const Result<int> boards = readWhole("--boards", *text, 2, mostBoards);
        if (!boards) return boards.fault();
        request.boards = boards.value();
    }
    if (const auto text = arguments.last("--seed")) {
        const Result<std::uint64_t> seed = readSeed(*text);
        if (!seed) return seed.fault();
        request.seed = seed.value();
    }
    if (const auto text = arguments.last("--draw")) {
        const Result<Spread> draw = readDraw(*text);
        if (!draw) return draw.fault();
        request.draw = draw.value();
    }
    const Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();
    const Result<study::SpreadOutcome> spread =
        study::spread(file.value().circuit, file.value().set, request);
    if (!spread) return Fault{arguments.operands.front(), spread.fault().message()};
    out << io::spreadJson(spread.value());
    return spread.value().rate_Hz ? done : answerIsNo;
}

std::vector<Option> options() {
    std::vector<Option> all = commonOptions();
    all.push_back({"--boards", "N", "how many boards, 2 to 10000000 (10000)"});
    all.push_back({"--seed", "S", "of the random numbers (1); the same seed gives the same boards"});
    all.push_back({"--draw", "uniform|normal|triangular",
                   "how values lie within tolerances (uniform); normal has three sigma at the limit"});
    return all;
}

} // namespace

const Verb& spreadVerb() {
    static const Verb verb{
        "spread",
        "prints as JSON how tolerances spread rate, duty cycle and lamp currents",
        "Mean, standard deviation, percentiles, the true worst case, and each part's share in\n"
        "the variance of the rate. Exit code 1 where the nominal circuit does not blink.",
        {"FILE"},
        options(),
        runSpread};
    return verb;
}

} // namespace blinkwright::app::verbs
