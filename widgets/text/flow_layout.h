// Lays widgets out like words: one after the other, on to the next line where they do not fit.
//
//   auto* flow = new FlowLayout(sentence);
//   flow->addWidget(new QLabel(tr("Blinking")));  flow->addWidget(rateField);
#pragma once

#include <QLayout>
#include <vector>

namespace blinkwright::widgets {

class FlowLayout : public QLayout {
  public:
    explicit FlowLayout(QWidget* parent, int across = 6, int between = 6); ///< gaps [pixels]
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& area) override;
    Qt::Orientations expandingDirections() const override { return {}; }

  private:
    int layOut(const QRect& area, bool really) const; ///< the height that it takes

    std::vector<QLayoutItem*> m_items;
    int m_across, m_between;
};

} // namespace blinkwright::widgets
