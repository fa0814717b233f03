// The tables of a spread: its figures, and its parts with their shares, sensitivities and reels.
//
//   FiguresTable figures;  figures.setFigure(spreadFigures(outcome)[0]);
//   PartsTable parts;      parts.setParts(outcome, figure, circuit, PartSet::A);
//   connect(&parts, &PartsTable::reelWished, ...);
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/rooms/spread_figures.h"
#include "widgets/theme/theme.h"

#include <QTableWidget>
#include <memory>
#include <optional>

namespace blinkwright::widgets {

class ShareBar;

class FiguresTable : public QTableWidget {
    Q_OBJECT
  public:
    explicit FiguresTable(QWidget* parent = nullptr);
    void setFigure(const std::optional<SpreadFigureView>& figure); ///< nothing: empty

  private:
    void fitToTexts();
};

class PartsTable : public QTableWidget {
    Q_OBJECT
  public:
    explicit PartsTable(QWidget* parent = nullptr);
    ~PartsTable() override;

    void setParts(const study::SpreadOutcome& outcome, const SpreadFigureView& figure,
                  const circuit::Circuit& circuit, circuit::PartSet set);
    void clear();
    void setTheme(const Theme& theme);

  signals:
    /// @param with a part on the reel that is meant; nothing: off its reel
    void reelWished(blinkwright::circuit::PartId part, std::optional<blinkwright::circuit::PartId> with);

  private:
    void addReelChoice(int row, const circuit::Circuit& circuit, const circuit::Part& part,
                       const std::vector<std::string>& refs);

    void showColour();

    Theme m_theme;
    circuit::PartSet m_set = circuit::PartSet::A;
    std::unique_ptr<ShareBar> m_bar;
};

/// A table as text with tabs, for the clipboard.
QString tableText(const QTableWidget& table);

} // namespace blinkwright::widgets
