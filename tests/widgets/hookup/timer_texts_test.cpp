// What is written on the timer, taken from the painter's own calls: each text with the way it is turned and
// the room that it takes.
#include "widgets/hookup/paint.h"

#include <QPaintDevice>
#include <QPaintEngine>

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {

namespace {

struct Written {
    QString text;
    QRectF room;
    QTransform way;
};

/// Takes note of texts and draws nothing.
class TextNotes : public QPaintEngine {
  public:
    TextNotes() : QPaintEngine(QPaintEngine::AllFeatures) {}
    std::vector<Written> texts;

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state() & DirtyTransform) m_transform = now.transform();
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        // The height of a capital, which is what digits and names of pins have.
        const double height = QFontMetricsF(item.font()).capHeight();
        texts.push_back({item.text(),
                         m_transform.mapRect(QRectF(at.x(), at.y() - height, item.width(), height)),
                         m_transform});
    }
    Type type() const override { return User; }

  private:
    QTransform m_transform;
};

class NotePad : public QPaintDevice {
  public:
    mutable TextNotes notes;
    QPaintEngine* paintEngine() const override { return &notes; }

  protected:
    int metric(PaintDeviceMetric what) const override {
        switch (what) {
        case PdmWidth:
        case PdmHeight:
            return 2000;
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return 96;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        default:
            return 32;
        }
    }
};

class TimerTexts : public testing::TestWithParam<std::tuple<TimerLook, int, bool, double>> {
  protected:
    PartView part;
    std::vector<Written> texts;

    void SetUp() override {
        const auto [look, turn, mirror, textSize] = GetParam();
        part.kind = circuit::PartKind::timer;
        part.pose = {{500, 500}, turn, mirror};
        part.ref = "U12";
        part.value = "bipolar";
        part.style.timer = look;
        texts = textsAt(textSize);
    }
    std::vector<Written> textsAt(double textSize) const {
        NotePad pad;
        QPainter painter(&pad);
        paintPart(painter, part, Theme::of(Theme::Mode::light), textSize);
        painter.end();
        return pad.notes.texts;
    }
};

TEST_P(TimerTexts, StandUprightHoweverThePartLies) {
    ASSERT_EQ(texts.size(), 19U) << "eight names, eight numbers, designator, kind and value";
    for (const Written& t : texts) {
        EXPECT_GT(t.way.m11(), 0) << t.text.toStdString() << " is mirrored or turned";
        EXPECT_GT(t.way.m22(), 0) << t.text.toStdString() << " stands on its head";
        EXPECT_TRUE(t.way.m12() == 0 && t.way.m21() == 0) << t.text.toStdString() << " is turned";
    }
}

TEST_P(TimerTexts, KeepClearOfOneAnother) {
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            EXPECT_FALSE(texts[i].room.adjusted(-1, -1, 1, 1).intersects(texts[k].room))
                << texts[i].text.toStdString() << " on " << texts[k].text.toStdString();
}

TEST_P(TimerTexts, NumberEachPinAtItsLeadAndNameItInside) {
    const double h = timerHalfHeight, w = timerHalfWidth;
    const QRectF outline =
        part.pose.upright() ? QRectF(500 - h, 500 - w, 2 * h, 2 * w) : QRectF(500 - w, 500 - h, 2 * w, 2 * h);
    for (const Written& t : texts) {
        bool isNumber = false;
        const int pin = t.text.toInt(&isNumber) - 1;
        if (!isNumber) {
            EXPECT_TRUE(outline.contains(t.room)) << t.text.toStdString();
            continue;
        }
        EXPECT_FALSE(outline.intersects(t.room)) << t.text.toStdString();
        const Point end = placed(pinsOf(part)[static_cast<std::size_t>(pin)], part.pose);
        const QPointF off = t.room.center() - QPointF(end.x, end.y);
        EXPECT_LT(std::hypot(off.x(), off.y()), 20) << t.text.toStdString();
    }
}

TEST_P(TimerTexts, NamesAndNumbersOfPinsFollowTheSizeOfTexts) {
    const auto [look, turn, mirror, textSize] = GetParam();
    const std::vector<Written> usual = textsAt(labelSize);
    ASSERT_EQ(usual.size(), texts.size());
    int larger = 0;
    for (std::size_t k = 0; k < 16; ++k) {
        EXPECT_GE(texts[k].room.height(), usual[k].room.height());
        larger += texts[k].room.height() > 1.1 * usual[k].room.height();
    }
    // Names that stand side by side, at leads up or down, have no room to grow.
    int sideBySide = 0;
    for (int pin = 0; pin < 8; ++pin) sideBySide += leadOf(part, pin).x == 0;
    EXPECT_EQ(larger, textSize > labelSize ? 16 - sideBySide : 0);
}

INSTANTIATE_TEST_SUITE_P(InEveryPose, TimerTexts,
                         testing::Combine(testing::Values(TimerLook::package, TimerLook::block),
                                          testing::Values(0, 90, 180, 270), testing::Bool(),
                                          testing::Values(labelSize, 2.0 * labelSize)));

} // namespace

} // namespace blinkwright::widgets::hookup
