#include "core/study/symptom_words.h"

#include "core/base/wording.h"
#include "core/study/expected_readings.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr std::size_t mostLabels = 3, mostReadings = 4, mostInText = 8;
constexpr double leastInText = 0.005, plain = 0.95;

double valueOf(const FaultLibrary& library, const Suspect& suspect, const Telling& telling) {
    return library.cases[suspect.faults.front()].behaviour.readings[telling.place].of(telling.quantity);
}
std::string percent(double share) {
    const long whole = std::lround(100 * share);
    return whole < 1 ? wording::inWords("under 1 %") : std::to_string(whole) + " %";
}

} // namespace

std::string labelOf(const FaultLibrary& library, const Suspect& suspect) {
    std::string text;
    for (std::size_t k = 0; k < suspect.faults.size() && k < mostLabels; ++k) {
        const std::string& label = library.faults[suspect.faults[k]].label;
        text = k > 0 ? wording::inWords("%1, or %2", text, label) : label;
    }
    if (suspect.faults.size() > mostLabels)
        text = wording::inWords("%1, or %2 more", text, suspect.faults.size() - mostLabels);
    return text;
}

std::string nextWords(const FaultLibrary& library, const Diagnosis& diagnosis) {
    if (diagnosis.suspects.size() < 2) return {};
    if (diagnosis.suspects.front().share > plain)
        return wording::inWords("That is plain enough to act on: mend the first one and look again.");
    if (!diagnosis.next)
        return wording::inWords(
            "No reading at these places tells the first ones apart: look at the parts and joints "
            "themselves.");
    const Telling& next = *diagnosis.next;
    std::string text = wording::inWords("Measure next: %1, %2.", library.places[next.place].words,
                                        wording::inWords(name(next.quantity)));
    for (std::size_t k = 0; k < std::min(mostReadings, diagnosis.suspects.size()); ++k) {
        const Suspect& suspect = diagnosis.suspects[k];
        if (k > 1 && suspect.share < 0.02) break;
        const std::string reading = readingText(library.places[next.place], valueOf(library, suspect, next));
        const std::string& label = library.faults[suspect.faults.front()].label;
        if (k == 0)
            text.append(" ").append(wording::inWords("About %1 would mean %2", reading, label));
        else
            text.append("; ").append(reading).append(": ").append(label);
    }
    return text + ".";
}

std::string tellWords(const FaultLibrary& library, const Suspect& suspect) {
    if (!suspect.tell) return {};
    const ReadingPlace& place = library.places[suspect.tell->place];
    return wording::inWords("To tell it from the others: %1, %2, would read about %3.", place.words,
                            wording::inWords(name(suspect.tell->quantity)),
                            readingText(place, valueOf(library, suspect, *suspect.tell)));
}

std::string searchLimits() {
    return wording::inWords(
        "Each single fault was simulated; two at a time, and parts that fail in odd ways, were not. Shares "
        "compare these faults with one another, no more.");
}

std::string symptomsText(const FaultLibrary& library, const Diagnosis& diagnosis) {
    std::string text;
    for (std::size_t k = 0; k < std::min(mostInText, diagnosis.suspects.size()); ++k) {
        const Suspect& suspect = diagnosis.suspects[k];
        if (k > 0 && suspect.share < leastInText) break;
        text += std::to_string(k + 1) + ". " + percent(suspect.share) + "\n";
        for (const std::size_t fault : suspect.faults)
            text += "   " + library.faults[fault].sentence + " " + library.faults[fault].remedy + "\n";
        if (const std::string tell = tellWords(library, suspect); !tell.empty()) text += "   " + tell + "\n";
    }
    if (const std::string next = nextWords(library, diagnosis); !next.empty()) text += next + "\n";
    return text + searchLimits() + "\n";
}

} // namespace blinkwright::study
