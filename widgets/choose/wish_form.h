// A wish as one sentence with fields in it. What cannot be read is said beside its field.
//
//   WishForm form;
//   form.setTexts(remembered);
//   connect(&form, &WishForm::changed, ...);      // by the user
//   if (form.isFine()) study::choose(form.wish(), {});
#pragma once

#include "widgets/choose/wish_texts.h"
#include "widgets/theme/theme.h"

#include <QWidget>
#include <memory>

namespace blinkwright::widgets {

class WishForm : public QWidget {
    Q_OBJECT
  public:
    explicit WishForm(QWidget* parent = nullptr);
    ~WishForm() override;

    void setTexts(const WishTexts& texts); ///< without changed()
    const WishTexts& texts() const;
    bool isFine() const;
    const study::Wish& wish() const; ///< without its drawer
    void setTheme(const Theme& theme);

  signals:
    void changed();
    void drawerWished(); ///< to see what is in it

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
