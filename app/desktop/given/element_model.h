// The elements of a row as a tree of lines, with what each is.
#pragma once

#include <QAbstractItemModel>
#include <vector>

#include "markup/given.h"

namespace tenter::desktop::given {

class ElementModel : public QAbstractItemModel {
    Q_OBJECT

public:
    using QAbstractItemModel::QAbstractItemModel;
    using QObject::parent;
    enum Column { Element, Role, columns };
    /// The row must outlive it; null for none.
    void setRow(const markup::GivenRow* row);
    [[nodiscard]] QModelIndex indexOf(markup::NodeId node) const;
    [[nodiscard]] static markup::NodeId nodeOf(const QModelIndex& index);

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const markup::GivenRow* row_ = nullptr;
    markup::NodeId top_ = markup::noNode;
    std::vector<std::vector<markup::NodeId>> children_;  // by node, elements only
    std::vector<int> places_;                            // by node, among its parent's
    std::vector<QString> roles_;                         // by node
};

}  // namespace tenter::desktop::given
