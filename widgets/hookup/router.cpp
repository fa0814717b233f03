#include "widgets/hookup/router.h"

#include "widgets/hookup/trunk.h"
#include "widgets/hookup/wire_search.h"

#include <algorithm>
#include <array>
#include <limits>

namespace blinkwright::widgets::hookup {

namespace {

/// The first nets are laid without knowing of the later ones: each is then taken up again and laid anew. A
/// fixed number of times, so that a change at one end of a drawing never turns over the wires at the other.
constexpr std::size_t passes = 3;

constexpr std::size_t none = static_cast<std::size_t>(-1);

/// The wire from one pin to what was joined of its net before.
struct Branch {
    std::size_t pin = 0;         ///< place in RouterInput::pins
    std::vector<WireStep> steps; ///< from the tree back to the pin; empty: no way was found
    Point closest;               ///< then: the joined pin that lies nearest
    Box seen, goal;              ///< of the search
};
using Branches = std::vector<Branch>;

} // namespace

class Router::Private {
  public:
    Routes route(const RouterInput& in) {
        m_search.countAnew();
        if (m_grid.canChange(m_in, in))
            takeChange(in);
        else
            takeAll(in);
        if (m_grid.tooLarge()) return nothingButMissing();
        layTrunks();
        for (std::size_t pass = 0; pass < passes; ++pass)
            for (const int net : netOrder()) {
                if (pass > 0) setEdges(m_laid[pass - 1][index(net)], RouterGrid::noNet);
                connect(net, m_laid[pass][index(net)]);
            }
        return result();
    }
    int searches() const { return m_search.searches(); }

  private:
    static std::size_t index(int i) { return static_cast<std::size_t>(i); }

    void takeAll(const RouterInput& in) {
        m_in = in;
        m_grid.take(in);
        m_search.resize();
        m_touched.reset(m_grid.area());
        for (auto& pass : m_laid) pass.assign(index(in.nets), {});
        m_trunks.assign(index(in.nets), {});
        m_hangsOn.assign(in.pins.size(), none);
        m_before.assign(in.pins.size(), none);
        sortPins();
    }

    void takeChange(const RouterInput& in) {
        for (const Branches& net : m_laid.back()) setEdges(net, RouterGrid::noNet);
        for (const Trunk& trunk : m_trunks) setTrunk(trunk, RouterGrid::noNet);
        if (m_grid.fits(in)) {
            m_touched.reset(m_grid.area());
            m_grid.change(m_in, in);
        } else {
            changeSize(in);
        }
        RouterGrid::mark(m_in, in, m_touched);
        // A net that lost or gained a pin, or whose pin moved, may come at another place in the order: all
        // that it ever laid is open.
        std::vector<bool> changedPin(in.pins.size()), changedNet(index(in.nets));
        for (std::size_t i = 0; i < in.pins.size(); ++i) {
            if (m_in.pins[i] == in.pins[i]) continue;
            changedPin[i] = true;
            for (const int net : {m_in.pins[i].net, in.pins[i].net})
                if (net >= 0) changedNet[index(net)] = true;
        }
        for (std::size_t net = 0; net < changedNet.size(); ++net) {
            if (!changedNet[net]) continue;
            const bool railed = !m_trunks[net].lines.empty();
            for (auto& pass : m_laid)
                forget(pass[net], [&](const Branch& b) { return !railed || changedPin[b.pin]; });
        }
        m_in = in;
        sortPins();
    }

