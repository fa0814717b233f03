// The least contrast of a text to its ground, over all looks of the program:
//
//   contrasts    -> least_contrast 4.71 x
#include "tests/widgets/theme/texts_on_grounds.h"
#include "widgets/curves/curve_colours.h"

#include <algorithm>
#include <cstdio>
#include <limits>

int main() {
    using namespace blinkwright::widgets;
    double least = std::numeric_limits<double>::infinity();
    for (const auto& [name, theme] : test::allLooks()) {
        double ofLook = std::numeric_limits<double>::infinity();
        for (const auto& texts : {test::paintedTexts(theme), test::controlTexts(theme)})
            for (const auto& [what, colour, ground] : texts)
                ofLook = std::min(ofLook, contrast(colour, ground));
        std::fprintf(stderr, "%s: %.2f\n", name, ofLook);
        least = std::min(least, ofLook);
    }
    std::printf("least_contrast %.2f x\n", least);
    return 0;
}
