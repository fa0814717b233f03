// The frame of a room: a window beside the main one that asks one question of the circuit. Controls above,
// the picture in the middle, below it what is being done, how far it is, and the buttons.
//
//   auto* frame = new RoomFrame(tr("Trend"), "trend", window);
//   frame->addControl(tr("Over"), valueChooser);
//   frame->setBody(view);
//   frame->setBusy(true);  frame->setProgress(0.4);      // Cancel, or Esc: cancelWished()
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"

#include <QDialog>
#include <memory>

class QPushButton;

namespace blinkwright::widgets {

class RoomFrame : public QDialog {
    Q_OBJECT
  public:
    /// @param name object name, by which its place on the screen is remembered
    RoomFrame(const QString& title, const QString& name, QWidget* parent = nullptr);
    ~RoomFrame() override;

    /// A labelled control in one of the rows above. An empty label is for a control that names itself.
    void addControl(const QString& label, QWidget* control, int row = 0);
    void setBody(QWidget* body);
    /// A button at the lower edge, left of Close.
    QPushButton* addButton(const QString& text);

    /// Which set is asked about. The chooser is there only while the two differ.
    void setSetsDiffer(bool differ);
    circuit::PartSet set() const;
    void chooseSet(circuit::PartSet set);

    void setBusy(bool busy);
    /// From 0 to 1; below 0 where nobody knows.
    void setProgress(double share);
    /// What was found, or why nothing was: a sentence.
    void setMessage(const QString& sentence, bool isFault = false);
    QString message() const;
    void setTheme(const Theme& theme);

  signals:
    void cancelWished();
    void setChosen();
    void helpWished();

  protected:
    void reject() override; ///< Esc gives up what runs first, and only then closes

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
