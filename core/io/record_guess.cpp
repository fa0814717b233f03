// The guess at a layout: which separator and decimal mark make the longest table of numbers, and which of its
// columns are what.
#include "core/base/wording.h"
#include "core/io/record_layout.h"
#include "core/io/record_numbers.h"
#include "core/io/record_words.h"

#include <algorithm>

namespace blinkwright::io {

using circuit::TraceOf;

namespace {

constexpr std::size_t mostColumns = 64;
/// Each column of text beside the numbers makes a reading that much less likely: from trials, no source.
constexpr double doubtPerText = 0.3;
/// What a run of rows needs to be the beginning of the table, where there are so many.
constexpr std::size_t rowsForStart = 3;

struct Row {
    std::size_t line = 0; ///< from 0, blank lines counted
    std::string kinds;    ///< a letter a cell: number, gap, text
    std::vector<double> numbers;
};

bool alike(const Row& a, const Row& b) {
    return std::ranges::equal(a.kinds, b.kinds, [](char x, char y) { return (x == 't') == (y == 't'); });
}
bool hasNumber(const Row& row) {
    return row.kinds.find('n') != row.kinds.npos;
}

/// A text seen as a table by one separator and one decimal mark.
struct Table {
    Separator separator{};
    char mark = '.';
    std::vector<Row> rows; ///< of the longest table in it
    double score = 0;
    std::size_t columns() const { return rows.front().kinds.size(); }
    bool isNumeric(std::size_t column) const {
        return std::ranges::any_of(rows, [&](const Row& row) { return row.kinds[column] == 'n'; });
    }
};

Table tableOf(const std::vector<std::string_view>& lines, Separator separator, char mark) {
    Table table{separator, mark, {}, 0};
    std::vector<Row> all;
    for (std::size_t k = 0; k < lines.size(); ++k) {
        if (trimmed(lines[k]).empty()) continue;
        Row row{k, {}, {}};
        for (TextCells cells(lines[k], charOf(separator)); cells.next() && row.kinds.size() < mostColumns;) {
            double value = 0;
            const Cell cell = scanNumber(cells.cell(), mark, value);
            row.kinds += cell == Cell::number ? 'n' : cell == Cell::gap ? 'g' : 't';
            row.numbers.push_back(cell == Cell::number ? value : NAN);
        }
        all.push_back(std::move(row));
    }
    // The longest run of rows that are alike says what a row is; the table begins with the first such run
    // that is not a chance pair in the preamble.
    std::size_t best = 0, bestAt = 0;
    const auto runFrom = [&](std::size_t at) {
        std::size_t end = at;
        while (end < all.size() && hasNumber(all[end]) && alike(all[at], all[end])) ++end;
        return end - at;
    };
    std::vector<std::pair<std::size_t, std::size_t>> runs; // begin, length
    for (std::size_t at = 0; at < all.size();) {
        const std::size_t length = runFrom(at);
        if (length > 0) runs.push_back({at, length});
        if (length > best) {
            best = length;
            bestAt = at;
        }
        at += std::max<std::size_t>(length, 1);
    }
    if (best < 2) return table;
    for (const auto& [at, length] : runs)
        if (alike(all[at], all[bestAt]) && length >= std::min(best, rowsForStart)) {
            bestAt = at;
            break;
        }
    const Row first = all[bestAt];
    for (std::size_t k = bestAt; k < all.size(); ++k)
        if (hasNumber(all[k]) && alike(all[k], first)) table.rows.push_back(std::move(all[k]));
    const auto texts = std::ranges::count(table.rows.front().kinds, 't');
    table.score =
        static_cast<double>(table.rows.size()) * std::max(0.0, 1 - doubtPerText * static_cast<double>(texts));
    return table;
}

struct TimeShape {
    bool ascends = false; ///< never down, and up in most rows
    bool counts = false;  ///< by 1 from row to row
};
TimeShape shapeOf(const Table& table, std::size_t column) {
    std::size_t up = 0, down = 0, byOne = 0, pairs = 0;
    double last = NAN;
    for (const Row& row : table.rows) {
        const double now = row.numbers[column];
        if (std::isfinite(now) && std::isfinite(last)) {
            ++pairs;
            up += now > last;
            down += now < last;
            byOne += now == last + 1;
        }
        if (std::isfinite(now)) last = now;
    }
    return {pairs > 0 && down == 0 && 2 * up >= pairs, pairs > 0 && byOne == pairs};
}

/// The header's cells, as many as there are columns; empty where the line above the table is no header.
class Headers {
  public:
    Headers(const std::vector<std::string_view>& lines, const Table& table) : m_table(table) {
        std::size_t at = table.rows.front().line;
        auto cells = cellsAbove(lines, at);
        m_preamble = table.rows.front().line;
        if (cells.empty()) return;
        m_preamble = at;
        m_lines = 1;
        if (isOfUnits(cells)) {
            std::size_t above = at;
            if (auto namesAbove = cellsAbove(lines, above); !namesAbove.empty() && above + 1 == at) {
                for (std::size_t k = 0; k < cells.size(); ++k)
                    if (!cells[k].empty()) namesAbove[k] += " [" + bare(cells[k]) + "]";
                cells = std::move(namesAbove);
                m_preamble = above;
                m_lines = 2;
            }
        }
        m_names = std::move(cells);
    }
    const std::vector<std::string>& names() const { return m_names; }
    std::size_t preamble() const { return m_preamble; }
    std::size_t lines() const { return m_lines; }

