// Small signs of a value row: two links for a value that moves together with others, and the button between
// the columns of two sets that says whether Set B follows Set A.
#pragma once

#include "widgets/theme/theme.h"

#include <QAbstractButton>

namespace blinkwright::widgets {

class TieMark : public QWidget {
    Q_OBJECT
  public:
    explicit TieMark(QWidget* parent = nullptr);
    /// @param others what moves along: `R4`; with none, nothing is painted
    void setOthers(const QStringList& others);

  protected:
    void paintEvent(QPaintEvent*) override;

  private:
    QStringList m_others;
};

/// Checked: Set B follows Set A, drawn as a closed bar between two dots; else the bar is open.
class FollowButton final : public QAbstractButton {
    Q_OBJECT
  public:
    explicit FollowButton(QString subject, QWidget* parent = nullptr);
    void setFollowing(bool on);
    void setTheme(const Theme& theme);
    QSize sizeHint() const override { return {26, 24}; }

  signals:
    void followWished(bool on);

  protected:
    void paintEvent(QPaintEvent*) override;
    void enterEvent(QEnterEvent*) override { update(); }
    void leaveEvent(QEvent*) override { update(); }
    /// A press is a wish; the circuit says when it has come true.
    void nextCheckState() override { emit followWished(!isChecked()); }

  private:
    QString m_subject; ///< `R2 resistance`
    Theme m_theme;
};

} // namespace blinkwright::widgets
