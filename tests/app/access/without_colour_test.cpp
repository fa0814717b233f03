// WCAG 2.2, 1.4.1: colour is never the only difference between two things that are shown together.
#include "app/second_set.h"
#include "tests/app/access/access_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/rooms/trend_plot.h"

#include <set>

namespace blinkwright::test {
namespace {

class WithoutColour : public AccessTest {
  protected:
    /// How wide and how dashed the lines of a colour are, those with points in them.
    static std::set<std::pair<double, int>> linesIn(const QCustomPlot& plot, const QColor& colour) {
        std::set<std::pair<double, int>> out;
        for (int k = 0; k < plot.graphCount(); ++k) {
            const QCPGraph* graph = plot.graph(k);
            if (graph->pen().color() == colour && !graph->data()->isEmpty())
                out.insert({graph->pen().widthF(), graph->pen().style()});
        }
        return out;
    }
};

TEST_F(WithoutColour, CurvesOfTheTwoSetsDifferInWidth) {
    open();
    if (!action("Compare with Set B").isChecked()) action("Compare with Set B").trigger();
    ASSERT_TRUE(waitFor([this] { return window->second().shown() != nullptr; }));
    QTest::qWait(100);
    const auto& plot = *window->curves().findChild<widgets::StripPlot*>();
    const widgets::Theme& theme = window->appearance().theme();
    std::set<double> first, second;
    for (const auto& [width, style] : linesIn(plot, theme.setA)) first.insert(width);
    for (const auto& [width, style] : linesIn(plot, theme.setB))
        if (width > 1) second.insert(width); // 1: its switching levels
    ASSERT_EQ(first.size(), 1U);
    ASSERT_EQ(second.size(), 1U);
    EXPECT_GE(*second.begin(), 1.5 * *first.begin());
}

TEST_F(WithoutColour, CurvesOfTheTwoSetsInATrendDifferInTheirDashes) {
    open();
    app::Room& room = window->rooms().open(QStringLiteral("trend"));
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    const auto& plot = *room.frame().findChild<widgets::TrendPlot*>();
    const widgets::Theme& theme = window->appearance().theme();
    const auto first = linesIn(plot, theme.setA), second = linesIn(plot, theme.setB);
    ASSERT_FALSE(first.empty());
    ASSERT_FALSE(second.empty());
    for (const auto& line : second)
        if (line.second != Qt::DotLine) {
            EXPECT_FALSE(first.contains(line));
        }
}

} // namespace
} // namespace blinkwright::test
