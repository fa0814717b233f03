// What people choose and type for a lab sheet.
//
//   SheetForm form;
//   form.words().author;  form.choice().copy;  form.variant();
#pragma once

#include "app/sheet/make_sheet.h"
#include "widgets/theme/theme.h"

#include <QPageSize>
#include <QVariantMap>
#include <QWidget>
#include <memory>

namespace blinkwright::app::sheet {

class SheetForm : public QWidget {
    Q_OBJECT
  public:
    explicit SheetForm(QWidget* parent = nullptr);
    ~SheetForm() override;

    SheetWords words() const;
    /// Topics and copy; the symbols are the window's to say.
    SheetChoice choice() const;
    std::optional<std::uint64_t> variant() const;
    QPageSize::PageSizeId pageSize() const;
    bool besideB() const; ///< Set B beside Set A
    /// Whether there is a Set B to put beside Set A.
    void setBesideOffered(bool offered);

    /// Names, paper and sections: what stays from one circuit to the next.
    QVariantMap habits() const;
    void setHabits(const QVariantMap& habits);
    /// Title, aim, method, conclusions, date: what belongs to one circuit.
    QVariantMap texts() const;
    void setTexts(const QVariantMap& texts);

    void setTheme(const widgets::Theme& theme);

  signals:
    void wordsChanged();  ///< or paper, or what needs nothing computed
    void choiceChanged(); ///< what is told may need to be computed

  private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::app::sheet
