#include "core/io/record_file.h"

#include "core/base/wording.h"
#include "core/io/open_file.h"
#include "core/io/record_numbers.h"
#include "core/study/record_reduction.h"
#include "core/units/decimal.h"

#include <array>
#include <cassert>
#include <filesystem>

namespace blinkwright::io {

using study::RawRecord;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t mostBlockBytes = 1u << 20;
constexpr std::size_t longestLine = 64u << 10;
/// No instrument means more than this many volts or seconds: beyond it, sums of squares might overflow.
constexpr double mostVolts = 1e9, mostSeconds = 1e12;
constexpr std::size_t shownBytes = 24;
/// Two moments that are the same but for their last bits, relative: no step back.
constexpr double rounding = 1e-12;

std::string lineText(std::size_t line) {
    return wording::inWords("line %1", line);
}
Fault cancelled() {
    return {"", wording::inWords("cancelled")};
}
Fault tooLarge(const std::string& path) {
    return {path, wording::inWords("larger than %1 MiB, which is not supported", maxRecordBytes >> 20)};
}

/// Puts the rows of a table into the columns of a record.
class RowReader {
  public:
    RowReader(const RecordLayout& layout, RawRecord& raw)
        : m_layout(layout), m_raw(raw), m_separator(charOf(layout.separator)) {
        if (layout.timeColumn) m_wanted.push_back({*layout.timeColumn, layout.timeUnit_s, mostSeconds});
        for (const VoltageColumn& column : layout.voltages) {
            m_wanted.push_back({column.column, column.unit_V, mostVolts});
            m_raw.traces.push_back({column.of, column.named, {}});
            m_last = std::max(m_last, column.column);
        }
        if (layout.timeColumn) m_last = std::max(m_last, *layout.timeColumn);
    }
    void reserve(std::size_t rows) {
        m_raw.time_s.reserve(rows);
        for (study::RawTrace& trace : m_raw.traces) trace.values_V.reserve(rows);
    }

    /// @param line from 1. @param cut the line may not be all there.
    bool take(std::string_view text, std::size_t line, bool cut) {
        if (text.find_first_not_of(blanks) == text.npos) return true;
        ++m_rows;
        std::array<std::string_view, 3> cells;
        std::array<double, 3> values{};
        std::size_t column = 0;
        TextCells each(text, m_separator);
        for (; column <= m_last && each.next(); ++column)
            for (std::size_t w = 0; w < m_wanted.size(); ++w)
                if (m_wanted[w].column == column) cells[w] = each.cell();
        for (std::size_t w = 0; w < m_wanted.size(); ++w) {
            const Wanted& wanted = m_wanted[w];
            switch (scanNumber(cells[w], m_layout.decimalMark, values[w])) {
            case Cell::number:
                break;
            case Cell::gap:
                return skip(line);
            case Cell::text:
                return cut ? skip(line) : refuse(line, wanted.column, noNumber(cells[w]));
            }
            values[w] *= wanted.unit;
            if (!(std::abs(values[w]) <= wanted.most))
                return refuse(line, wanted.column,
                              wording::inWords("%1 is out of all reason", shown(cells[w])));
        }
        return keep(values, line, cut);
    }
    std::size_t rows() const { return m_rows; }
    const Fault& fault() const { return m_fault; }

  private:
    struct Wanted {
        std::size_t column;
        double unit, most;
    };

    bool keep(const std::array<double, 3>& values, std::size_t line, bool cut) {
        std::size_t w = 0;
        double time = static_cast<double>(m_rows - 1) * m_layout.step_s;
        if (m_layout.timeColumn) time = values[w++];
        if (!m_raw.time_s.empty() && time < m_raw.time_s.back()) {
            const double last = m_raw.time_s.back();
            if (cut) return skip(line);
            if (last - time <= rounding * std::abs(last)) time = last;
        }
        if (!m_raw.time_s.empty() && time < m_raw.time_s.back())
            return refuse(line, *m_layout.timeColumn,
                          wording::inWords("the time %1 s lies before the %2 s of the row above",
                                           units::spoken(time), units::spoken(m_raw.time_s.back())));
        m_raw.time_s.push_back(time);
        for (study::RawTrace& trace : m_raw.traces) trace.values_V.push_back(values[w++]);
        return true;
    }
    bool skip(std::size_t line) {
        if (m_raw.skipped++ == 0) m_raw.firstSkipped = line;
        return true;
    }
    bool refuse(std::size_t line, std::size_t column, std::string text) {
        m_fault = {wording::inWords("line %1, column %2", line, column + 1), std::move(text)};
        return false;
    }
    static std::string shown(std::string_view cell) {
        std::string text;
        for (const char c : cell.substr(0, shownBytes)) {
            const auto byte = static_cast<unsigned char>(c);
            text += byte < 0x20 || byte >= 0x7f ? '?' : c;
        }
        return "\"" + text + (cell.size() > shownBytes ? "...\"" : "\"");
    }
    std::string noNumber(std::string_view cell) const {
        return m_layout.decimalMark == ','
                   ? wording::inWords("%1 is no number with a decimal comma", shown(cell))
                   : wording::inWords("%1 is no number with a decimal point", shown(cell));
    }

