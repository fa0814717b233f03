// The looks of the program, and each text in each of them with what it stands on: what has to keep
// WCAG 2.2, 1.4.3 (4.5 to 1).
//
//   for (const auto& [name, theme] : allLooks())
//       for (const auto& [what, colour, ground] : paintedTexts(theme)) least = std::min(least,
//       contrast(colour, ground));
#pragma once

#include "core/study/findings.h"
#include "widgets/findings/finding_row.h"
#include "widgets/theme/theme.h"

#include <utility>
#include <vector>

namespace blinkwright::widgets::test {

struct Look {
    const char* name;
    Theme theme;
};

inline std::vector<Look> allLooks() {
    const Theme &light = Theme::of(Theme::Mode::light), &dark = Theme::of(Theme::Mode::dark);
    return {{"light", light},
            {"dark", dark},
            {"lightProjector", light.forProjector()},
            {"darkProjector", dark.forProjector()}};
}

struct TextOnGround {
    const char* what;
    QColor colour, ground;
};

/// What the program paints by itself.
inline std::vector<TextOnGround> paintedTexts(const Theme& theme) {
    std::vector<TextOnGround> texts;
    for (const QColor& ground : {theme.paper, theme.window, theme.palette().color(QPalette::AlternateBase)}) {
        texts.push_back({"ink", theme.ink, ground});
        texts.push_back({"quiet ink", theme.quietInk, ground});
        texts.push_back({"Set A in heads and captions", theme.setA, ground});
        texts.push_back({"Set B in heads and captions", theme.setB, ground});
        texts.push_back({"measured", theme.measured, ground});
        texts.push_back({"moment", theme.moment, ground});
        texts.push_back({"accent", theme.accent, ground});
        for (const auto severity : {study::Severity::fault, study::Severity::overstress,
                                    study::Severity::doubt, study::Severity::caution, study::Severity::note})
            texts.push_back({"a finding's grade", severityColour(theme, severity), ground});
    }
    texts.push_back({"the moment's time on its mark", theme.paper, theme.moment});
    // The caption "switching levels" has the colour of the levels.
    texts.push_back({"caption of the levels", theme.level, theme.paper});
    return texts;
}

/// What the toolkit paints by the theme's palette, but for what cannot be used: 1.4.3 exempts that.
inline std::vector<TextOnGround> controlTexts(const Theme& theme) {
    const QPalette palette = theme.palette();
    std::vector<TextOnGround> texts;
    using R = QPalette;
    for (const auto group : {QPalette::Active, QPalette::Inactive})
        for (const auto& [text, ground] : {std::pair{R::WindowText, R::Window},
                                           {R::Text, R::Base},
                                           {R::Text, R::AlternateBase},
                                           {R::ButtonText, R::Button},
                                           {R::PlaceholderText, R::Base},
                                           {R::PlaceholderText, R::Window},
                                           {R::ToolTipText, R::ToolTipBase},
                                           {R::HighlightedText, R::Highlight},
                                           {R::Link, R::Base},
                                           {R::Link, R::Window},
                                           {R::LinkVisited, R::Base},
                                           {R::LinkVisited, R::Window},
                                           {R::BrightText, R::Window},
                                           {R::ButtonText, R::Window},
                                           {R::WindowText, R::Base}})
            texts.push_back({"a control's text", palette.color(group, text), palette.color(group, ground)});
    return texts;
}

} // namespace blinkwright::widgets::test
