// What a gesture shows while it goes on, over the drawing and in its units: the wire that is being drawn with
// the pins it may end on, the rubber band, the part that hangs on the pointer, a chosen net.
//
//   paintPreview(painter, hand, scene, theme);
#pragma once

#include "widgets/hookup/drawing_scene.h"
#include "widgets/theme/theme.h"

#include <QPainter>

namespace blinkwright::widgets::hookup {

void paintPreview(QPainter& painter, const Gestures& hand, const Drawing& drawing, const DrawingScene& scene,
                  const Theme& theme);
void paintChosenNet(QPainter& painter, circuit::NetId net, const DrawingScene& scene, const Theme& theme);
/// What an empty Hook-up invites to, in its middle. In pixels of the view.
void paintInvitation(QPainter& painter, const QRectF& view, const Theme& theme);

} // namespace blinkwright::widgets::hookup
