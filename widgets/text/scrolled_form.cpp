#include "widgets/text/scrolled_form.h"

#include "widgets/text/text_sized.h"

#include <QDialog>
#include <QEvent>
#include <QLayout>
#include <QScreen>
#include <QScrollBar>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr int leastLines = 6;

class Grower : public QObject {
  public:
    explicit Grower(QDialog& dialog) : QObject(&dialog), m_dialog(dialog) { dialog.installEventFilter(this); }

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        // A size before the first show would be taken for one that somebody chose.
        if (m_dialog.isVisible() && (event->type() == QEvent::Show || event->type() == QEvent::LayoutRequest))
            grow();
        return false;
    }

  private:
    void grow() {
        const QLayout* layout = m_dialog.layout();
        if (!layout) return;
        const QSize room = m_dialog.screen()->availableSize() - frameRoom;
        const int width = std::max(m_dialog.width(), layout->totalMinimumSize().width());
        const int wants = layout->hasHeightForWidth() ? layout->totalHeightForWidth(width)
                                                      : layout->totalSizeHint().height();
        const QSize grown = m_dialog.size().expandedTo(QSize(width, wants).boundedTo(room));
        if (grown != m_dialog.size()) m_dialog.resize(grown);
    }

    QDialog& m_dialog;
};

} // namespace

ScrolledForm::ScrolledForm(QWidget* form, const QString& name) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(name);
    setWidget(form);
}

QSize ScrolledForm::sizeHint() const {
    const QSize form = widget()->sizeHint();
    const int width = std::max(form.width(), minimumSizeHint().width());
    return {width, heightForWidth(width)};
}

QSize ScrolledForm::minimumSizeHint() const {
    const QSize form = widget()->minimumSizeHint().expandedTo(widget()->minimumSize());
    return {form.width() + verticalScrollBar()->sizeHint().width(),
            std::min(form.height(), leastLines * fontMetrics().lineSpacing())};
}

int ScrolledForm::heightForWidth(int width) const {
    const QLayout* layout = widget()->layout();
    return layout->hasHeightForWidth() ? layout->totalHeightForWidth(width) : widget()->sizeHint().height();
}

bool ScrolledForm::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) updateGeometry(); // a text of the form asks for other room
    return QScrollArea::event(event);
}

void growWithTexts(QDialog& dialog) {
    new Grower(dialog); // the dialog's
}

} // namespace blinkwright::widgets