    /// The drawing has come to ask for a larger or smaller grid: what was laid keeps its place on the paper,
    /// and only who saw one of the two rims must look again.
    void changeSize(const RouterInput& in) {
        const Box before = m_grid.area(), now = RouterGrid::areaFor(in);
        const int width = m_grid.width();
        m_touched.reset(now);
        for (const Box& area : {before, now}) m_touched.markRim(area);
        const auto leaves = [&](const std::vector<WireStep>& steps) {
            return std::ranges::any_of(steps, [&](const WireStep& s) {
                return !now.holds(m_grid.point(s.vertex)) ||
                       !now.holds(m_grid.point(s.vertex + m_grid.step(s.heading)));
            });
        };
        for (auto& pass : m_laid)
            for (Branches& net : pass) forget(net, [&](const Branch& b) { return leaves(b.steps); });
        for (std::size_t net = 0; net < m_trunks.size(); ++net) {
            bool gone = leaves(m_trunks[net].riser);
            for (const Line& line : m_trunks[net].lines) gone = gone || leaves(line.steps);
            if (gone) forgetNet(net);
        }
        m_grid.take(in);
        m_search.resize();
        const auto renumber = [&](std::vector<WireStep>& steps) {
            for (WireStep& s : steps)
                s.vertex = m_grid.vertex(
                    {before.left + s.vertex % width * pitch, before.top + s.vertex / width * pitch});
        };
        for (auto& pass : m_laid)
            for (Branches& net : pass)
                for (Branch& branch : net) renumber(branch.steps);
        for (Trunk& trunk : m_trunks) {
            for (Line& line : trunk.lines) renumber(line.steps);
            renumber(trunk.riser);
        }
    }

    void forgetNet(std::size_t net) {
        for (auto& pass : m_laid) forget(pass[net], [](const Branch&) { return true; });
        for (const Line& line : m_trunks[net].lines) touch(line.steps);
        touch(m_trunks[net].riser);
        m_trunks[net] = {};
        for (const std::size_t pin : m_pins[net]) m_hangsOn[pin] = none;
    }

    template <class Which>
    void forget(Branches& branches, Which which) {
        for (const Branch& branch : branches)
            if (which(branch)) touch(branch.steps);
        std::erase_if(branches, which);
    }

    void touch(const std::vector<WireStep>& steps) {
        for (std::size_t i = 0; i < steps.size();) { // by straight runs
            std::size_t k = i;
            while (k + 1 < steps.size() && steps[k + 1].heading == steps[i].heading) ++k;
            const Point a = m_grid.point(steps[i].vertex + m_grid.step(steps[i].heading)),
                        b = m_grid.point(steps[k].vertex);
            m_touched.mark({std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)});
            i = k + 1;
        }
    }

    void sortPins() {
        m_pins.assign(index(m_in.nets), {});
        for (std::size_t i = 0; i < m_in.pins.size(); ++i)
            if (m_in.pins[i].net >= 0) m_pins[index(m_in.pins[i].net)].push_back(i);
        m_isRail.assign(index(m_in.nets), false);
        for (const Rail& rail : m_in.rails) m_isRail[index(rail.net)] = true;
    }

    void setEdges(const Branches& branches, int net) {
        for (const Branch& branch : branches)
            for (const WireStep& s : branch.steps) m_grid.setEdge(s.vertex, s.heading, net);
    }
    void setTrunk(const Trunk& trunk, int net) {
        trunk.visit([&](const WireStep& s) {
            m_grid.setEdge(s.vertex, s.heading, net);
            m_search.setRail(s.vertex, net);
            m_search.setRail(s.vertex + m_grid.step(s.heading), net);
        });
    }

    void layTrunks() {
        std::vector<Trunk> trunks(index(m_in.nets));
        std::vector<std::size_t> hangsOn(m_in.pins.size(), none);
        for (std::size_t net = 0; net < trunks.size(); ++net)
            if (m_isRail[net])
                trunks[net] = trunkOf(static_cast<int>(net), m_in, m_pins[net], m_grid, hangsOn);
        for (std::size_t net = 0; net < trunks.size(); ++net) {
            const Trunk &before = m_trunks[net], &now = trunks[net];
            setTrunk(now, static_cast<int>(net));
            if (before == now && (now.lines.size() < 2 || samePins(net, hangsOn))) continue;
            const auto stays = [&](const Branch& b) {
                const std::size_t was = m_hangsOn[b.pin], is = hangsOn[b.pin];
                return was == none || is == none ? was == is : now.lines[is].continues(before.lines[was]);
            };
            for (auto& pass : m_laid) forget(pass[net], [&](const Branch& b) { return !stays(b); });
            touchLines(before, now);
            if (before.riser != now.riser) {
                touch(before.riser);
                touch(now.riser);
            }
        }
        m_trunks = std::move(trunks);
        m_hangsOn = std::move(hangsOn);
    }

