// The table behind the Pins view, and the order and choice of its rows.
//
//   PinsModel model;
//   model.setRows(pinRows(circuit));
//   PinsOrder order;  order.setSourceModel(&model);  order.setWords("U1 trig");
#pragma once

#include "widgets/pins/pin_rows.h"
#include "widgets/theme/theme.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>
#include <map>

namespace blinkwright::widgets {

enum PinColumn { pinColumn, partColumn, roleColumn, netColumn, voltageColumn, pinColumnCount };

class PinsModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    static constexpr int sortRole = Qt::UserRole;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// A cell that is edited changes nothing here: it says what was wished.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    const std::vector<PinRow>& rows() const { return m_rows; }
    /// @return whether the pins are others than before, so that the view must be set up anew.
    bool setRows(std::vector<PinRow> rows);
    void setVoltages(const std::map<circuit::NetId, double>& voltages);
    void setTheme(const Theme& theme) { m_theme = theme; }

  signals:
    void netWished(blinkwright::circuit::PinRef pin, const QString& text);

  private:
    std::optional<double> voltage(const PinRow& row) const;
    QString text(const PinRow& row, int column) const;
    QString sentence(const PinRow& row) const;

    std::vector<PinRow> m_rows;
    std::map<circuit::NetId, double> m_voltages;
    Theme m_theme = Theme::of(Theme::Mode::light);
};

class PinsOrder : public QSortFilterProxyModel {
    Q_OBJECT
  public:
    explicit PinsOrder(QObject* parent = nullptr);
    /// Rows in which every word is found somewhere are shown.
    void setWords(const QString& text);

  protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

  private:
    QStringList m_words;
};

} // namespace blinkwright::widgets
