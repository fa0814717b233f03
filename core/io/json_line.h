// Collects the members of one JSON object on one line.
//
//   JsonLine line;
//   line.add("ref", quotedJson("R1"));
//   line.json();       // {"ref": "R1"}
#pragma once

#include "core/circuit/circuit_ids.h"
#include "core/io/json_reading.h"

namespace blinkwright::io {

class JsonLine {
  public:
    void add(std::string_view key, std::string_view json) {
        m_text.append(m_text.empty() ? "" : ", ").append(quotedJson(key)).append(": ").append(json);
    }
    void add(const circuit::Extras& unknown) {
        for (const circuit::Extra& extra : unknown) add(extra.key, extra.json);
    }
    bool empty() const { return m_text.empty(); }
    std::string json() const { return "{" + m_text + "}"; }

  private:
    std::string m_text;
};

} // namespace blinkwright::io
