#include "core/study/stock_left.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

StockLeft::StockLeft(const Wish& wish) : m_limited(wish.drawer.has_value()) {
    if (!m_limited) return;
    for (const Stock& stock : *wish.drawer) {
        const bool stands =
            stock.kind != Stock::Kind::capacitor || stock.rating.value_or(wish.supply_V) >= wish.supply_V;
        if (stands) m_left[{stock.kind, stock.value}] += stock.quantity;
    }
}

bool StockLeft::take(Stock::Kind kind, double value) {
    if (!m_limited) return true;
    const auto found = m_left.find({kind, value});
    if (found == m_left.end() || found->second <= 0) return false;
    --found->second;
    m_fewest = std::min(m_fewest.value_or(found->second), found->second);
    return true;
}

double StockLeft::takeNearest(Stock::Kind kind, double wanted, double low, double high) {
    const std::vector<double> owned = values(kind, low, high);
    const auto nearest =
        std::ranges::min_element(owned, {}, [&](double value) { return std::abs(std::log(value / wanted)); });
    if (nearest == owned.end()) return 0;
    take(kind, *nearest);
    return *nearest;
}

std::vector<double> StockLeft::values(Stock::Kind kind, double low, double high) const {
    std::vector<double> owned;
    for (const auto& [key, left] : m_left)
        if (key.first == kind && left > 0 && key.second >= low && key.second <= high)
            owned.push_back(key.second);
    return owned;
}

} // namespace blinkwright::study
