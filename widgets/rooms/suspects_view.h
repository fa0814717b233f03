// What is likely wrong with a board: suspects by their share, with what to do about the chosen one, and what
// to measure next.
//
//   SuspectsView view;
//   view.setDiagnosis(library, diagnosis);
//   connect(&view, &SuspectsView::placeActivated, ...);      // "R1", "U1:7": show it on the Hook-up
#pragma once

#include "core/study/symptoms.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

class QLabel;
class QTableWidget;

namespace blinkwright::widgets {

class ShareBar;

class SuspectsView : public QWidget {
    Q_OBJECT
  public:
    explicit SuspectsView(QWidget* parent = nullptr);
    ~SuspectsView() override;

    void setDiagnosis(std::shared_ptr<const study::FaultLibrary> library, study::Diagnosis diagnosis);
    void clear();
    const study::Diagnosis& diagnosis() const { return m_diagnosis; }
    QString asText() const; ///< for the clipboard
    void setTheme(const Theme& theme);

  signals:
    void placeActivated(const QString& place);

  private:
    void fill();
    void showChosen();
    void fitRows();

    std::shared_ptr<const study::FaultLibrary> m_library;
    study::Diagnosis m_diagnosis;
    QTableWidget* m_table;
    QLabel *m_next, *m_chosen, *m_limits;
    ShareBar* m_bar;
};

} // namespace blinkwright::widgets
