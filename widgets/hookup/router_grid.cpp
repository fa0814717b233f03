#include "widgets/hookup/router_grid.h"

namespace blinkwright::widgets::hookup {

namespace {
constexpr int margin = 6 * pitch; ///< room for detours around the outermost parts
constexpr int sheet = 16 * pitch;
constexpr long long mostVertices = 1500000; ///< a drawing of 12,000 units square

template <class Mark>
void overGrid(const Box& box, Point origin, int width, int height, Mark mark) {
    const auto up = [](int v) { return (v + pitch - 1) / pitch; };
    const int x0 = std::max(0, up(box.left - origin.x)),
              x1 = std::min(width - 1, (box.right - origin.x) / pitch);
    const int y0 = std::max(0, up(box.top - origin.y)),
              y1 = std::min(height - 1, (box.bottom - origin.y) / pitch);
    for (int y = y0; y <= y1; ++y)
        for (int x = x0; x <= x1; ++x) mark(static_cast<std::size_t>(y * width + x));
}
int headingOf(Point lead) {
    if (lead.x != 0) return lead.x > 0 ? RouterGrid::east : RouterGrid::west;
    return lead.y > 0 ? RouterGrid::south : RouterGrid::north;
}

Box boxAt(Point p) {
    return {p.x, p.y, p.x, p.y};
}

Box reachOf(const Box& body) {
    return body.grown(clearance + pitch);
}

} // namespace

/// Rounded up to whole sheets, so that a part that moves at the edge seldom changes it.
RouterGrid::Size RouterGrid::sizeFor(const RouterInput& in) {
    bool any = false;
    Box all;
    const auto take = [&](const Box& box) {
        all = any ? all.with(box) : box;
        any = true;
    };
    for (const Box& box : in.bodies) take(box);
    for (const RouterPin& pin : in.pins) take(boxAt(pin.at));
    for (const Rail& rail : in.rails) take({all.left, rail.y, all.left, rail.y});
    for (const Riser& riser : in.risers) take({riser.x, all.top, riser.x, all.top});
    all = all.grown(margin);
    const auto down = [](int v) { return v >= 0 ? v / sheet : -((-v + sheet - 1) / sheet); };
    const Point first{down(all.left), down(all.top)}, last{down(all.right) + 1, down(all.bottom) + 1};
    return {{first.x * sheet, first.y * sheet},
            (last.x - first.x) * (sheet / pitch) + 1,
            (last.y - first.y) * (sheet / pitch) + 1};
}

bool RouterGrid::isTooLarge(const Size& size) {
    return static_cast<long long>(size.width) * size.height > mostVertices;
}

void RouterGrid::take(const RouterInput& in) {
    m_wanted = sizeFor(in);
    m_origin = m_wanted.origin;
    m_tooLarge = isTooLarge(m_wanted);
    m_width = m_tooLarge ? 1 : m_wanted.width;
    m_height = m_tooLarge ? 1 : m_wanted.height;
    m_steps = {1, m_width, -1, -m_width};

    const std::size_t n = at(size());
    m_blocked.assign(n, 0);
    m_near.assign(n, 0);
    m_quiet.assign(n, 0);
    m_pinCount.assign(n, 0);
    m_pinLead.assign(n, -1);
    m_pinNet.assign(n, noNet);
    m_edges.assign(n, {noNet, noNet, noNet, noNet});
    if (m_tooLarge) return;

    for (const Box& body : in.bodies) coverBody(body, 1);
    for (const Box& box : in.quiet) cover(m_quiet, box, 1);
    // The rim stops every search, so that no neighbour lies outside.
    for (int x = 0; x < m_width; ++x) m_blocked[at(x)] = m_blocked[at(size() - 1 - x)] = 1;
    for (int y = 0; y < m_height; ++y)
        m_blocked[at(y * m_width)] = m_blocked[at(y * m_width + m_width - 1)] = 1;
    setPins(in.pins);
}

bool RouterGrid::canChange(const RouterInput& from, const RouterInput& to) const {
    return !m_tooLarge && m_width > 0 && from.bodies.size() == to.bodies.size() &&
           from.quiet.size() == to.quiet.size() && from.pins.size() == to.pins.size() &&
           from.nets == to.nets && !isTooLarge(sizeFor(to));
}

bool RouterGrid::fits(const RouterInput& in) const {
    return sizeFor(in) == m_wanted;
}

Box RouterGrid::areaFor(const RouterInput& in) {
    const Size size = sizeFor(in);
    return {size.origin.x, size.origin.y, size.origin.x + (size.width - 1) * pitch,
            size.origin.y + (size.height - 1) * pitch};
}

void RouterGrid::mark(const RouterInput& from, const RouterInput& to, Touched& touched) {
    for (std::size_t i = 0; i < to.bodies.size(); ++i)
        if (from.bodies[i] != to.bodies[i])
            for (const Box& body : {from.bodies[i], to.bodies[i]}) touched.mark(reachOf(body));
    for (std::size_t i = 0; i < to.quiet.size(); ++i)
        if (from.quiet[i] != to.quiet[i])
            for (const Box& box : {from.quiet[i], to.quiet[i]}) touched.mark(box);
    for (std::size_t i = 0; i < to.pins.size(); ++i)
        if (from.pins[i] != to.pins[i])
            for (const Point p : {from.pins[i].at, to.pins[i].at}) touched.mark(boxAt(p));
}

void RouterGrid::change(const RouterInput& from, const RouterInput& to) {
    for (std::size_t i = 0; i < to.bodies.size(); ++i) {
        if (from.bodies[i] == to.bodies[i]) continue;
        coverBody(from.bodies[i], -1);
        coverBody(to.bodies[i], 1);
    }
    for (std::size_t i = 0; i < to.quiet.size(); ++i) {
        if (from.quiet[i] == to.quiet[i]) continue;
        cover(m_quiet, from.quiet[i], -1);
        cover(m_quiet, to.quiet[i], 1);
    }
    if (from.pins == to.pins) return;
    for (const RouterPin& pin : from.pins) {
        const std::size_t v = at(vertex(pin.at));
        m_pinCount[v] = 0;
        m_pinLead[v] = -1;
        m_pinNet[v] = noNet;
    }
    setPins(to.pins);
}

void RouterGrid::cover(Counts& counts, const Box& box, int by) {
    overGrid(box, m_origin, m_width, m_height,
             [&](std::size_t v) { counts[v] = static_cast<std::uint16_t>(counts[v] + by); });
}

void RouterGrid::coverBody(const Box& body, int by) {
    cover(m_blocked, body.grown(clearance), by);
    cover(m_near, reachOf(body), by);
}

void RouterGrid::setPins(const std::vector<RouterPin>& pins) {
    for (const RouterPin& pin : pins) {
        const std::size_t v = at(vertex(pin.at));
        const int net = pin.net >= 0 ? pin.net : openPin;
        // Parts laid on one another can put two nets' pins on one spot: then no wire may touch it.
        m_pinNet[v] = static_cast<std::int16_t>(m_pinCount[v] == 0 || m_pinNet[v] == net ? net : openPin);
        if (m_pinCount[v] < 255) ++m_pinCount[v];
        m_pinLead[v] = static_cast<std::int8_t>(headingOf(pin.lead));
    }
}

Box RouterGrid::area() const {
    return {m_origin.x, m_origin.y, m_origin.x + (m_width - 1) * pitch, m_origin.y + (m_height - 1) * pitch};
}

int RouterGrid::vertex(Point p) const {
    return (p.y - m_origin.y) / pitch * m_width + (p.x - m_origin.x) / pitch;
}

Point RouterGrid::point(int v) const {
    return {m_origin.x + v % m_width * pitch, m_origin.y + v / m_width * pitch};
}

void RouterGrid::setEdge(int v, int heading, int net) {
    m_edges[at(v)][at(heading)] = static_cast<std::int16_t>(net);
    m_edges[at(v + step(heading))][at((heading + 2) % 4)] = static_cast<std::int16_t>(net);
}

int RouterGrid::degree(int net, int v) const {
    int count = 0;
    for (int heading = 0; heading < 4; ++heading)
        if (edge(v, heading) == net) ++count;
    return count;
}

bool RouterGrid::crossed(int net, int v) const {
    for (int heading = 0; heading < 4; ++heading)
        if (const int other = edge(v, heading); other != noNet && other != net) return true;
    return false;
}

int RouterGrid::costAmongOthers(int net, int v, int heading) const {
    int cost = (m_near[at(v)] ? nearBodyCost : 0) + (m_quiet[at(v)] ? quietCost : 0);
    const auto foreign = [net](int other) { return other != noNet && other != net; };
    if (wired(v)) { // most points are not
        const int ahead = edge(v, heading), behind = edge(v, (heading + 2) % 4);
        if (foreign(ahead) || foreign(behind)) return never;
        const int left = edge(v, (heading + 3) % 4), right = edge(v, (heading + 1) % 4);
        if (foreign(left) || foreign(right)) {
            if (left != right || ahead == net || m_pinNet[at(v)] == net) return never;
            cost += crossingCost;
        }
    }
    // Wires that run beside one another at one step's distance are hard to follow.
    const int side = step((heading + 1) % 4);
    for (const int beside : {v + side, v - side}) {
        if (beside < m_width || beside >= size() - m_width) continue;
        if (wired(beside) && (foreign(edge(beside, heading)) || foreign(edge(beside, (heading + 2) % 4))))
            cost += hugCost;
        if (m_pinNet[at(beside)] != noNet && m_pinNet[at(beside)] != net) cost += hugCost;
    }
    return cost;
}

} // namespace blinkwright::widgets::hookup
