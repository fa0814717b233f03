// The dialog of File > Export curves: what is on the page, how large, and a preview of it. It says what is
// wished; the window makes the page and writes it.
//
//   ExportDialog dialog(window, choice, {.second = "Set B"}, makePage);
//   connect(&dialog, &ExportDialog::saveWished, ...);
//   dialog.choice();
#pragma once

#include "app/export_choice.h"
#include "app/set_actions.h"

#include <QDialog>
#include <QTimer>
#include <functional>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QSpinBox;

namespace blinkwright::app {

class ExportDialog : public QDialog {
    Q_OBJECT
  public:
    /// The picture of a choice at some resolution.
    using Picture = std::function<QImage(const ExportChoice&, ExportedSets, int dpi)>;

    /// @param second what Set A is compared with: `Set B`; empty: nothing
    ExportDialog(QWidget* parent, const ExportChoice& choice, ExportedSets sets, const QString& second,
                 Picture picture);

    ExportChoice choice() const;
    ExportedSets sets() const;

  signals:
    void changed();
    void saveWished();
    void copyPictureWished();
    void copyDataWished();

  private:
    QWidget* makeControls(const QString& second);
    void showPreview();
    bool eventFilter(QObject* watched, QEvent* event) override;

    Picture m_picture;
    QComboBox* m_sets = nullptr;
    QCheckBox* m_strips[widgets::stripCount] = {};
    QCheckBox *m_legend = nullptr, *m_moment = nullptr, *m_greys = nullptr, *m_visible = nullptr;
    QDoubleSpinBox *m_width = nullptr, *m_height = nullptr, *m_font = nullptr;
    QSpinBox* m_dpi = nullptr;
    QLabel *m_preview = nullptr, *m_size = nullptr;
    QTimer m_pause; ///< between a change and its preview
};

} // namespace blinkwright::app
