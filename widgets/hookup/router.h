// The router: finds right-angled wires on the grid that join the pins of each net, around the bodies of the
// parts. Plain numbers in, plain numbers out, and the same answer every time.
//
//   RouterInput in;
//   in.bodies = {...};  in.pins = {{{-30, 0}, {-10, 0}, 0}, {{90, 0}, {10, 0}, 0}};
//   Routes routes = route(in);
//   routes.segments   // straight runs, each of one net
//   routes.dots       // where three or more branches of one net meet
//   Router router;    // the same for one drawing again and again: lays anew only what a change can reach
//   routes = router.route(in);
// It holds that no wire enters a body or touches a pin of another net, that no two nets share a stretch, and
// that they cross at right angles only. A pin that cannot be reached is named in `missing`; nothing is drawn
// through a part.
#pragma once

#include "widgets/hookup/geometry.h"

#include <memory>
#include <vector>

namespace blinkwright::widgets::hookup {

struct RouterPin {
    Point at;     ///< on the grid
    Point lead;   ///< one grid step away from the body
    int net = -1; ///< -1: open; no wire may touch it
    bool operator==(const RouterPin&) const = default;
};

/// A long straight wire that a big net hangs on, above or below a row of parts.
struct Rail {
    int net = 0;
    int y = 0;
    int top = -anywhere, bottom = anywhere; ///< the net's pins from here to there hang on it
    static constexpr int anywhere = 1 << 30;
    bool operator==(const Rail&) const = default;
};
/// An upright wire beside all parts that joins the rails of one net.
struct Riser {
    int net = 0;
    int x = 0;
    bool operator==(const Riser&) const = default;
};

struct RouterInput {
    std::vector<Box> bodies; ///< wires keep `clearance` away from these
    std::vector<Box> quiet;  ///< wires would rather not pass here: room for labels
    std::vector<RouterPin> pins;
    std::vector<Rail> rails;
    std::vector<Riser> risers; ///< one at most for a net, where it has several rails
    int nets = 0;
};

struct Segment {
    int net = 0;
    Point a, b; ///< a is left of or above b
    auto operator<=>(const Segment&) const = default;
};
struct Dot {
    int net = 0;
    Point at;
    auto operator<=>(const Dot&) const = default;
};
/// Two ends of one net that no wire could join.
struct Missing {
    int net = 0;
    Point a, b;
    auto operator<=>(const Missing&) const = default;
};

struct Routes {
    std::vector<Segment> segments;
    std::vector<Dot> dots;
    std::vector<Missing> missing;
    int crossings = 0;
    bool operator==(const Routes&) const = default;
};

/// Remembers each search together with all that it looked at. A search whose sight nothing has changed in
/// would end as it did, so its wire is taken as it was; the answer is always that of a router without a
/// memory.
class Router {
  public:
    Router();
    ~Router();
    Router(Router&&) noexcept;
    Router& operator=(Router&&) noexcept;
    Routes route(const RouterInput& in);
    int searches() const; ///< done for the last answer

  private:
    class Private;
    std::unique_ptr<Private> d;
};

/// The answer for one input alone.
Routes route(const RouterInput& in);

} // namespace blinkwright::widgets::hookup