    const RecordLayout& m_layout;
    RawRecord& m_raw;
    const char m_separator;
    std::vector<Wanted> m_wanted;
    std::size_t m_last = 0, m_rows = 0;
    Fault m_fault;
};

/// Cuts a file into lines, a block at a time, and hands them on.
class LineFeed {
  public:
    LineFeed(const RecordLayout& layout, RowReader& rows, RawRecord& raw, std::size_t mostRows)
        : m_passOver(layout.preambleLines + layout.headerLines), m_mostRows(mostRows), m_rows(rows),
          m_raw(raw) {}

    /// @param last nothing comes after this block.
    Result<void> take(std::string& block, bool last) {
        std::string_view rest = block;
        if (m_first) {
            if (rest.starts_with(byteOrderMark)) rest.remove_prefix(byteOrderMark.size());
            m_end = TextLines(rest).lineEnd();
        }
        m_first = false;
        while (!rest.empty()) {
            const auto* found = static_cast<const char*>(std::memchr(rest.data(), m_end, rest.size()));
            if (!found && !last) break;
            const std::size_t length = found ? static_cast<std::size_t>(found - rest.data()) : rest.size();
            if (auto ok = line(rest.substr(0, length), found == nullptr); !ok) return ok;
            rest.remove_prefix(std::min(length + 1, rest.size()));
        }
        if (rest.size() > longestLine) return tooLong(m_line + 1);
        block.erase(0, block.size() - rest.size());
        return {};
    }

  private:
    Result<void> line(std::string_view text, bool cut) {
        ++m_line;
        if (text.size() > longestLine) return tooLong(m_line);
        if (m_line <= m_passOver) return {};
        if (text.ends_with('\r')) text.remove_suffix(1);
        if (!m_rows.take(text, m_line, cut)) return m_rows.fault();
        if (m_raw.time_s.size() > m_mostRows)
            return Fault{lineText(m_line),
                         wording::inWords("more than %1 rows are not supported", m_mostRows)};
        return {};
    }
    static Fault tooLong(std::size_t line) {
        return {lineText(line),
                wording::inWords("is longer than %1 KiB: this is no table", longestLine >> 10)};
    }

    const std::size_t m_passOver, m_mostRows;
    std::size_t m_line = 0;
    char m_end = '\n';
    bool m_first = true;
    RowReader& m_rows;
    RawRecord& m_raw;
};

} // namespace

Result<std::string> readBeginning(const std::string& path) {
    auto file = openFile(path);
    if (!file) return file.fault();
    std::string bytes(layoutBytes, '\0');
    file.value().read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (file.value().bad()) return Fault{path, wording::inWords("cannot be read")};
    bytes.resize(static_cast<std::size_t>(file.value().gcount()));
    if (bytes.empty()) return Fault{path, wording::inWords("the file is empty")};
    return bytes;
}

Result<RawRecord> readRawRecord(const std::string& path, const RecordLayout& layout,
                                const ReadControl& control) {
    assert(!layout.voltages.empty() && layout.voltages.size() <= 2);
    assert(layout.timeColumn || layout.step_s > 0);
    auto file = openFile(path);
    if (!file) return file.fault();
    std::error_code error;
    const auto size = fs::file_size(path, error); // a pipe has none
    if (!error && size > maxRecordBytes) return tooLarge(path);

    RawRecord raw;
    raw.source = fs::path(path).filename().string();
    RowReader rows(layout, raw);
    LineFeed feed(layout, rows, raw, control.mostRows);
    // A small file is one block with room for the byte that would show that it has grown.
    const std::size_t blockBytes =
        error ? mostBlockBytes : static_cast<std::size_t>(std::min<std::uintmax_t>(size + 1, mostBlockBytes));
    std::string block;
    std::size_t read = 0;
    for (bool last = false; !last;) {
        if (control.cancel && *control.cancel) return cancelled();
        const std::size_t kept = block.size();
        block.resize(kept + blockBytes);
        file.value().read(block.data() + kept, blockBytes);
        if (file.value().bad()) return Fault{path, wording::inWords("cannot be read to its end")};
        const auto got = static_cast<std::size_t>(file.value().gcount());
        block.resize(kept + got);
        last = got < blockBytes;
        read += got;
        if (read > maxRecordBytes) return tooLarge(path);
        if (auto ok = feed.take(block, last); !ok) return ok.fault();
        if (read == got && !error && size > got && got > 0) // by the first block: how many rows there will be
            rows.reserve(std::min(control.mostRows, rows.rows() * (size / got + 1)));
        if (control.progress && !error && size > 0)
            *control.progress = std::min(1.0, static_cast<double>(read) / static_cast<double>(size));
    }
    if (raw.time_s.empty())
        return Fault{"", wording::inWords("there are no rows of numbers in these columns")};
    if (raw.skipped > 1 && raw.skipped * 10 > rows.rows())
        return Fault{lineText(raw.firstSkipped),
                     wording::inWords("a number is missing here and in %1 of %2 rows in all", raw.skipped,
                                      rows.rows())};
    return raw;
}

Result<circuit::Record> importRecord(const std::string& path) {
    const auto beginning = readBeginning(path);
    if (!beginning) return beginning.fault();
    const auto layout = guessLayout(beginning.value());
    if (!layout) return layout.fault();
    const auto raw = readRawRecord(path, layout.value());
    if (!raw) return raw.fault();
    auto reduced = study::reduceRecord(raw.value());
    if (!reduced) return reduced.fault();
    return std::move(reduced.value().record);
}

} // namespace blinkwright::io
