#include "app/play_strip.h"

#include "widgets/text/text_sized.h"

#include <QAction>
#include <QActionGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPainter>
#include <QToolButton>

namespace blinkwright::app {

namespace {
constexpr int side = 20; ///< of an icon
}

/// A line that gives way: cut short with an ellipsis, whole in its tool tip. A label would have the window
/// laid out anew with every text.
class PlayStrip::Note : public QWidget {
  public:
    Note() { setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred); }
    void setText(const QString& text) {
        m_text = text;
        setToolTip(text);
        setAccessibleName(text);
        update();
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(rect(), Qt::AlignVCenter | Qt::AlignLeft,
                         fontMetrics().elidedText(m_text, Qt::ElideRight, width()));
    }

  private:
    QString m_text;
};

PlayStrip::PlayStrip(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout(this)), m_ratios(new QComboBox), m_noteLabel(new Note) {
    constexpr int edge = 6, gap = 2;
    m_row->setContentsMargins(edge, 2, edge, 2);
    m_row->setSpacing(gap);
    setObjectName(QStringLiteral("play"));
    m_ratios->setObjectName(QStringLiteral("ratio"));
    m_ratios->setAccessibleName(tr("Board time to real time"));
    m_ratios->setToolTip(tr("Board time to real time"));
    m_ratios->setWhatsThis(
        tr("How fast Play moves over the run: 1:1 as the board does, 1:4 and 1:20 so many times "
           "slower."));
    setAccessibleName(tr("Play"));
}

void PlayStrip::setActions(const std::vector<QAction*>& buttons, QActionGroup* ratios) {
    for (QAction* action : buttons) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::TabFocus);
        widgets::sizedByText(*button, [button] {
            const int wide = widgets::withText(*button, side);
            button->setIconSize({wide, wide});
        });
        m_row->addWidget(button);
    }
    for (QAction* action : ratios->actions()) m_ratios->addItem(action->iconText());
    const auto follow = [this, ratios] {
        m_ratios->setCurrentIndex(static_cast<int>(ratios->actions().indexOf(ratios->checkedAction())));
    };
    follow();
    for (QAction* action : ratios->actions()) connect(action, &QAction::toggled, this, follow);
    connect(m_ratios, &QComboBox::activated, this,
            [ratios](int index) { ratios->actions().at(index)->trigger(); });
    m_row->addSpacing(side / 2);
    m_row->addWidget(m_ratios);
    m_row->addSpacing(side / 2);
    m_row->addWidget(m_noteLabel, 1);
}

void PlayStrip::setNote(const QString& text) {
    if (m_note == text) return;
    m_note = text;
    m_noteLabel->setText(text);
}

} // namespace blinkwright::app
