// Tree model of the elements of the row, with their roles.
#pragma once

#include <QAbstractItemModel>
#include <vector>

#include "markup/given.h"

namespace tenter::desktop::page_import {

class ElementModel : public QAbstractItemModel {
    Q_OBJECT

public:
    using QAbstractItemModel::QAbstractItemModel;
    using QObject::parent;
    enum Column { Element, Role, columns };
    /// `row` must outlive the model; null: no row.
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
    std::vector<int> places_;                            // by node: index among the children of its parent
    std::vector<QString> roles_;                         // by node
};

}  // namespace tenter::desktop::page_import
