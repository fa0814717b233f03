// Made-up sequences of all that a hand can do, from a seed: whatever they come to, the circuit stays whole,
// its file reads back the same, and undo and redo pass through the very same states.
#include "core/circuit/part_edits.h"
#include "core/circuit/wiring_edits.h"
#include "places.h"
#include "tests/core/circuit/snapshot.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <random>
#include <set>

namespace blinkwright::circuit {
namespace {

using tests::Snapshot;

/// The first broken promise of a circuit, or nothing.
std::string brokenPromise(const Circuit& c) {
    std::set<std::string> refs, names;
    std::set<std::uint32_t> ids;
    std::set<PinRef> pins;
    for (const Part& part : c.parts()) {
        if (!refs.insert(part.ref).second) return part.ref + " is there twice";
        if (!ids.insert(part.id.n).second) return part.ref + " has an id that is in use";
        for (const auto& [key, value] : part.values)
            if (!Circuit::canSet(part.kind, key, value)) return part.ref + "." + key + " is out of range";
    }
    for (const Net& net : c.nets()) {
        if (!names.insert(net.name).second) return "net " + net.name + " is there twice";
        if (!ids.insert(net.id.n).second) return "net " + net.name + " has an id that is in use";
        for (const PinRef pin : net.pins) {
            const Part* part = c.find(pin.part);
            if (!part) return "net " + net.name + " has a pin of no part";
            if (pin.pin < 0 || static_cast<std::size_t>(pin.pin) >= info(part->kind).pins.size())
                return "net " + net.name + " has a pin that " + part->ref + " has not";
            if (!pins.insert(pin).second) return c.pinText(pin) + " is in two nets";
        }
    }
    if (auto ok = c.canTie(c.ties); !ok) return ok.fault().message();
    if (auto ok = c.canReel(c.reels); !ok) return ok.fault().message();
    const std::string text = io::writeCircuit(c);
    const auto read = io::readCircuit(text);
    if (!read) return "the file is refused: " + read.fault().message();
    if (!read.value().sameAs(c)) return "the file holds another circuit";
    if (io::writeCircuit(read.value()) != text) return "the file is written otherwise when read";
    return {};
}

/// A hand that does anything, now and then something senseless.
class Hand {
  public:
    explicit Hand(std::uint32_t seed) : m_dice(seed) {}

    Result<Edit> anything(const Circuit& c) {
        switch (below(15)) {
        case 0:
        case 1:
            return justEdit(addPart(c, allKinds[below(std::size(allKinds))], place()));
        case 2:
        case 3:
        case 4:
        case 5:
            return joinPins(c, pin(c), pin(c));
        case 6:
            return joinToNet(c, pin(c), net(c));
        case 7:
            return below(2) ? putIntoNet(c, pin(c), net(c)) : putIntoNet(c, pin(c), name());
        case 8:
            return takeOffNet(c, pin(c));
        case 9:
            return below(2) ? moveWireEnd(c, pin(c), pin(c)) : moveWireEnd(c, pin(c), net(c));
        case 10: {
            const Places some = places(c, below(8) == 0 ? 30 : 2);
            std::vector<PartId> ids;
            for (const auto& [id, where] : some) ids.push_back(id);
            return deleteParts(c, ids);
        }
        case 11: {
            const Places some = places(c, 4);
            const auto which = below(3);
            return which == 0   ? turnParts(c, some)
                   : which == 1 ? mirrorParts(c, some)
                                : moveParts(c, some, 30, -70);
        }
        case 12:
            return below(2) ? renamePart(c, part(c), "R" + std::to_string(below(6)))
                            : renameNet(c, net(c), name());
        case 13:
            return justEdit(duplicateParts(c, places(c, 3), 20, 20));
        default:
            return value(c);
        }
    }

