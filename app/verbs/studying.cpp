#include "app/verbs/studying.h"

#include "app/circuit_loading.h"
#include "core/devices/board.h"

#include <ostream>

namespace blinkwright::app::verbs {

namespace {

// The limits that RunSettings and RunRequest state.
constexpr int mostFlashes = 10000;
constexpr double finestAccuracy = 1e-10;
constexpr double coarsestAccuracy = 1e-2;

Result<circuit::PartSet> readSet(const Arguments& arguments) {
    const std::string text = arguments.last("--set").value_or("A");
    if (text == "A") return circuit::PartSet::A;
    if (text == "B") return circuit::PartSet::B;
    return Fault{"--set", "must be A or B, got '" + text + "'"};
}

Result<circuit::Begin> readBegin(const std::string& text) {
    if (text == "power-on") return circuit::Begin::powerOn;
    if (text == "settled") return circuit::Begin::settled;
    return Fault{"--begin", "must be power-on or settled, got '" + text + "'"};
}

Result<void> putValue(circuit::Circuit& circuit, circuit::PartSet set, const std::string& text) {
    const std::string place = "--value " + text;
    const Result<devices::ValueOverride> value = devices::parseOverride(circuit, text);
    if (!value) return Fault{place, value.fault().text};
    if (Result<void> put = devices::applyOverride(circuit, set, value.value()); !put)
        return Fault{place, put.fault().text};
    return {};
}

} // namespace

Result<study::StudyRequest> readRun(const Arguments& arguments, const circuit::RunSettings& run) {
    study::StudyRequest request;
    request.flashes = run.flashes;
    request.begin = run.begin;
    if (const auto text = arguments.last("--flashes")) {
        const Result<int> flashes = readWhole("--flashes", *text, 1, mostFlashes);
        if (!flashes) return flashes.fault();
        request.flashes = flashes.value();
    }
    if (const auto text = arguments.last("--begin")) {
        const Result<circuit::Begin> begin = readBegin(*text);
        if (!begin) return begin.fault();
        request.begin = begin.value();
    }
    if (const auto text = arguments.last("--accuracy")) {
        const Result<double> accuracy = readNumber("--accuracy", *text, finestAccuracy, coarsestAccuracy);
        if (!accuracy) return accuracy.fault();
        request.accuracy = accuracy.value();
    }
    return request;
}

std::vector<Option> commonOptions() {
    return {{"--set", "A|B", "which of the two sets of values (A)"},
            {"--value", "REF.KEY=TEXT",
             "a value on top, e.g. R1.resistance=4k7 or U1.device.delay=0; may be repeated", true}};
}

std::vector<Option> runOptions() {
    std::vector<Option> options = commonOptions();
    options.push_back(
        {"--flashes", "N", "how many flashes of the first timer, 1 to 10000 (as the file says)"});
    options.push_back({"--begin", "power-on|settled", "where the run begins (as the file says)"});
    options.push_back({"--accuracy", "E",
                       "worst relative error of switching times and lamp charges, 1e-10 to 0.01 (1e-6)"});
    return options;
}

Result<Loaded> loaded(const Arguments& arguments) {
    const Result<circuit::PartSet> set = readSet(arguments);
    if (!set) return set.fault();
    Result<circuit::Circuit> circuit = loadCircuit(arguments.operands.front());
    if (!circuit) return circuit.fault();
    for (const std::string& text : arguments.all("--value"))
        if (Result<void> put = putValue(circuit.value(), set.value(), text); !put) return put.fault();
    return Loaded{std::move(circuit).value(), set.value()};
}

Result<devices::Board> boardOf(const Arguments& arguments, const Loaded& loaded) {
    Result<devices::Board> board = devices::makeBoard(loaded.circuit, loaded.set);
    if (!board) return Fault{arguments.operands.front(), board.fault().message()};
    return board;
}

void sayWhyNot(std::ostream& err, std::string_view verb, const Arguments& arguments,
               const study::Readings& readings) {
    err << "blinkwright " << verb << ": " << arguments.operands.front() << ": "
        << study::name(readings.verdict) << ".";
    for (const std::string& reason : readings.reasons) err << " " << reason;
    err << "\n";
}

Result<Studied> studied(const Arguments& arguments) {
    Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();
    const Result<study::StudyRequest> request = readRun(arguments, file.value().circuit.run);
    if (!request) return request.fault();
    auto& [circuit, set] = file.value();
    Result<study::Study> study = study::study(circuit, set, request.value());
    if (!study) return Fault{arguments.operands.front(), study.fault().message()};
    return Studied{std::move(circuit), set, std::move(study).value()};
}

} // namespace blinkwright::app::verbs