    bool samePins(std::size_t net, const std::vector<std::size_t>& hangsOn) const {
        return std::ranges::all_of(m_pins[net], [&](auto pin) { return hangsOn[pin] == m_hangsOn[pin]; });
    }

    void touchLines(const Trunk& before, const Trunk& now) {
        for (const Line& line : before.lines)
            if (std::ranges::none_of(now.lines, [&](const Line& l) { return l.continues(line); }))
                touch(line.steps);
        for (const Line& line : now.lines) {
            const auto was =
                std::ranges::find_if(before.lines, [&](const Line& l) { return line.continues(l); });
            if (was == before.lines.end()) {
                touch(line.steps);
                continue;
            }
            const Box &a = was->goal, &b = line.goal; // longer or shorter: its ends are open
            if (a.left != b.left)
                m_touched.mark({std::min(a.left, b.left), line.y, std::max(a.left, b.left), line.y});
            if (a.right != b.right)
                m_touched.mark({std::min(a.right, b.right), line.y, std::max(a.right, b.right), line.y});
        }
    }

    /// Short nets first, rails last, in an order that a moving part cannot change among the nets that it is
    /// not in.
    std::vector<int> netOrder() const {
        std::vector<std::pair<long long, int>> keyed;
        for (int net = 0; net < m_in.nets; ++net) {
            const auto& pins = m_pins[index(net)];
            if (pins.size() < 2) continue;
            const Point first = m_in.pins[pins[0]].at;
            Box box{first.x, first.y, first.x, first.y};
            for (const std::size_t pin : pins) {
                const Point p = m_in.pins[pin].at;
                box = box.with({p.x, p.y, p.x, p.y});
            }
            keyed.emplace_back(m_isRail[index(net)] ? 1LL << 40 : box.right - box.left + box.bottom - box.top,
                               net);
        }
        std::sort(keyed.begin(), keyed.end());
        std::vector<int> order;
        order.reserve(keyed.size());
        for (const auto& [key, net] : keyed) order.push_back(net);
        return order;
    }

    void connect(int net, Branches& laid) {
        const Trunk& trunk = m_trunks[index(net)];
        const bool railed = !trunk.lines.empty();
        m_search.begin(net, railed);
        trunk.visit([&](const WireStep& s) {
            m_search.addToTree(s.vertex);
            m_search.addToTree(s.vertex + m_grid.step(s.heading));
        });
        Branches before = std::move(laid);
        laid.clear();
        for (std::size_t i = 0; i < before.size(); ++i) m_before[before[i].pin] = i;
        if (railed)
            hangOnRail(net, trunk, before, laid);
        else
            growTree(net, before, laid);
        drop(before);
    }

    /// What is left of a net's last answer is not laid again.
    void drop(const Branches& before) {
        for (const Branch& old : before) {
            if (m_before[old.pin] != none) touch(old.steps);
            m_before[old.pin] = none;
        }
    }

    /// Every pin by itself, the nearest to its rail first.
    void hangOnRail(int net, const Trunk& trunk, Branches& before, Branches& laid) {
        std::vector<std::pair<int, std::size_t>> waiting;
        for (const std::size_t pin : m_pins[index(net)]) {
            m_search.setGoal(trunk.lines[m_hangsOn[pin]].goal);
            waiting.emplace_back(m_search.distance(m_in.pins[pin].at), pin);
        }
        std::ranges::sort(waiting);
        for (const auto& [far, pin] : waiting) {
            m_search.setGoal(trunk.lines[m_hangsOn[pin]].goal);
            join(net, pin, before, laid);
        }
    }

