// "To flash at 60 a minute, change R2 to one from E24": the question in one row, the answer under it.
//
//   RetuneRow row;
//   row.setParts({"C1", "R1", "R2"});
//   connect(&row, &RetuneRow::changed, ...);      // ask again: row.rate_Hz(), row.part(), row.source()
//   row.setRetuning(retuning);
#pragma once

#include "core/study/retune.h"

#include <QVariantMap>
#include <QWidget>

class QComboBox;
class QLabel;

namespace blinkwright::widgets {

class QuantityField;

class RetuneRow : public QWidget {
    Q_OBJECT
  public:
    explicit RetuneRow(QWidget* parent = nullptr);

    /// Parts that can be changed; the one that is chosen stays, if it is among them.
    void setParts(const std::vector<std::string>& refs);
    /// Where nobody has wished a rate yet: the one that the circuit was meant for.
    void proposeRate(double rate_Hz);

    double rate_Hz() const { return m_rate_Hz; }
    bool isWished() const { return m_wished; } ///< a person said which rate
    std::string part() const;
    /// Nothing: from the drawer.
    std::optional<units::Series> series() const;

    /// Nothing: no answer yet.
    void setRetuning(const std::optional<study::Retuning>& retuning);
    QString answerText() const;

    QVariantMap answers() const; ///< for the settings
    void restore(const QVariantMap& answers);

  signals:
    void changed();

  private:
    void showRate();
    double hertzOf(double value) const; ///< of a value in the unit chosen
    QString words(const study::Retuning& retuning) const;

    QuantityField* m_field;
    QComboBox *m_unit, *m_part, *m_source;
    QLabel* m_answer;
    double m_rate_Hz = 1;
    bool m_wished = false;
};

} // namespace blinkwright::widgets
