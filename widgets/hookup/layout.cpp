#include "widgets/hookup/layout.h"

#include <cstdlib>
#include <deque>
#include <limits>

namespace blinkwright::widgets::hookup {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;

namespace {

constexpr int columnStep = 100;  ///< from one standing part to the next: room for its label
constexpr int firstColumn = 160; ///< of a block, from the timer's middle
constexpr int firstLeft = 190;   ///< the same on the left, where the wires of pins 1 and 4 pass
constexpr int blockGap = 120;    ///< between the outermost columns of two blocks
constexpr int upperRow = -110, middleRow = 20, lowerRow = 120;

constexpr int farAway = std::numeric_limits<int>::max();

class Layout {
  public:
    Layout(const Circuit& circuit, TimerLook look)
        : m_circuit(circuit), m_look(look), m_rails(railNets(circuit)) {
        for (const circuit::Net& net : circuit.nets())
            for (const circuit::PinRef pin : net.pins) m_netOf[pin] = net.id;
    }

    std::map<PartId, Pose> run() {
        std::vector<const Part*> timers, rest;
        for (const Part& part : m_circuit.parts()) {
            if (part.kind == PartKind::timer) timers.push_back(&part);
            if (const circuit::Placement* p = m_circuit.placement(part.id))
                put(part, poseOf(*p));
            else if (part.kind != PartKind::timer)
                rest.push_back(&part);
        }
        findHomes(timers, rest);

        bool first = true;
        for (const Part* timer : timers) {
            if (!m_poses.contains(timer->id)) putTimer(*timer, first);
            first = false;
            const Point middle = m_poses.at(timer->id).at;
            for (const Part* part : rest)
                if (m_home[part->id] == timer->id && !acrossRails(*part)) putInBlock(*part, middle);
        }
        for (const bool supplies : {false, true})
            for (const Part* part : rest)
                if (!m_poses.contains(part->id) && (part->kind == PartKind::supply) == supplies)
                    putFarLeft(*part);
        return m_poses;
    }

  private:
    std::optional<NetId> netOf(PartId part, int pin) const {
        const auto it = m_netOf.find({part, pin});
        return it == m_netOf.end() ? std::nullopt : std::optional(it->second);
    }
    bool on(PartId part, int pin, const std::optional<NetId>& net) const {
        return net && netOf(part, pin) == net;
    }
    bool touches(const Part& part, const std::optional<NetId>& net) const {
        for (int pin = 0; pin < static_cast<int>(pinsOf(part.kind, m_look).size()); ++pin)
            if (on(part.id, pin, net)) return true;
        return false;
    }
    bool acrossRails(const Part& part) const {
        return part.kind == PartKind::supply || (touches(part, m_rails.plus) && touches(part, m_rails.zero));
    }

    /// Steps from a timer's pins to every net, through parts but not through the rails or other timers.
    std::map<NetId, int> reach(PartId timer, std::initializer_list<int> pins) const {
        std::map<NetId, int> steps;
        std::deque<NetId> queue;
        const auto take = [&](std::optional<NetId> net, int step) {
            if (!net || net == m_rails.plus || net == m_rails.zero || steps.contains(*net)) return;
            steps[*net] = step;
            queue.push_back(*net);
        };
        for (const int pin : pins) take(netOf(timer, pin), 0);
        while (!queue.empty()) {
            const NetId at = queue.front();
            queue.pop_front();
            const circuit::Net* net = m_circuit.find(at);
            for (const circuit::PinRef pin : net ? net->pins : std::vector<circuit::PinRef>{}) {
                const Part* part = m_circuit.find(pin.part);
                if (!part || part->kind == PartKind::timer) continue;
                for (int other = 0; other < static_cast<int>(pinsOf(part->kind, m_look).size()); ++other)
                    take(netOf(part->id, other), steps[at] + 1);
            }
        }
        return steps;
    }

    int nearest(const Part& part, const std::map<NetId, int>& steps) const {
        int best = farAway;
        for (int pin = 0; pin < static_cast<int>(pinsOf(part.kind, m_look).size()); ++pin)
            if (const auto net = netOf(part.id, pin))
                if (const auto it = steps.find(*net); it != steps.end()) best = std::min(best, it->second);
        return best;
    }

    void findHomes(const std::vector<const Part*>& timers, const std::vector<const Part*>& parts) {
        using namespace circuit::timerPin;
        std::map<PartId, int> best;
        for (const Part* timer : timers) {
            const auto fromOutput = reach(timer->id, {output});
            const auto fromTiming = reach(timer->id, {discharge, threshold, trigger, control, reset});
            for (const Part* part : parts) {
                const int out = nearest(*part, fromOutput), timing = nearest(*part, fromTiming);
                const int near = std::min(out, timing);
                if (m_home.contains(part->id) && near >= best[part->id]) continue;
                best[part->id] = near;
                m_home[part->id] = timer->id;
                m_atOutput[part->id] = near == farAway || out < timing;
                m_steps[part->id] = out < timing ? fromOutput : fromTiming;
                m_onControl[part->id] =
                    netOf(timer->id, control) && touches(*part, netOf(timer->id, control));
            }
        }
    }