    /// One pin after the other, the one nearest to all that is joined so far.
    void growTree(int net, Branches& before, Branches& laid) {
        std::vector<std::size_t> waiting = m_pins[index(net)];
        m_search.addToTree(m_grid.vertex(m_in.pins[waiting.front()].at));
        waiting.erase(waiting.begin());
        while (!waiting.empty()) {
            m_search.setGoal(areaOfTree());
            const auto nearest = std::min_element(waiting.begin(), waiting.end(), [&](auto a, auto b) {
                return toTree(m_in.pins[a].at) < toTree(m_in.pins[b].at);
            });
            const std::size_t pin = *nearest;
            waiting.erase(nearest);
            // With another tree the next pin may be another: nothing further is what it was.
            if (!join(net, pin, before, laid)) drop(before);
        }
    }

    /// @return whether the net stands as it did at this point of the last answer.
    bool join(int net, std::size_t pin, Branches& before, Branches& laid) {
        const int start = m_grid.vertex(m_in.pins[pin].at);
        Branch* old = m_before[pin] == none ? nullptr : &before[m_before[pin]];
        m_before[pin] = none;
        if (m_search.inTree(start)) {
            if (old) touch(old->steps);
            return !old;
        }
        bool asBefore = true;
        if (old && holds(*old)) {
            laid.push_back(std::move(*old));
        } else {
            Branch fresh{pin, m_search.find(start), {}, m_search.seen(), {}};
            asBefore = old ? old->steps == fresh.steps : fresh.steps.empty();
            if (old && !asBefore) touch(old->steps);
            if (!asBefore) touch(fresh.steps);
            laid.push_back(std::move(fresh));
        }
        Branch& branch = laid.back();
        branch.goal = m_search.goal();
        if (branch.steps.empty()) {
            branch.closest = closest(m_in.pins[pin].at);
            return asBefore;
        }
        for (const WireStep& s : branch.steps) {
            m_search.addToTree(s.vertex + m_grid.step(s.heading));
            m_grid.setEdge(s.vertex, s.heading, net);
        }
        m_search.addToTree(start);
        return asBefore;
    }

    /// Whether a search would see what it saw, and find its goal as far from there.
    bool holds(const Branch& old) const {
        const Box &was = old.goal, &is = m_search.goal();
        const auto sameBound = [](int lowWas, int lowIs, int highWas, int highIs, int from, int to) {
            return (lowWas == lowIs || from >= std::max(lowWas, lowIs)) &&
                   (highWas == highIs || to <= std::min(highWas, highIs));
        };
        return sameBound(was.left, is.left, was.right, is.right, old.seen.left, old.seen.right) &&
               sameBound(was.top, is.top, was.bottom, is.bottom, old.seen.top, old.seen.bottom) &&
               !m_touched.meets(old.seen);
    }

    Point closest(Point to) const {
        const std::vector<int>& tree = m_search.tree();
        Point best = m_grid.point(tree.front());
        const auto far = [&](Point p) { return std::abs(p.x - to.x) + std::abs(p.y - to.y); };
        for (const int v : tree)
            if (m_grid.pinCount(v) > 0 && far(m_grid.point(v)) < far(best)) best = m_grid.point(v);
        return best;
    }

    Box areaOfTree() const {
        const Point first = m_grid.point(m_search.tree().front());
        Box box{first.x, first.y, first.x, first.y};
        for (const int v : m_search.tree()) {
            const Point p = m_grid.point(v);
            box = box.with({p.x, p.y, p.x, p.y});
        }
        return box;
    }

    int toTree(Point from) const {
        int least = std::numeric_limits<int>::max();
        for (const int v : m_search.tree()) {
            const Point p = m_grid.point(v);
            least = std::min(least, std::abs(p.x - from.x) + std::abs(p.y - from.y));
        }
        return least;
    }

    Routes nothingButMissing() const {
        Routes routes;
        for (std::size_t net = 0; net < m_pins.size(); ++net)
            for (std::size_t i = 1; i < m_pins[net].size(); ++i)
                routes.missing.push_back(
                    {static_cast<int>(net), m_in.pins[m_pins[net][i - 1]].at, m_in.pins[m_pins[net][i]].at});
        return routes;
    }

