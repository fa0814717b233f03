#include "core/study/corner_search.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr double cornerAccuracy = 1e-6;
/// A change by less than this share of the figure is none.
constexpr double worthTaking = 1e-6;
constexpr int mostRounds = 12;
constexpr int refinings = 3; ///< each divides the step by four

} // namespace

CornerSearch::Tried CornerSearch::tryAll(const std::vector<Dials>& list, int sign, const Figure& figure) {
    Tried tried;
    const std::vector<BoardFigures> figures = m_boards.at(list, cornerAccuracy);
    for (std::size_t k = 0; k < list.size(); ++k) {
        if (!figures[k].blinks) {
            m_allBlinked = false;
            continue;
        }
        const double value = figure(figures[k]);
        if (tried.any && sign * (value - tried.value) <= 0) continue;
        tried = {k, true, value};
    }
    return tried;
}

std::optional<Extreme> CornerSearch::from(Dials start, int sign, const Figure& figure) {
    const Tried first = tryAll({start}, sign, figure);
    if (!first.any) return std::nullopt;
    Extreme best{std::move(start), first.value};
    double step = 0.5; // between the values tried; a dial has five of them at first
    int refined = 0;
    for (int round = 0; round < mostRounds; ++round) {
        std::vector<Dials> list;
        for (std::size_t d = 0; d < m_dials; ++d) {
            std::vector<double> values{-1, 1};
            for (int k = -2; k <= 2; ++k)
                values.push_back(std::clamp(step == 0.5 ? k * step : best.dials[d] + k * step, -1.0, 1.0));
            std::sort(values.begin(), values.end());
            values.erase(std::unique(values.begin(), values.end()), values.end());
            for (const double value : values) {
                if (value == best.dials[d]) continue;
                list.push_back(best.dials);
                list.back()[d] = value;
            }
        }
        if (list.empty()) return best;
        const Tried tried = tryAll(list, sign, figure);
        if (tried.any && sign * (tried.value - best.value) > worthTaking * std::abs(best.value)) {
            best = {list[tried.best], tried.value};
            continue;
        }
        const bool inside = std::ranges::any_of(best.dials, [](double dial) { return std::abs(dial) < 1; });
        if (!inside || refined++ == refinings) break;
        step /= 4;
    }
    return best;
}

} // namespace blinkwright::study
