#include "core/circuit/reels.h"

#include <algorithm>

namespace blinkwright::circuit {

namespace {

using Reels = std::vector<std::vector<PartId>>;

std::optional<std::size_t> placeIn(const Reels& reels, PartId part) {
    for (std::size_t r = 0; r < reels.size(); ++r)
        if (std::ranges::find(reels[r], part) != reels[r].end()) return r;
    return std::nullopt;
}

Reels without(Reels reels, PartId part) {
    for (auto& reel : reels) std::erase(reel, part);
    return reels;
}

Edit setReels(Reels reels) {
    std::erase_if(reels, [](const auto& reel) { return reel.size() < 2; });
    return {edits::SetReels{std::move(reels)}};
}

} // namespace

std::optional<std::size_t> reelOf(const Circuit& circuit, PartId part) {
    return placeIn(circuit.reels, part);
}

Edit onReelWith(const Circuit& circuit, PartId part, PartId other) {
    Reels reels = without(circuit.reels, part);
    if (const auto place = placeIn(reels, other))
        reels[*place].push_back(part);
    else
        reels.push_back({other, part});
    return setReels(std::move(reels));
}

Edit offReel(const Circuit& circuit, PartId part) {
    return setReels(without(circuit.reels, part));
}

} // namespace blinkwright::circuit