    /// Takes off the ends of rails that nothing hangs on.
    void trimTrunks() {
        const auto trim = [&](int net, const WireStep& s) {
            if (m_grid.edge(s.vertex, s.heading) != net) return false;
            for (const int end : {s.vertex, s.vertex + m_grid.step(s.heading)})
                if (m_grid.degree(net, end) == 1 && m_grid.pinNet(end) != net) {
                    m_grid.setEdge(s.vertex, s.heading, RouterGrid::noNet);
                    return true;
                }
            return false;
        };
        for (std::size_t i = 0; i < m_trunks.size(); ++i) {
            const int net = static_cast<int>(i);
            std::vector<WireStep> steps;
            m_trunks[i].visit([&steps](const WireStep& s) { steps.push_back(s); });
            bool changed = !steps.empty(); // a trunk that bodies interrupt has ends in its middle too
            while (changed) {
                changed = false;
                for (const WireStep& s : steps) changed = trim(net, s) || changed;
                for (auto s = steps.rbegin(); s != steps.rend(); ++s) changed = trim(net, *s) || changed;
            }
        }
    }

    Routes result() {
        trimTrunks();
        Routes routes;
        for (std::size_t net = 0; net < m_laid.back().size(); ++net)
            for (const Branch& branch : m_laid.back()[net])
                if (branch.steps.empty())
                    routes.missing.push_back(
                        {static_cast<int>(net), m_in.pins[branch.pin].at, branch.closest});
        for (int v = m_grid.width(); v < m_grid.size() - m_grid.width(); ++v) {
            if (!m_grid.wired(v)) continue;
            for (const int heading : {RouterGrid::east, RouterGrid::south}) {
                const int net = m_grid.edge(v, heading);
                if (net == RouterGrid::noNet || m_grid.edge(v, (heading + 2) % 4) == net) continue;
                int end = v;
                while (m_grid.edge(end, heading) == net) end += m_grid.step(heading);
                routes.segments.push_back({net, m_grid.point(v), m_grid.point(end)});
            }
            noteMeeting(v, routes);
        }
        std::sort(routes.segments.begin(), routes.segments.end());
        std::sort(routes.dots.begin(), routes.dots.end());
        std::sort(routes.missing.begin(), routes.missing.end());
        return routes;
    }

    void noteMeeting(int v, Routes& routes) const {
        const int across = m_grid.edge(v, RouterGrid::east), along = m_grid.edge(v, RouterGrid::south);
        if (across != RouterGrid::noNet && along != RouterGrid::noNet && across != along &&
            m_grid.edge(v, RouterGrid::west) == across)
            ++routes.crossings;
        for (int heading = 0; heading < 4; ++heading) {
            const int net = m_grid.edge(v, heading);
            if (net == RouterGrid::noNet) continue;
            const int pins = m_grid.pinNet(v) == net ? m_grid.pinCount(v) : 0;
            if (m_grid.degree(net, v) + pins >= 3) routes.dots.push_back({net, m_grid.point(v)});
            return; // where two nets cross, neither branches
        }
    }

    RouterInput m_in;
    RouterGrid m_grid;
    WireSearch m_search{m_grid};
    Touched m_touched; ///< where the grid holds other than at the same step of laying the last answer
    std::array<std::vector<Branches>, passes> m_laid; ///< by net, after each pass
    std::vector<Trunk> m_trunks;                      ///< by net; without lines where there is no rail
    std::vector<std::size_t> m_hangsOn;               ///< by pin: the line of its net's trunk
    std::vector<std::vector<std::size_t>> m_pins;     ///< by net
    std::vector<bool> m_isRail;
    std::vector<std::size_t> m_before; ///< by pin: its branch in the last answer, while one net is laid
};

Router::Router() : d(std::make_unique<Private>()) {
}
Router::~Router() = default;
Router::Router(Router&&) noexcept = default;
Router& Router::operator=(Router&&) noexcept = default;

Routes Router::route(const RouterInput& in) {
    return d->route(in);
}

int Router::searches() const {
    return d->searches();
}

Routes route(const RouterInput& in) {
    return Router().route(in);
}

} // namespace blinkwright::widgets::hookup
