// The proposals for a wish as a table, best first: their values, and what their simulated boards do.
//
//   ChoiceModel model;
//   model.setChoices(wish, choices);
//   tableView->setModel(&model);
#pragma once

#include "widgets/choose/wish_texts.h"

#include <QAbstractTableModel>
#include <memory>

namespace blinkwright::widgets {

class ChoiceModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// Columns that no proposal fills are left out. Null: empty.
    void setChoices(const study::Wish& wish, RateUnit unit, std::shared_ptr<const study::Choices> choices);
    const study::Choice& choice(int row) const;
    QString asText() const; ///< tab separated, for the clipboard

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Asked {
        study::Wish wish;
        RateUnit unit = RateUnit::hertz; ///< that rates are told in
    };
    struct Column {
        QString title, meaning;
        QString (*text)(const Asked& asked, const study::Choice& choice);
    };
    static std::vector<Column> allColumns();

    static QString rate(const Asked& asked, double rate_Hz);

    Asked m_asked;
    std::shared_ptr<const study::Choices> m_choices;
    std::vector<Column> m_columns; ///< those that are shown
};

/// The names of what a proposal is besides its values, in words: where the lamps hang.
QString lampsText(const study::Choice& choice);

} // namespace blinkwright::widgets