  private:
    static std::string bare(const std::string& unit) {
        const auto from = unit.find_first_not_of("[( "), end = unit.find_last_not_of("]) ");
        return from == unit.npos ? std::string() : unit.substr(from, end + 1 - from);
    }
    static bool isOfUnits(const std::vector<std::string>& cells) {
        return std::ranges::all_of(
            cells, [](const std::string& cell) { return cell.empty() || headerWords(cell).isUnitAlone; });
    }
    /// Of the line above line `at`, blank ones passed over, if it may be a header; `at` is its line then.
    std::vector<std::string> cellsAbove(const std::vector<std::string_view>& lines, std::size_t& at) const {
        while (at > 0 && trimmed(lines[at - 1]).empty()) --at;
        if (at == 0) return {};
        --at;
        if (stepStatedIn(lines[at], m_table.separator != Separator::comma)) return {};
        std::vector<std::string> cells;
        bool anyText = false;
        for (TextCells each(lines[at], charOf(m_table.separator));
             each.next() && cells.size() < 2 * mostColumns;) {
            std::string text = each.text();
            double value = 0;
            anyText |= scanNumber(text, m_table.mark, value) == Cell::text;
            const bool belongs = m_table.separator == Separator::blanks && !cells.empty() &&
                                 (text.starts_with('[') || text.starts_with('('));
            if (belongs)
                cells.back() += ' ' + text; // a unit behind its name
            else
                cells.push_back(std::move(text));
        }
        const std::size_t wanted = m_table.columns();
        if (cells.size() == wanted + 1 && cells.back().empty()) cells.pop_back();
        if (cells.size() + 1 == wanted && wanted > 2) cells.emplace_back(); // rows end with a separator
        if (!anyText || cells.size() != wanted) return {};
        const bool remark = wanted == 1 && cells.front().find_first_of(":=") != std::string::npos;
        return remark ? std::vector<std::string>() : cells;
    }

    const Table& m_table;
    std::vector<std::string> m_names;
    std::size_t m_lines = 0, m_preamble = 0;
};

/// Which columns of a table are what.
class Columns {
  public:
    Columns(const Table& table, const std::vector<std::string>& names, std::optional<double> step)
        : m_table(table), m_step(step) {
        for (std::size_t c = 0; c < table.columns(); ++c)
            m_words.push_back(c < names.size() ? headerWords(names[c]) : HeaderWords{});
    }
    /// The time column and the voltages; false where there is no time or no voltage.
    bool assign(RecordLayout& layout) const {
        layout.timeColumn = timeColumn();
        if (!layout.timeColumn && !m_step) return false;
        layout.step_s = layout.timeColumn ? 0 : *m_step;
        layout.timeUnit_s = layout.timeColumn ? m_words[*layout.timeColumn].second.value_or(1) : 1;
        for (const bool sure : {true, false})
            for (std::size_t c = 0; c < m_table.columns() && layout.voltages.size() < 2; ++c)
                if (isVoltage(c, layout) && m_words[c].of.has_value() == sure) add(layout, c);
        std::ranges::sort(layout.voltages, {}, &VoltageColumn::column);
        return !layout.voltages.empty();
    }

