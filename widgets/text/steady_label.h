// A label whose text may change many times a second. Every new text of a plain QLabel has the whole window
// laid out anew; here only one that takes another height, or does not fit.
//
//   auto* line = new SteadyLabel;
//   line->label()->setWordWrap(true);
//   line->setText(tr("The lamp takes 12 mA"));
#pragma once

#include <QLabel>

namespace blinkwright::widgets {

class SteadyLabel : public QWidget {
    Q_OBJECT
  public:
    explicit SteadyLabel(QWidget* parent = nullptr);

    /// For all but the text: font, colours, alignment, name.
    QLabel* label() const { return m_label; }
    QString text() const { return m_label->text(); }
    void setText(const QString& text);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return m_label->wordWrap(); }
    int heightForWidth(int width) const override { return m_label->heightForWidth(width); }

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void settle();
    QLabel* m_label;
    QSize m_held; ///< room that was last asked for; of wrapped text the height alone
};

} // namespace blinkwright::widgets
