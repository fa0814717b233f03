// One page of a lab sheet as it will look on paper, and the way to the others.
//
//   preview.setPages(pages);      // a shared PageLayout, or null for none
#pragma once

#include "app/sheet/page_layout.h"

#include <QPixmap>
#include <QWidget>
#include <memory>

class QLabel;
class QToolButton;

namespace blinkwright::app::sheet {

class SheetPreview : public QWidget {
    Q_OBJECT
  public:
    explicit SheetPreview(QWidget* parent = nullptr);

    void setPages(std::shared_ptr<const PageLayout> pages);
    void turnTo(int page);
    int page() const { return m_page; }
    int pageCount() const { return m_pages ? m_pages->count() : 0; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QRect room() const;
    void showPage();

    std::shared_ptr<const PageLayout> m_pages;
    int m_page = 0;
    QPixmap m_picture; ///< of the page at the size of now; null until it is painted
    QLabel* m_number;
    QToolButton *m_back, *m_on;
};

} // namespace blinkwright::app::sheet
