// What fits and budgets are written as.
#include "core/io/fit_report.h"

#include "tests/core/study/measured_boards.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

namespace blinkwright::io {
namespace {

using circuit::PartSet;

study::FitOutcome fitOf(Workbench& bench) {
    return study::fit(bench.circuit, PartSet::A, {}).value();
}
Workbench light() {
    return tests::astableWithLamp({.supply_V = 6}, 270);
}

TEST(FitReport, HasTheKeysOfTheFormatAndNullForWhatWasNotMeasured) {
    Workbench bench = light();
    tests::measure(bench.circuit, circuit::Count{20, {20.2, 0.1}});
    const study::FitOutcome fit = fitOf(bench);
    const auto json = nlohmann::json::parse(fitJson(fit));
    EXPECT_EQ(json["format"], "blinkwright-fit");
    EXPECT_EQ(json["version"], 1);
    EXPECT_DOUBLE_EQ(json["measured"]["period"], 1.01);
    EXPECT_TRUE(json["measured"]["duty"].is_null());
    EXPECT_TRUE(json["measured"]["high"].is_null());
    EXPECT_DOUBLE_EQ(json["measured_uncertainty"]["period"], 0.005);
    for (const char* key : {"period", "high", "low", "duty"}) {
        EXPECT_TRUE(json["before"][key].is_number()) << key;
        EXPECT_TRUE(json["after"][key].is_number()) << key;
    }
    const auto& c1 = json["values"]["C1.capacitance"];
    EXPECT_DOUBLE_EQ(c1["nominal"], 10e-6);
    EXPECT_DOUBLE_EQ(c1["value"], tests::fitted(fit, "C1.capacitance").value);
    EXPECT_DOUBLE_EQ(c1["uncertainty"], tests::fitted(fit, "C1.capacitance").uncertainty);
    EXPECT_TRUE(json["values"].contains("R1.resistance") && json["values"].contains("R2.resistance"));
    EXPECT_EQ(json["agrees"], fit.agrees);
    EXPECT_EQ(json["notes"].size(), fit.notes.size());
    EXPECT_FALSE(json.contains("reason"));
}

TEST(FitReport, WithoutAnAnswerItSaysWhy) {
    Workbench bench = light();
    const auto json = nlohmann::json::parse(fitJson(fitOf(bench)));
    EXPECT_TRUE(json["agrees"].is_null());
    EXPECT_TRUE(json["after"]["period"].is_null());
    EXPECT_FALSE(json["reason"].get<std::string>().empty());
}

TEST(FitReport, TheTablesHaveAsManyCellsInEachLineAsInTheirHead) {
    Workbench bench = light();
    tests::measure(bench.circuit, circuit::Count{20, {20.2, 0.1}});
    const auto cells = [](const std::string& line) { return std::ranges::count(line, ',') + 1; };
    std::istringstream values(fitCsv(fitOf(bench)));
    long wanted = 0;
    for (std::string line; std::getline(values, line);) {
        if (line.starts_with("value,") || line.starts_with("figure,")) wanted = cells(line);
        EXPECT_EQ(cells(line), wanted) << line;
    }
    const study::Budget budget = study::predictedBudget(bench.circuit, PartSet::A, study::BudgetFigure::rate,
                                                        study::BudgetModel::textbook, {})
                                     .value();
    std::istringstream rows(budgetCsv(budget, "rate predicted:"));
    wanted = 0;
    long lines = 0;
    for (std::string line; std::getline(rows, line); ++lines) {
        if (wanted == 0) wanted = cells(line);
        EXPECT_EQ(cells(line), wanted) << line;
    }
    EXPECT_EQ(lines, static_cast<long>(budget.rows.size()) + 4);
}

} // namespace
} // namespace blinkwright::io
