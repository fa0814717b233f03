// Pictures that tests leave for people to look at: build/pictures/NAME-light.png and -dark.png.
#pragma once

#include "places.h"
#include "widgets/theme/theme.h"

#include <QApplication>
#include <QDir>
#include <QStyleFactory>
#include <QWidget>
#include <gtest/gtest.h>

namespace blinkwright::test {

/// Shows a widget in both themes and saves what it looks like.
template <class View>
void savePictures(View& view, const QString& name, QSize size) {
    QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    for (auto mode : {widgets::Theme::Mode::light, widgets::Theme::Mode::dark}) {
        const widgets::Theme& theme = widgets::Theme::of(mode);
        QApplication::setPalette(theme.palette());
        view.setTheme(theme);
        view.resize(size);
        view.show();
        QApplication::processEvents();
        const QString path = QStringLiteral(BLINKWRIGHT_PICTURES "/%1-%2.png")
                                 .arg(name, mode == widgets::Theme::Mode::light ? "light" : "dark");
        EXPECT_TRUE(view.grab().save(path)) << path.toStdString();
    }
}

} // namespace blinkwright::test
