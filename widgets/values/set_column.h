// One value of the second column of Values: the button that ties it to the first, its slider and its field.
//
//   SetCell cell(subject, kind);
//   cell.showValue(33e3, false, "Set B");
//   connect(cell.row(), &ValueRow::wished, ...);
#pragma once

#include "widgets/values/tie_mark.h"
#include "widgets/values/value_row.h"

namespace blinkwright::widgets {

class SetCell : public QWidget {
    Q_OBJECT
  public:
    SetCell(const ValueRowSubject& subject, const ScaleKind& kind, QWidget* parent = nullptr);

    ValueRow* row() const { return m_row; }
    FollowButton* followButton() const { return m_follow; }
    /// A value of Set B, which follows Set A or not.
    void showValue(double value, bool follows, const QString& set);
    /// A value of another circuit, or none where that has no such part.
    void showReadOnly(std::optional<double> value, const QString& name);
    void setTheme(const Theme& theme);
    /// Its width without what the slider takes [px].
    int fixedWidth() const;

  private:
    FollowButton* m_follow;
    ValueRow* m_row;
};

} // namespace blinkwright::widgets