    /// Turned so that the pin nearer to the + rail, or to the timer, is on top.
    int turnFor(const Part& part) const {
        const auto height = [&](int pin) {
            if (on(part.id, pin, m_rails.plus)) return -1;
            if (on(part.id, pin, m_rails.zero)) return farAway;
            const auto net = netOf(part.id, pin);
            const auto home = m_steps.find(part.id);
            if (!net || home == m_steps.end()) return farAway - 1;
            const auto it = home->second.find(*net);
            return it == home->second.end() ? farAway - 1 : it->second;
        };
        return height(0) <= height(1) ? 90 : 270;
    }

    void putInBlock(const Part& part, Point timer) {
        const bool atOutput = m_atOutput[part.id], left = isLeft(part.id);
        const bool upper = touches(part, m_rails.plus), lower = touches(part, m_rails.zero);
        const int outputRow = pinsOf(PartKind::timer, m_look)[circuit::timerPin::output].y;
        const int row = upper ? upperRow : lower ? lowerRow : outputRow;
        int column = left ? firstLeft : firstColumn;
        if (!atOutput && !m_onControl[part.id]) column += columnStep / 2;
        Pose pose{{timer.x + (left ? -column : column), timer.y + row}, turnFor(part), false};
        // What follows pin 3 lies in its line, the end that is nearer to the timer towards it.
        if (atOutput && row == outputRow) pose.turn = (pose.turn + (left ? 90 : 270)) % 360;
        while (!isFree(part.kind, pose)) pose.at.x += left ? -columnStep : columnStep;
        put(part, pose);
    }

    void putTimer(const Part& timer, bool first) {
        Pose pose;
        if (!first || !m_taken.empty()) {
            int right = -farAway;
            for (const Box& box : m_taken) right = std::max(right, box.right);
            // Columns go out from here on both sides; those on the left are counted beforehand.
            int lefts = 0;
            for (const auto& [part, home] : m_home)
                if (home == timer.id && isLeft(part)) ++lefts;
            pose.at.x = (right + blockGap) / pitch * pitch + firstLeft + columnStep * std::min(lefts, 4);
        }
        while (!isFree(timer.kind, pose)) pose.at.x += columnStep;
        put(timer, pose);
    }

    void putFarLeft(const Part& part) {
        int left = m_taken.empty() ? 0 : farAway;
        for (const Box& box : m_taken) left = std::min(left, box.left);
        Pose pose{{(left - 60) / pitch * pitch, middleRow}, turnFor(part), false};
        while (!isFree(part.kind, pose)) pose.at.x -= columnStep;
        put(part, pose);
    }

    bool isFree(PartKind kind, const Pose& pose) const {
        const Box mine = placed(extentOf(kind, m_look), pose).grown(pitch);
        return std::none_of(m_taken.begin(), m_taken.end(), [&](const Box& box) { return box.meets(mine); });
    }

    void put(const Part& part, const Pose& pose) {
        m_poses[part.id] = pose;
        m_taken.push_back(placed(extentOf(part.kind, m_look), pose));
    }

    bool isLeft(PartId part) const {
        const auto it = m_atOutput.find(part);
        return it != m_atOutput.end() && it->second;
    }

    const Circuit& m_circuit;
    TimerLook m_look;
    RailNets m_rails;
    std::map<circuit::PinRef, NetId> m_netOf;
    std::map<PartId, Pose> m_poses;
    std::vector<Box> m_taken;
    std::map<PartId, PartId> m_home;
    std::map<PartId, bool> m_atOutput, m_onControl;
    std::map<PartId, std::map<NetId, int>> m_steps;
};

} // namespace

RailNets railNets(const Circuit& circuit) {
    for (const Part& part : circuit.parts())
        if (part.kind == PartKind::supply) return {circuit.netOf({part.id, 0}), circuit.netOf({part.id, 1})};
    return {};
}

std::map<PartId, Pose> layOut(const Circuit& circuit, TimerLook look) {
    std::map<PartId, Pose> stated;
    for (const Part& part : circuit.parts())
        if (const circuit::Placement* p = circuit.placement(part.id)) stated.emplace(part.id, poseOf(*p));
    return stated.size() == circuit.parts().size() ? stated : Layout(circuit, look).run();
}

} // namespace blinkwright::widgets::hookup
