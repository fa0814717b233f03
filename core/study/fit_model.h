// The figures of a board that measurements can be held against, and how they move with its values: settled
// states of slightly varied boards.
//
//   FitModel model(unknowns, wanted, settled, request);
//   model.figures(dials)->period_s;  model.slopes(dials)      // one row a figure of `wanted`
#pragma once

#include "core/engine/transient.h"
#include "core/study/fit_unknowns.h"

#include <Eigen/Core>

#include <atomic>

namespace blinkwright::study {

enum class FitFigure {
    rate, ///< of the first timer's output, as the next four
    period,
    high,
    low,
    duty,
    firstHigh,     ///< from power-on
    supplyVoltage, ///< at the terminals, mean over a period
    outputHigh,    ///< pin 3 against pin 1, mean over the high phase
    outputLow,
    lampCurrent, ///< mean while the lamp is lit
};

struct FigureOf {
    FitFigure figure{};
    circuit::PartId lamp = {}; ///< of lampCurrent
    bool operator==(const FigureOf&) const = default;
};

/// One figure of a settled board.
/// @param board as settled, with the initial voltages that it has at power-on.
/// @return nothing where the board has none: a lamp that stays dark, a first flash that does not end.
std::optional<double> figureOf(const FigureOf& figure, const devices::Board& board,
                               const engine::Settled& settled, const engine::RunRequest& request);

/// What a settled board takes from its first supply, mean over a period; 0 without one.
double supplyMean_A(const devices::Board& board, const engine::Settled& settled);

class FitModel {
  public:
    /// @param settled of a board like it, where the first search begins.
    FitModel(const Unknowns& unknowns, std::vector<FigureOf> wanted, const engine::Settled& settled,
             const std::atomic<bool>* cancel);

    /// All wanted figures; nothing where the board does not blink or has not all of them.
    std::optional<Eigen::VectorXd> figures(const Eigen::VectorXd& dials);
    /// Derivatives of the figures, a column a dial.
    std::optional<Eigen::MatrixXd> slopes(const Eigen::VectorXd& dials);
    /// How many settled states were searched for.
    int settles() const { return m_settles; }
    const engine::RunRequest& request() const { return m_request; }

  private:
    const Unknowns& m_unknowns;
    const std::vector<FigureOf> m_wanted;
    const engine::RunRequest m_request;
    std::vector<double> m_start;
    int m_settles = 0;
};

} // namespace blinkwright::study
