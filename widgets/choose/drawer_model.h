// The user's own stock of parts as a table that can be edited. A cell that cannot be read keeps what was
// typed, marked, while the part keeps its value from before. The last edits can be taken back.
//
//   DrawerModel model;
//   model.setStock(stock);
//   connect(&model, &DrawerModel::edited, ...);      // by the user: store model.stock()
#pragma once

#include "core/study/drawer_cells.h"
#include "widgets/theme/theme.h"

#include <QAbstractTableModel>
#include <array>
#include <optional>
#include <vector>

namespace blinkwright::widgets {

class DrawerModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    explicit DrawerModel(QObject* parent = nullptr);

    /// Another drawer; nothing of the one before can be taken back.
    void setStock(const std::vector<study::Stock>& stock);
    /// Adds to what is there, as one edit.
    void addStock(const std::vector<study::Stock>& stock);
    /// Rows without a value are not there yet.
    std::vector<study::Stock> stock() const;
    /// The first cell that cannot be read: `Row 3, value: …`; empty while all can.
    QString fault() const;
    QModelIndex faultIndex() const;

    /// @return the row, whose cells are empty but for its kind and quantity.
    int addRow(study::Stock::Kind kind = study::Stock::Kind::resistor);
    void removeRows(std::vector<int> rows);
    bool canUndo() const { return !m_before.empty(); }
    bool canRedo() const { return !m_after.empty(); }
    void undo();
    void redo();
    void setTheme(const Theme& theme);

    static QString kindText(study::Stock::Kind kind);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  signals:
    void edited(); ///< by the user, undo and redo included

  private:
    struct Wrong {
        QString typed, why;
        bool operator==(const Wrong&) const = default;
    };
    struct Row {
        study::Stock stock;
        std::array<std::optional<Wrong>, 5> wrong;
    };
    using Rows = std::vector<Row>;

    void change(Rows rows);
    void show(Rows rows);
    static void type(Row& row, study::DrawerColumn column, const QString& text);

    Rows m_rows;
    std::vector<Rows> m_before, m_after; ///< for undo and redo, the nearest last
    QColor m_fault;
};

} // namespace blinkwright::widgets
