// What is left in the drawer while one board takes its parts from it. Without a drawer there is enough of
// all.
//
//   StockLeft left(wish);
//   if (!left.take(Stock::Kind::resistor, 33e3)) ...     // the last one is gone already
//   double lamp = left.takeNearest(Stock::Kind::resistor, 560, 100, 10e3);
#pragma once

#include "core/study/wish.h"

#include <map>

namespace blinkwright::study {

class StockLeft {
  public:
    /// Capacitors that do not stand the wish's supply count as not there.
    explicit StockLeft(const Wish& wish);

    bool limited() const { return m_limited; }
    bool take(Stock::Kind kind, double value);
    /// Takes the owned value nearest by ratio out of low to high. @return 0 where there is none.
    double takeNearest(Stock::Kind kind, double wanted, double low, double high);
    /// Of the part taken so far that is scarcest, how many are left; nothing without a drawer.
    std::optional<long> fewest() const { return m_fewest; }
    /// The values of a kind of which there is one at least, ascending.
    std::vector<double> values(Stock::Kind kind, double low, double high) const;

  private:
    bool m_limited;
    std::map<std::pair<Stock::Kind, double>, long> m_left;
    std::optional<long> m_fewest;
};

} // namespace blinkwright::study
