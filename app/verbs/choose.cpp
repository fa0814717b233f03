#include "core/study/choose.h"
#include "app/verbs/all.h"
#include "app/whole_file.h"
#include "core/devices/sheets.h"
#include "core/io/circuit_file.h"
#include "core/io/drawer_file.h"
#include "core/io/study_reports.h"
#include "core/study/proposal.h"
#include "core/units/engineering.h"

#include <QFile>

#include <algorithm>
#include <ostream>

namespace blinkwright::app::verbs {

namespace {

using units::Unit;

Result<double> readPositive(std::string_view option, std::string_view text, Unit unit) {
    const auto number = units::parseQuantity(text, unit);
    if (!number) return Fault{std::string(option), number.fault().text};
    if (!(number.value() > 0))
        return Fault{std::string(option), "must be greater than 0, got " + std::string(text)};
    return number.value();
}

/// `1.2`, `1.2 Hz`, `72/min` (flashes a minute) or `0.8 s` (a cycle).
Result<double> readRate(std::string_view option, std::string_view text) {
    constexpr std::string_view perMinute = "/min";
    if (text.ends_with(perMinute)) {
        const auto count = readPositive(option, text.substr(0, text.size() - perMinute.size()), Unit::none);
        if (!count) return count.fault();
        return count.value() / 60;
    }
    if (!text.ends_with('s')) return readPositive(option, text, Unit::hertz);
    const auto cycle = readPositive(option, text, Unit::second);
    if (!cycle) return cycle.fault();
    return 1 / cycle.value();
}

/// `R1=E24,R2=E24,C1=E6`
Result<void> readSeries(const std::string& text, study::Wish& wish) {
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t end = std::min(text.find(',', from), text.size());
        const std::string one = text.substr(from, end - from);
        from = end + 1;
        const auto equals = one.find('=');
        const std::string part = one.substr(0, equals);
        units::Series* series = part == "R1"   ? &wish.r1
                                : part == "R2" ? &wish.r2
                                : part == "C1" ? &wish.c1
                                               : nullptr;
        const auto named =
            equals == std::string::npos ? std::nullopt : units::seriesNamed(one.substr(equals + 1));
        if (!series || !named)
            return Fault{"--series",
                         "must look like R1=E24,R2=E24,C1=E6, with E3 to E192, got '" + one + "'"};
        *series = *named;
    }
    return {};
}

Fault notAColour(const std::string& given) {
    std::string known;
    for (const auto name : devices::lampColours()) known.append(known.empty() ? "" : ", ").append(name);
    return {"--colour", "must be of " + known + ", got '" + given + "'"};
}

Result<void> readColours(const std::string& text, study::Wish& wish) {
    const auto comma = text.find(',');
    wish.colours = {text.substr(0, comma), comma == std::string::npos ? text : text.substr(comma + 1)};
    for (const std::string& colour : wish.colours)
        if (!devices::lampSheet(colour)) return notAColour(colour);
    return {};
}

Result<void> readRange(const Arguments& arguments, study::Wish& wish) {
    const auto text = arguments.last("--rate-to");
    if (!text) return {};
    const auto rate = readRate("--rate-to", *text);
    if (!rate) return rate.fault();
    if (rate.value() == wish.rate_Hz) return Fault{"--rate-to", "must be another rate than --rate"};
    wish.rateTo_Hz = rate.value();
    return {};
}

/// What is asked of two lamps beside each other.
Result<void> readPair(const Arguments& arguments, study::Wish& wish) {
    if (const auto text = arguments.last("--stay-lit")) {
        const auto stay = readPositive("--stay-lit", *text, Unit::second);
        if (!stay) return stay.fault();
        wish.stayLit_s = stay.value();
    }
    wish.equalBrightness = arguments.has("--equal-brightness");
    const auto text = arguments.last("--intensity");
    if (!text) return {};
    const auto comma = text->find(',');
    if (comma == std::string::npos)
        return Fault{"--intensity", "must be two, as 12m,36m, got '" + *text + "'"};
    for (const std::string& one : {text->substr(0, comma), text->substr(comma + 1)}) {
        const auto intensity = readPositive("--intensity", one, Unit::candela);
        if (!intensity) return intensity.fault();
        wish.intensity_cd.push_back(intensity.value());
    }
    return {};
}

Result<study::Wish> readWish(const Arguments& arguments) {
    study::Wish wish;
    for (const char* needed : {"--rate", "--lit", "--supply"})
        if (!arguments.has(needed)) return Fault{needed, "is missing"};
    const auto rate = readRate("--rate", *arguments.last("--rate"));
    if (!rate) return rate.fault();
    wish.rate_Hz = rate.value();
    const auto lit = readPositive("--lit", *arguments.last("--lit"), Unit::none);
    if (!lit) return lit.fault();
    if (lit.value() >= 1) return Fault{"--lit", "must be less than 1, got " + *arguments.last("--lit")};
    wish.lit = lit.value();
    const auto supply = readPositive("--supply", *arguments.last("--supply"), Unit::volt);
    if (!supply) return supply.fault();
    wish.supply_V = supply.value();
    if (const auto text = arguments.last("--lamp-current")) {
        const auto current = readPositive("--lamp-current", *text, Unit::ampere);
        if (!current) return current.fault();
        wish.lampCurrent_A = current.value();
    }
    if (auto read = readRange(arguments, wish); !read) return read.fault();
    if (auto read = readPair(arguments, wish); !read) return read.fault();
    if (const auto text = arguments.last("--lamp-to")) {
        if (*text == "ground")
            wish.lampTo = study::LampTo::ground;
        else if (*text == "rail")
            wish.lampTo = study::LampTo::rail;
        else if (*text != "either")
            return Fault{"--lamp-to", "must be ground, rail or either, got '" + *text + "'"};
    }
    if (const auto text = arguments.last("--family")) {
        wish.cmos = *text == "cmos";
        if (!wish.cmos && *text != "bipolar")
            return Fault{"--family", "must be bipolar or cmos, got '" + *text + "'"};
    }
    if (const auto text = arguments.last("--lamps")) {
        const auto lamps = readWhole("--lamps", *text, 1, 2);
        if (!lamps) return lamps.fault();
        wish.lamps = lamps.value();
    }
    if (const auto text = arguments.last("--colour"))
        if (auto read = readColours(*text, wish); !read) return read.fault();
    if (const auto text = arguments.last("--series"))
        if (auto read = readSeries(*text, wish); !read) return read.fault();
    if (const auto path = arguments.last("--drawer")) {
        const auto bytes = io::readBytes(*path, io::maxDrawerBytes);
        if (!bytes) return bytes.fault().place.empty() ? Fault{*path, bytes.fault().text} : bytes.fault();
        auto drawer = io::readDrawer(bytes.value());
        if (!drawer) return Fault{*path, drawer.fault().message()};
        wish.drawer = std::move(drawer).value();
    }
    return wish;
}

Result<void> save(const std::string& path, const circuit::Circuit& circuit) {
    return writeWhole(QFile::decodeName(QByteArray::fromStdString(path)),
                      QByteArray::fromStdString(io::writeCircuit(circuit)));
}

Result<ExitCode> runChoose(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<study::Wish> wish = readWish(arguments);
    if (!wish) return wish.fault();
    const study::Choices choices = study::choose(wish.value(), {});
    out << io::choicesJson(wish.value(), choices);
    if (choices.unmet) {
        err << "blinkwright choose: " << choices.unmet->reason << "\n";
        return answerIsNo;
    }
    if (const auto path = arguments.last("--out")) {
        circuit::Circuit circuit = study::proposedCircuit(wish.value(), choices.best.front());
        circuit.title = "Blinker of " + units::formatQuantity(wish.value().rate_Hz, Unit::hertz);
        if (auto saved = save(*path, circuit); !saved) return saved.fault();
    }
    return done;
}

} // namespace

