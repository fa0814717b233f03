// The drawer: what parts the user owns, as a table to edit, with import and export.
//
//   DrawerDialog dialog(theme, window);
//   dialog.model().setStock(stored);
//   connect(&dialog.model(), &DrawerModel::edited, ...);
//   connect(&dialog, &DrawerDialog::importWished, ...);
#pragma once

#include "widgets/choose/drawer_model.h"

#include <QDialog>
#include <memory>

namespace blinkwright::widgets {

class DrawerDialog : public QDialog {
    Q_OBJECT
  public:
    explicit DrawerDialog(const Theme& theme, QWidget* parent = nullptr);
    ~DrawerDialog() override;

    DrawerModel& model();
    void setTheme(const Theme& theme);
    /// A fault of a file; it stands until the next edit.
    void say(const QString& sentence, bool isFault);
    QString message() const;

  signals:
    void importWished();
    void exportWished();

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
