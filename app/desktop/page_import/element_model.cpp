#include "page_import/element_model.h"

#include <QFontMetrics>
#include <QGuiApplication>

#include "document/wording.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

namespace {

constexpr int roleMargin = 8;  // px

}  // namespace

void ElementModel::setRow(const markup::GivenRow* row) {
    beginResetModel();
    row_ = row;
    top_ = markup::noNode;
    children_.clear();
    places_.clear();
    roles_.clear();
    if (row_ != nullptr) {
        const markup::Tree& tree = row_->tree;
        top_ = tree.body();
        children_.resize(tree.size());
        places_.resize(tree.size());
        roles_.resize(tree.size());
        for (markup::NodeId node = 0; node < tree.size(); ++node) {
            if (tree[node].isText()) continue;
            children_[node] = tree.elementChildren(node);
            int place = 0;
            for (const markup::NodeId child : children_[node])
                places_[child] = place++;
        }
        for (const markup::RoleNodes& role : row_->roles)
            for (const markup::NodeId node : role.nodes)
                roles_[node] = roleTitle(role.role);
    }
    endResetModel();
}

markup::NodeId ElementModel::nodeOf(const QModelIndex& index) {
    return index.isValid() ? static_cast<markup::NodeId>(index.internalId()) : markup::noNode;
}

QModelIndex ElementModel::indexOf(markup::NodeId node) const {
    if (row_ == nullptr || node >= row_->tree.size() || !row_->tree.isWithin(node, top_)) return {};
    return createIndex(node == top_ ? 0 : places_[node], 0, quintptr{node});
}

QModelIndex ElementModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    if (!parent.isValid()) return createIndex(row, column, quintptr{top_});
    return createIndex(row, column, quintptr{children_[nodeOf(parent)][static_cast<std::size_t>(row)]});
}

QModelIndex ElementModel::parent(const QModelIndex& index) const {
    const markup::NodeId node = nodeOf(index);
    return node == markup::noNode || node == top_ ? QModelIndex() : indexOf(row_->tree[node].parent);
}

int ElementModel::rowCount(const QModelIndex& parent) const {
    if (top_ == markup::noNode || parent.column() > 0) return 0;
    return parent.isValid() ? static_cast<int>(children_[nodeOf(parent)].size()) : 1;
}

int ElementModel::columnCount(const QModelIndex&) const {
    return columns;
}

QVariant ElementModel::data(const QModelIndex& index, int role) const {
    const markup::NodeId node = nodeOf(index);
    if (node == markup::noNode) return {};
    const QString title = elementTitle(row_->tree, node);
    if (role == Qt::AccessibleTextRole && index.column() == Element)
        return roles_[node].isEmpty() ? title : title + ", " + roles_[node];
    if (role == Qt::ToolTipRole && index.column() == Element) return title;
    // Room before the scroll bar.
    if (role == Qt::SizeHintRole && index.column() == Role)
        return QSize(QFontMetrics(QGuiApplication::font()).horizontalAdvance(roles_[node]) + 2 * roleMargin,
                     0);
    if (role != Qt::DisplayRole) return {};
    return index.column() == Element ? title : roles_[node];
}

QVariant ElementModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == Element ? QObject::tr("Element") : QObject::tr("Role");
}

}  // namespace tenter::desktop::page_import
