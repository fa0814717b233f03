// What is seen and measured on a board that does not do what it should: boxes to tick, a rate, and a table of
// places with the expected readings and room for those that were taken.
//
//   SymptomForm form;
//   form.setLibrary(library);                     // places and expected readings
//   connect(&form, &SymptomForm::changed, [&] { ask(form.observation()); });
#pragma once

#include "core/study/symptoms.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class SymptomForm : public QWidget {
    Q_OBJECT
  public:
    explicit SymptomForm(QWidget* parent = nullptr);
    ~SymptomForm() override;

    /// Readings stay with the places of the same name. Null: none.
    void setLibrary(std::shared_ptr<const study::FaultLibrary> library);
    /// Only what can be read counts; the rest is marked where it stands.
    study::Observation observation() const;
    void reset(); ///< another circuit: nothing is ticked, nothing measured
    void setTheme(const Theme& theme);

  signals:
    void changed();
    void refused(const QString& reason); ///< a text that is no quantity

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
