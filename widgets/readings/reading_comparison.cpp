// Two tables of readings side by side.
#include "widgets/readings/reading_rows.h"

#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

/// Runs are right to a millionth: what differs less is the same figure.
constexpr double sameWithin = 2e-6;

/// Three significant digits of a positive number, without exponent for what is ordinary here.
QString threeDigits(double value) {
    const int decimals = value > 0 ? 2 - static_cast<int>(std::floor(std::log10(value))) : 0;
    return plainNumber(value, 'f', std::clamp(decimals, 0, 12));
}

QString signOf(double value) {
    return value < 0 ? minusSign : QChar(u'+');
}

/// `+0.124 Hz (+11.0 %)`; of shares `+3.10 percentage points`, since a per cent of a share misleads.
QString againstText(const ReadingRow& row, double found) {
    const double own = *row.value;
    const double change = found - own;
    if (std::abs(change) <= sameWithin * std::max(std::abs(own), std::abs(found))) return Words::tr("none");
    if (row.isShare)
        return Words::tr("%1 percentage points").arg(signOf(change) + threeDigits(100 * std::abs(change)));
    QString units = signOf(change) + row.form(std::abs(change));
    if (own == 0) return units;
    const double percent = 100 * change / std::abs(own);
    return QStringLiteral("%1 (%2%3\u00A0%)").arg(units, signOf(percent), threeDigits(std::abs(percent)));
}

/// The rows of a table by what tells them apart.
struct Place {
    QString section, figure;
    bool operator==(const Place&) const = default;
};
std::vector<Place> placesOf(const ReadingTable& table) {
    std::vector<Place> places;
    QString section;
    for (const ReadingRow& row : table.rows) {
        if (row.heading) section = row.figure;
        places.push_back({section, row.heading ? QString() : row.figure});
    }
    return places;
}

} // namespace

void compareTables(ReadingTable& table, const ReadingTable& other, const QString& name) {
    const std::vector<Place> own = placesOf(table), theirs = placesOf(other);
    for (std::size_t k = 0; k < own.size(); ++k) {
        ReadingRow& row = table.rows[k];
        if (row.heading) continue;
        const auto at = std::find(theirs.begin(), theirs.end(), own[k]);
        if (at == theirs.end()) {
            row.second = {noValue, Words::tr("There is no such figure of %1.").arg(name)};
            row.against = row.second;
            continue;
        }
        const ReadingRow& twin = other.rows[static_cast<std::size_t>(at - theirs.begin())];
        row.second = twin.setA;
        if (row.value && twin.value)
            row.against = {againstText(row, *twin.value), {}};
        else
            row.against = {noValue, row.value ? twin.setA.why : row.setA.why};
    }
    for (std::size_t k = 0; k < theirs.size(); ++k) {
        if (std::find(own.begin(), own.end(), theirs[k]) != own.end()) continue;
        ReadingRow row = other.rows[k];
        if (!row.heading) {
            row.second = row.setA;
            row.textbook = row.setA = row.difference = row.against =
                ReadingCell{noValue, Words::tr("There is no such figure of Set A.")};
            row.value.reset();
        }
        table.rows.push_back(std::move(row));
    }
    // Two that blink are told in one line, which leaves its room to the figures.
    if (!table.rate.isEmpty() && !other.rate.isEmpty())
        table.verdict =
            Words::tr("Blinks: %1 (Set A) and %2 (%3) flashes a minute").arg(table.rate, other.rate, name);
    else
        table.verdict = Words::tr("Set A: %1\n%2: %3").arg(table.verdict, name, other.verdict);
}

void compareWithNothing(ReadingTable& table, const QString& name) {
    for (ReadingRow& row : table.rows)
        if (!row.heading)
            row.second = row.against = {noValue, Words::tr("There are no readings of %1.").arg(name)};
}

} // namespace blinkwright::widgets
