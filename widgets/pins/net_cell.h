// The cell in which a pin's net is typed: a list that can be typed into, narrowed by what is typed.
//
//   table->setItemDelegate(new NetCell([](const QModelIndex& at) { return offers; }));
#pragma once

#include <QStringList>
#include <QStyledItemDelegate>
#include <functional>

namespace blinkwright::widgets {

class NetCell : public QStyledItemDelegate {
    Q_OBJECT
  public:
    using Offers = std::function<QStringList(const QModelIndex&)>;
    explicit NetCell(Offers offers, QObject* parent = nullptr);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

  protected:
    /// The whole row shows where the keyboard is; a frame about one cell of it would only dim its text.
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;

  private:
    Offers m_offers;
};

} // namespace blinkwright::widgets
