// "Lab sheet": the write-up of the open circuit with its preview, and class pages of it.
#pragma once

#include "app/rooms/room.h"
#include "app/sheet/lab_sheet.h"
#include "core/study/lab_facts.h"

class QPushButton;

namespace blinkwright::app {

namespace sheet {
class SheetForm;
class SheetPreview;
} // namespace sheet

class LabSheetRoom : public Room {
    Q_OBJECT
  public:
    explicit LabSheetRoom(const House& house);
    ~LabSheetRoom() override;

    sheet::SheetForm& form() { return *m_form; }
    sheet::SheetPreview& preview() { return *m_preview; }
    bool hasSheet() const { return m_facts != nullptr; }
    /// The sheet as it is shown now; there must be one.
    sheet::LabSheet labSheet() const;
    Result<void> writeTo(const QString& path) const;

  private:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;
    double progress() const override;
    void makeFrame();
    study::LabFactsRequest request() const;
    void choose();
    void showSheet();
    void save(const QString& ending, const QString& kind);
    void print();
    void keepWords();
    void takeTexts();

    sheet::SheetForm* m_form;
    sheet::SheetPreview* m_preview;
    QTimer m_typing; ///< between a letter and the preview
    std::shared_ptr<const study::LabFacts> m_facts;
    std::shared_ptr<std::atomic<long>> m_done;
    long m_boards = 0;
    QString m_path;       ///< of the circuit that the texts in the form belong to
    quint64 m_opened = 0; ///< the revision that this circuit was opened at
    std::vector<QPushButton*> m_needSheet;
};

} // namespace blinkwright::app
