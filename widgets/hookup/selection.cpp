#include "widgets/hookup/selection.h"

#include <algorithm>
#include <utility>

namespace blinkwright::widgets::hookup {

using circuit::NetId;
using circuit::PartId;

bool Selection::holds(PartId part) const {
    return std::ranges::find(m_parts, part) != m_parts.end();
}

void Selection::clear() {
    m_parts.clear();
    m_net.reset();
}

void Selection::choose(PartId part) {
    choose(std::vector{part});
}

void Selection::choose(const std::vector<PartId>& parts) {
    Selection chosen; // they may be its own
    chosen.add(parts);
    *this = std::move(chosen);
}

void Selection::chooseNet(NetId net) {
    clear();
    m_net = net;
}

void Selection::add(const std::vector<PartId>& parts) {
    if (!parts.empty()) m_net.reset();
    for (const PartId part : parts) {
        std::erase(m_parts, part);
        m_parts.push_back(part);
    }
}

void Selection::toggle(PartId part) {
    if (std::erase(m_parts, part) == 0) add({part});
}

void Selection::keep(const std::function<bool(PartId)>& part, const std::function<bool(NetId)>& net) {
    std::erase_if(m_parts, [&](PartId id) { return !part(id); });
    if (m_net && !net(*m_net)) m_net.reset();
}

} // namespace blinkwright::widgets::hookup