  private:
    std::optional<std::size_t> timeColumn() const {
        std::optional<std::size_t> first;
        for (std::size_t c = 0; c < m_table.columns(); ++c)
            if (m_table.isNumeric(c) && m_words[c].isTime) return c;
        for (std::size_t c = 0; c < m_table.columns() && !first; ++c)
            if (m_table.isNumeric(c) && !m_words[c].volt && !m_words[c].of && shapeOf(m_table, c).ascends)
                first = c;
        if (!first || !m_step) return first;
        // With a step stated a column that counts is a number of samples, and a single one is no time.
        if (m_words[*first].isIndex || shapeOf(m_table, *first).counts || m_table.columns() == 1) return {};
        return first;
    }
    bool isVoltage(std::size_t c, const RecordLayout& layout) const {
        if (!m_table.isNumeric(c) || layout.timeColumn == c || m_words[c].isTime || m_words[c].isIndex)
            return false;
        if (!layout.timeColumn && m_table.columns() > 1 && shapeOf(m_table, c).counts) return false;
        return !m_words[c].isOther;
    }
    void add(RecordLayout& layout, std::size_t c) const {
        VoltageColumn column{c, m_words[c].volt.value_or(1)};
        column.named = m_words[c].of.has_value();
        const bool second = !layout.voltages.empty() && layout.voltages.front().of == TraceOf::output;
        column.of = m_words[c].of.value_or(second ? TraceOf::capacitor : TraceOf::output);
        layout.voltages.push_back(column);
    }

    const Table& m_table;
    std::optional<double> m_step;
    std::vector<HeaderWords> m_words;
};

std::vector<std::string_view> linesOf(std::string_view text) {
    std::vector<std::string_view> lines;
    for (TextLines each(text); each.next();) {
        // Of a beginning the last line may be cut; of a whole file it counts, if it is all there is.
        if (!each.ended() && text.size() >= layoutBytes) break;
        lines.push_back(each.line());
    }
    return lines;
}

} // namespace

Result<RecordLayout> guessLayout(std::string_view beginning) {
    if (beginning.starts_with("\xFF\xFE") || beginning.starts_with("\xFE\xFF"))
        return Fault{"",
                     wording::inWords("this is text of two bytes a letter (UTF-16): save it as plain text "
                                      "or UTF-8")};
    if (beginning.find('\0') != beginning.npos) return Fault{"", wording::inWords("this is no text file")};
    if (beginning.starts_with(byteOrderMark)) beginning.remove_prefix(byteOrderMark.size());
    const auto lines = linesOf(beginning);

    std::optional<RecordLayout> best;
    double bestScore = 0;
    bool anyTable = false;
    constexpr std::pair<Separator, char> candidates[] = {
        {Separator::comma, '.'},  {Separator::semicolon, '.'}, {Separator::tab, '.'},
        {Separator::blanks, '.'}, {Separator::semicolon, ','}, {Separator::tab, ','},
        {Separator::blanks, ','}, {Separator::comma, ','}};
    for (const auto& [separator, mark] : candidates) {
        const Table table = tableOf(lines, separator, mark);
        if (table.rows.empty()) continue;
        anyTable = true;
        RecordLayout layout;
        layout.separator = separator;
        layout.decimalMark = mark;
        const Headers headers(lines, table);
        layout.preambleLines = headers.preamble();
        layout.headerLines = headers.lines();
        layout.columns = headers.names();
        layout.columns.resize(table.columns());
        std::optional<double> step;
        for (std::size_t k = 0; k < headers.preamble() && !step; ++k)
            step = stepStatedIn(lines[k], separator != Separator::comma);
        if (!Columns(table, headers.names(), step).assign(layout)) continue;
        // Of two readings that explain as many rows the one with more columns explains more.
        const double score =
            table.score * (1 + 1e-3 * static_cast<double>(std::min<std::size_t>(table.columns(), 8)));
        if (score <= bestScore) continue;
        bestScore = score;
        best = std::move(layout);
    }
    if (best) return *best;
    if (!anyTable) return Fault{"", wording::inWords("there are no rows of numbers in its beginning")};
    return Fault{"",
                 wording::inWords("neither a column of times nor a time step above the numbers was found")};
}

} // namespace blinkwright::io
