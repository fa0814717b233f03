// The measurements of a circuit as a table that can be edited. It changes nothing itself: it says what the
// list is wished to be, with a text for undo.
//
//   MeasurementModel model;
//   model.setCircuit(circuit);
//   connect(&model, &MeasurementModel::wished, ...);     // Document::apply(edits::SetMeasurements{...})
#pragma once

#include "widgets/measure/measurement_words.h"
#include "widgets/theme/theme.h"

#include <QAbstractTableModel>

namespace blinkwright::widgets {

class MeasurementModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { used, title, kind, what, value, uncertainty, columns };
    explicit MeasurementModel(QObject* parent = nullptr);

    /// @return nothing changes where the list is the one that is shown already.
    void setCircuit(const circuit::Circuit& circuit);
    const circuit::Circuit& circuit() const { return m_circuit; }
    const circuit::Measurement& at(int row) const;
    void setTheme(const Theme& theme);

    // Wishes; rows that are not there are passed by.
    void add(circuit::Measurement measurement);
    void replace(int row, circuit::Measurement measurement);
    void remove(std::vector<int> rows);
    void duplicate(int row);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    QString asText() const; ///< tab separated, for the clipboard

  signals:
    void wished(const blinkwright::circuit::Measurements& measurements, const QString& undoText);
    void refused(const QString& reason); ///< what was typed cannot be read

  private:
    QString cellText(int row, int column) const;
    bool setNumber(int row, int column, const QString& text);
    bool setUsed(int row, bool on);
    bool setTitle(int row, const QString& text);
    void wish(int row, circuit::Measurement measurement, const QString& text);

    /// What a row says; a record with many switchings is not read again for each paint.
    struct Row {
        std::shared_ptr<const circuit::Measurement> of;
        QString what;
        std::optional<StatedNumber> number;
    };
    std::vector<Row> rowsOf(const circuit::Circuit& circuit) const;
    const Row& row(int at) const { return m_rows.at(static_cast<std::size_t>(at)); }

    circuit::Circuit m_circuit;
    std::vector<Row> m_rows;
    QColor m_quiet;
};

} // namespace blinkwright::widgets