  private:
    std::size_t below(std::size_t n) { return m_dice() % n; }
    static Result<Edit> justEdit(Result<NewParts> parts) {
        if (!parts) return parts.fault();
        return std::move(parts).value().edit;
    }
    Placement place() {
        return {10.0 * static_cast<double>(below(60)),
                -10.0 * static_cast<double>(below(60)),
                static_cast<int>(90 * below(4)),
                below(2) == 1,
                {}};
    }
    PartId part(const Circuit& c) {
        return c.parts().empty() ? PartId{9999} : c.parts()[below(c.parts().size())].id;
    }
    PinRef pin(const Circuit& c) {
        const PartId id = part(c);
        const Part* found = c.find(id);
        return {id, found ? static_cast<int>(below(info(found->kind).pins.size())) : 0};
    }
    NetId net(const Circuit& c) {
        return c.nets().empty() ? NetId{9999} : c.nets()[below(c.nets().size())].id;
    }
    std::string name() {
        constexpr const char* names[] = {"supply", "ground", "timing", "wire 1", "wire 3", "lamp", ""};
        return names[below(std::size(names))];
    }
    Places places(const Circuit& c, std::size_t most) {
        Places some;
        for (std::size_t k = 0; k < most; ++k) {
            const PartId id = part(c);
            if (!c.find(id)) continue;
            const Placement* stated = c.placement(id);
            some[id] = stated ? *stated : place();
        }
        return some;
    }
    Result<Edit> value(const Circuit& c) {
        const Part* found = c.find(part(c));
        if (!found || info(found->kind).keys.front().shape != Shape::number)
            return Fault{"", "nothing to set"};
        return setValue(c, below(2) ? PartSet::A : PartSet::B, found->id,
                        std::string(info(found->kind).keys.front().key),
                        1.0 + static_cast<double>(below(90)));
    }

    std::mt19937 m_dice;
};

/// One sequence: each edit undone and done again at once, then all the way back and all the way forth.
void playSequence(Circuit c, std::uint32_t seed, int edits, std::size_t& done) {
    Hand hand(seed);
    std::vector<Snapshot> states{Snapshot(c)};
    std::vector<Edit> back;
    for (int k = 0; k < edits; ++k) {
        const auto edit = hand.anything(c);
        if (!edit) {
            EXPECT_FALSE(edit.fault().text.empty());
            continue;
        }
        EXPECT_FALSE(describe(c, edit.value()).empty());
        auto inverse = apply(c, edit.value());
        ASSERT_TRUE(inverse) << "a wish that was made into an edit was refused: "
                             << inverse.fault().message();
        ASSERT_EQ(brokenPromise(c), "") << describe(c, edit.value());
        states.emplace_back(c);
        back.push_back(std::move(inverse).value());
    }
    done += back.size();
    const auto walk = [&](std::size_t from, int step) {
        for (std::size_t k = from; k < back.size(); k += static_cast<std::size_t>(step)) {
            auto other = apply(c, back[k]);
            ASSERT_TRUE(other) << other.fault().message();
            back[k] = std::move(other).value();
            ASSERT_EQ(Snapshot(c), states[step < 0 ? k : k + 1]);
        }
    };
    walk(back.size() - 1, -1); // the index runs below 0 and so past the end
    walk(0, 1);
    walk(back.size() - 1, -1);
}

TEST(EditSequences, KeepTheCircuitWholeAndUndoRestoresEveryStep) {
    const Circuit sample =
        io::readCircuit(
            io::readBytes(BLINKWRIGHT_SAMPLES "/mole-light.blinkwright", io::maxCircuitBytes).value())
            .value();
    const char* wanted = std::getenv("BLINKWRIGHT_SEQUENCES");
    const int sequences = wanted ? std::atoi(wanted) : 2000;
    std::size_t done = 0;
    for (int k = 0; k < sequences; ++k) {
        SCOPED_TRACE("sequence " + std::to_string(k));
        playSequence(k % 2 ? sample : Circuit{}, static_cast<std::uint32_t>(k), 24, done);
        if (HasFatalFailure()) return;
    }
    EXPECT_GT(done, static_cast<std::size_t>(sequences) * 8); // the hand is not refused all the time
}

} // namespace
} // namespace blinkwright::circuit
