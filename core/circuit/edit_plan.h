// Builds one Group out of edits that depend on one another: each is done on a copy at once, so that the next
// can look at what came of it.
//
//   EditPlan plan(circuit);
//   plan.add({edits::JoinPin{pin, net}});
//   plan.circuit().netOf(pin);                 // net
//   Result<Edit> edit = plan.done("Join R1:1 to net supply");   // or the first refusal
#pragma once

#include "core/circuit/edit.h"

#include <optional>
#include <string>
#include <utility>

namespace blinkwright::circuit {

class EditPlan {
  public:
    explicit EditPlan(const Circuit& circuit) : m_circuit(circuit) {}

    const Circuit& circuit() const { return m_circuit; }
    /// Does an edit on the copy. After a refusal nothing more is done.
    void add(Edit edit) {
        if (m_fault) return;
        if (const auto back = apply(m_circuit, edit); !back)
            m_fault = back.fault();
        else
            m_edits.push_back(std::move(edit));
    }
    void refuse(Fault fault) {
        if (!m_fault) m_fault = std::move(fault);
    }
    bool refused() const { return m_fault.has_value(); }
    Result<Edit> done(std::string text) && {
        if (m_fault) return *m_fault;
        return Edit{edits::Group{std::move(text), std::move(m_edits)}};
    }

  private:
    Circuit m_circuit;
    std::vector<Edit> m_edits;
    std::optional<Fault> m_fault;
};

} // namespace blinkwright::circuit
