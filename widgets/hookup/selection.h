// What is chosen on the Hook-up: any number of parts, one of which is the current one that the keyboard goes
// on from; or else one net.
//
//   Selection chosen;
//   chosen.choose(r1);            // it alone
//   chosen.toggle(r2);            // both; r2 is current
//   chosen.keep([&](PartId id) { return circuit.find(id); });
#pragma once

#include "core/circuit/circuit.h"

#include <functional>
#include <optional>
#include <vector>

namespace blinkwright::widgets::hookup {

class Selection {
  public:
    /// In the order in which they were chosen.
    const std::vector<circuit::PartId>& parts() const { return m_parts; }
    /// The one chosen last.
    std::optional<circuit::PartId> current() const {
        return m_parts.empty() ? std::nullopt : std::optional(m_parts.back());
    }
    std::optional<circuit::NetId> net() const { return m_net; }
    bool empty() const { return m_parts.empty() && !m_net; }
    bool holds(circuit::PartId part) const;

    void clear();
    void choose(circuit::PartId part);
    void choose(const std::vector<circuit::PartId>& parts); ///< each once; the last is current
    void chooseNet(circuit::NetId net);
    /// Adds parts to what is chosen; the last of them is current.
    void add(const std::vector<circuit::PartId>& parts);
    void toggle(circuit::PartId part);
    /// Drops what is no longer there.
    void keep(const std::function<bool(circuit::PartId)>& part,
              const std::function<bool(circuit::NetId)>& net);

    bool operator==(const Selection&) const = default;

  private:
    std::vector<circuit::PartId> m_parts;
    std::optional<circuit::NetId> m_net;
};

} // namespace blinkwright::widgets::hookup