const Verb& chooseVerb() {
    static const Verb verb{
        "choose",
        "proposes part values for a wish, as JSON, best first",
        "All combinations of preferred values are screened by formula, the best are simulated and ranked.\n"
        "Exit code 1 where the wish cannot be met; the answer says which limit forbids it and what is "
        "nearest.",
        {},
        {{"--rate", "HZ", "flashes a second; also 72/min, or 0.8s a cycle"},
         {"--lit", "SHARE", "lit time of the first lamp over the cycle, between 0 and 1"},
         {"--supply", "V", "no-load voltage"},
         {"--rate-to", "HZ", "the other end of a range, which a variable resistor sets"},
         {"--lamp-to", "ground|rail|either", "where the lamp of one hangs (either)"},
         {"--family", "bipolar|cmos", "of the timer (bipolar)"},
         {"--lamps", "1|2", "two lamps take turns (1)"},
         {"--stay-lit", "S", "how long each of two lamps stays visibly lit in its turn"},
         {"--equal-brightness", "", "of two lamps, instead of equal currents"},
         {"--intensity", "CD,CD", "of two lamps at one and the same current"},
         {"--lamp-current", "A", "of each lamp while lit (0.01)"},
         {"--colour", "NAME[,NAME]", "of the lamps (red,green)"},
         {"--series", "R1=E24,R2=E24,C1=E6", "preferred values, E3 to E192"},
         {"--drawer", "FILE.csv",
          "values come from here: kind,value,tolerance,rating,quantity; kinds are resistor, variable, "
          "capacitor"},
         {"--out", "FILE.blinkwright", "writes the best as a circuit"}},
        runChoose};
    return verb;
}

} // namespace blinkwright::app::verbs
