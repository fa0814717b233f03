// The lines of a text and the cells of a line, without copying: RFC 4180 with any separator.
//
//   TextLines lines(text);
//   while (lines.next())
//       for (TextCells cells(lines.line(), ';'); cells.next();) use(cells.cell());
// A quoted cell ends in its own line.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace blinkwright::io {

/// Lines that end in LF, CR LF or, where the text has no LF at all, CR.
class TextLines {
  public:
    explicit TextLines(std::string_view text)
        : m_rest(text), m_end(text.find('\n') == text.npos && text.find('\r') != text.npos ? '\r' : '\n') {}
    bool next() {
        if (m_rest.empty()) return false;
        const auto at = m_rest.find(m_end);
        m_ended = at != m_rest.npos;
        m_line = m_rest.substr(0, at);
        m_rest.remove_prefix(m_ended ? at + 1 : m_rest.size());
        if (m_line.ends_with('\r')) m_line.remove_suffix(1);
        return true;
    }
    std::string_view line() const { return m_line; }
    bool ended() const { return m_ended; } ///< by a line end; the last one may not be
    char lineEnd() const { return m_end; }

  private:
    std::string_view m_rest, m_line;
    char m_end;
    bool m_ended = false;
};

inline constexpr std::string_view blanks = " \t\r\v\f";

inline std::string_view trimmed(std::string_view text) {
    const auto from = text.find_first_not_of(blanks);
    if (from == text.npos) return {};
    return text.substr(from, text.find_last_not_of(blanks) + 1 - from);
}

class TextCells {
  public:
    static constexpr char anyBlanks = ' '; ///< as a separator: runs of spaces and tabs

    TextCells(std::string_view line, char separator) : m_rest(line), m_separator(separator) {}
    /// Goes to the next cell; false after the last.
    bool next() {
        if (m_separator == anyBlanks) {
            const auto from = m_rest.find_first_not_of(blanks);
            if (from == m_rest.npos) return false;
            m_rest.remove_prefix(from);
        } else if (m_done) {
            return false;
        }
        m_quoted = false;
        const auto from = m_rest.find_first_not_of(' ');
        if (from != m_rest.npos && m_rest[from] == '"') return nextQuoted(from);
        take(m_rest, endIn(m_rest));
        return true;
    }
    /// Without blanks around it and without its quotes; quotes inside it still stand twice.
    std::string_view cell() const { return m_cell; }
    std::string text() const {
        std::string text;
        for (std::size_t k = 0; k < m_cell.size(); ++k) {
            text += m_cell[k];
            if (m_quoted && m_cell[k] == '"') ++k;
        }
        return text;
    }
    bool isOpen() const { return m_open; } ///< a quote of the line so far does not end

  private:
    std::size_t endIn(std::string_view text) const {
        return m_separator == anyBlanks ? text.find_first_of(blanks) : text.find(m_separator);
    }
    void take(std::string_view text, std::size_t end) {
        m_cell = trimmed(text.substr(0, end));
        m_done = end == text.npos;
        m_rest = m_done ? std::string_view() : text.substr(end + 1);
    }
    bool nextQuoted(std::size_t from) {
        std::size_t end = from + 1;
        while (end < m_rest.size() && (m_rest[end] != '"' || m_rest.substr(end + 1).starts_with('"')))
            end += m_rest[end] == '"' ? 2 : 1;
        m_open |= end >= m_rest.size();
        end = std::min(end, m_rest.size());
        const std::string_view inside = m_rest.substr(from + 1, end - from - 1);
        const std::string_view after = m_rest.substr(std::min(end + 1, m_rest.size()));
        take(after, endIn(after));
        m_cell = trimmed(inside);
        m_quoted = true;
        return true;
    }

    std::string_view m_rest, m_cell;
    char m_separator;
    bool m_done = false, m_quoted = false, m_open = false;
};

} // namespace blinkwright::io
