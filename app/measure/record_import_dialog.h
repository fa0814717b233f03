// Imports the record of an instrument: the file's first lines, what was taken for what in controls to change,
// the record with its switchings, and the figures that it gives. Reading runs off the event loop.
//
//   if (auto measurement = RecordImportDialog::ask(window, path, theme)) ...
// or, without waiting:
//   RecordImportDialog dialog(path, theme);  dialog.show();  ...  dialog.measurement();
#pragma once

#include "app/measure/record_reader.h"
#include "widgets/theme/theme.h"

#include <QDialog>
#include <QTimer>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

namespace blinkwright::widgets {
class RecordFiguresTable;
class LayoutForm;
class QuantityField;
class RecordPlot;
class RecordPreview;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class RecordImportDialog : public QDialog {
    Q_OBJECT
  public:
    RecordImportDialog(const QString& path, const widgets::Theme& theme, QWidget* parent = nullptr);
    ~RecordImportDialog() override;

    /// Waits for the user; nothing where the import was given up.
    static std::optional<circuit::Measurement> ask(QWidget* parent, const QString& path,
                                                   const widgets::Theme& theme);

    /// The record as it is shown, with its title; nothing while there is none.
    std::optional<circuit::Measurement> measurement() const;
    bool isBusy() const { return m_reader.isBusy(); }
    QString message() const; ///< a fault, or what goes on
    void setTheme(const widgets::Theme& theme);

    void reject() override; ///< Esc stops what is being read first

  signals:
    void settled(); ///< a reading, or the reason why there is none, is shown

  private:
    void makeLayout();
    void begun(const RecordReader::Beginning& beginning);
    void readAgain();    ///< with the controls as they are
    void tableChanged(); ///< other separator or lines: the columns are counted and named anew
    void finished(const RecordReader::Reading& reading);
    void failed(const Fault& fault);
    void showBusy(bool busy);
    void say(const QString& sentence, bool isFault);
    void clearReading();

    RecordReader m_reader;
    widgets::Theme m_theme;
    std::string m_beginning;
    std::shared_ptr<const circuit::Record> m_record;
    std::optional<bool> m_fromPowerOn; ///< as the user wants it; nothing: as it looks
    double m_timeUncertainty = circuit::Record{}.timeUncertainty;
    bool m_isFault = false;

    widgets::RecordPreview* m_preview;
    widgets::LayoutForm* m_form;
    widgets::RecordPlot* m_plot;
    widgets::RecordFiguresTable* m_figures;
    QPlainTextEdit* m_said;
    QLineEdit* m_title;
    QCheckBox* m_powerOn;
    widgets::QuantityField* m_accuracy;
    QLabel* m_message;
    QProgressBar* m_progress;
    QPushButton *m_stop, *m_import;
    QTimer m_progressTimer;
};

} // namespace blinkwright::app
