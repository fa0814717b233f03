// Circuits made up from a seed, through the whole program: written, opened in the window, run, changed, taken
// back and saved. Whatever they are, the window stays whole and says something. BLINKWRIGHT_WINDOW_CIRCUITS
// asks for a longer run than the usual one.
#include "tests/app/window_fixture.h"
#include "tests/core/engine/random_wiring.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"

#include <QUndoStack>

namespace blinkwright::test {

namespace {

constexpr int usual = 40, patience_ms = 3000;
constexpr std::uint64_t firstSeed = 90'000; // other ones than those of the engine's own tests

class AnyCircuit : public WindowFixture {
  protected:
    /// Until the picture of the circuit is there, or for so long: some circuits take their budget.
    void settle() const {
        waitFor([&] { return !window->live().isBusy(); }, patience_ms);
    }
};

TEST_F(AnyCircuit, OpensRunsChangesAndSaves) {
    const int count = qEnvironmentVariableIsSet("BLINKWRIGHT_WINDOW_CIRCUITS")
                          ? qEnvironmentVariableIntValue("BLINKWRIGHT_WINDOW_CIRCUITS")
                          : usual;
    int shown = 0, blinking = 0;
    for (int k = 0; k < count; ++k) {
        const std::uint64_t seed = firstSeed + static_cast<std::uint64_t>(k);
        SCOPED_TRACE(seed);
        const QString path = inFolder("any.blinkwright");
        writeFile(path, QByteArray::fromStdString(io::writeCircuit(tests::randomCircuit(seed))));
        ASSERT_TRUE(window->openFile(path));
        settle();
        const auto study = window->live().shown();
        shown += study != nullptr;
        // Curves, or a sentence in their place.
        if (!window->live().isBusy() && !circuit().parts().empty()) {
            EXPECT_NE(study && !study->curves.time_s.empty(),
                      !window->curves().findChild<widgets::StripPlot*>()->message().isEmpty());
        }
        blinking += study && study->readings.verdict == study::Verdict::blinks;

        const QByteArray before = text();
        for (const circuit::Part& part : std::vector<circuit::Part>(circuit().parts())) {
            const std::optional<circuit::Value> value =
                circuit().value(circuit::PartSet::A, part.id, "resistance");
            if (!value || !std::holds_alternative<double>(*value)) continue;
            emit window->values().valueWished({part.id, "resistance"}, 2 * std::get<double>(*value), 0);
            break;
        }
        settle();
        ASSERT_TRUE(window->grab().save(inFolder("any.png"))); // every panel paints
        while (undo().canUndo()) undo().undo();
        EXPECT_EQ(text(), before);
        ASSERT_TRUE(window->document().saveAs(inFolder("again.blinkwright")));
        app::Document again;
        ASSERT_TRUE(again.open(inFolder("again.blinkwright")));
        EXPECT_TRUE(again.circuit().sameAs(circuit()));
    }
    EXPECT_GT(shown, count / 2) << "most must come to a picture, or this proves little";
    EXPECT_GT(blinking, 0);
    EXPECT_LT(blinking, count);
}

} // namespace

} // namespace blinkwright::test
