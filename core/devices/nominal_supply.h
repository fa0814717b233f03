// Which supply feeds a timer.
//
//   SupplyFinder finder(circuit, PartSet::A);
//   double volts = finder.nominalSupply(timer);
#pragma once

#include "core/circuit/circuit.h"

#include <map>
#include <vector>

namespace blinkwright::devices {

/// The resistances of a wiring as direct current meets them, looked up once for all timers.
class SupplyFinder {
  public:
    SupplyFinder(const circuit::Circuit& circuit, circuit::PartSet set);

    /// No-load voltage of the supply that feeds a timer's pin 8: the one whose plus reaches it through the
    /// least resistance, switches as drawn, a diode counting as its series resistance either way, another
    /// supply as its resistance; the first such supply if several, the highest if none reaches it. 0 where
    /// there is none. [V]
    double nominalSupply(circuit::PartId timer) const;

  private:
    struct Path {
        circuit::NetId to;
        double resistance;
    };
    struct Source {
        std::optional<circuit::NetId> plus;
        double voltage;
    };
    std::optional<circuit::NetId> netOf(circuit::PartId part, int pin) const;
    std::map<circuit::NetId, double> reachFrom(circuit::NetId start) const;

    std::map<circuit::PinRef, circuit::NetId> m_nets;
    std::map<circuit::NetId, std::vector<Path>> m_paths;
    std::vector<Source> m_sources; ///< in the order of the parts
};

} // namespace blinkwright::devices
