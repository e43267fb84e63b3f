#include "panels/answer_model.h"

#include <algorithm>

#include "document/wording.h"

namespace tenter::desktop::panels {

namespace {

PlotMark markOf(const solve::Limit& limit, bool conflicts) {
    const solve::Binding& binding = limit.binding;
    PlotMark mark{binding.variant, binding.wish.role, limit.width, binding.size, {}, {}, conflicts};
    if (binding.text.exists) mark.part = project::PartRef{binding.text.card, binding.text.part};
    mark.says = QString::fromStdString(limit.fullText);
    return mark;
}

const solve::EndSize& endOf(const solve::SizeRow& sizes, int column) {
    return column == AnswerModel::NarrowEnd ? sizes.narrow : sizes.wide;
}

QString limitText(const std::string& text) {
    QString sentence = QString::fromStdString(text);
    sentence[0] = sentence[0].toUpper();
    return sentence;
}

bool isChanged(const solve::EndSize& end) {
    return solve::sizeLabel(end.before) != solve::sizeLabel(end.after);
}

}  // namespace

AnswerModel::AnswerModel(QObject* parent) : QAbstractTableModel(parent) {}

void AnswerModel::setTable(const project::Project& project, const solve::AnswerTable& table) {
    beginResetModel();
    rows_.clear();
    conflicts_ = table.conflict.has_value();
    QString title;
    for (const solve::SizeRow& sizes : table.rows) {
        QString own = roleTitle(sizes.role);
        if (table.variants.size() > 1) own += ", " + variantTitle(project.row().variants[sizes.variant]);
        if (own != title) rows_.push_back({RowKind::Title, own, {}, {}});
        title = own;
        rows_.push_back({RowKind::Sizes, title, sizes, {}});
        for (const solve::Limit& limit : sizes.limits)
            rows_.push_back({RowKind::Limit, title, sizes, limit});
    }
    if (table.conflict)
        for (const solve::Limit& place : table.conflict->places)
            rows_.push_back({RowKind::Limit, {}, {}, place});
    endResetModel();
}

int AnswerModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int AnswerModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString AnswerModel::text(const QModelIndex& index) const {
    const Row& row = at(index.row());
    if (row.kind == RowKind::Title) return index.column() == Band ? row.title : QString();
    if (row.kind == RowKind::Limit)
        return index.column() == Band ? limitText(conflicts_ ? row.limit.fullText : row.limit.text)
                                      : QString();
    if (index.column() == Band)
        return columnsTitle(row.sizes.columns) + "\n" +
               widthsTitle(solve::firstWholeWidth(row.sizes), row.sizes.wide.width);
    const solve::EndSize& end = endOf(row.sizes, index.column());
    const QString before = figure(end.before);
    return isChanged(end) ? before + " → " + figure(end.after) : before;
}

QString AnswerModel::spokenText(const QModelIndex& index) const {
    const Row& row = at(index.row());
    if (row.kind == RowKind::Limit) return QString::fromStdString(row.limit.fullText);
    if (row.kind == RowKind::Title || index.column() == Band) return text(index).replace('\n', ", ");
    const solve::EndSize& end = endOf(row.sizes, index.column());
    const QString where =
        QString("%1, %2, at %3: ").arg(row.title, columnsTitle(row.sizes.columns), pixels(end.width));
    return where + (isChanged(end) ? QString("%1, was %2").arg(pixels(end.after), pixels(end.before))
                                   : pixels(end.before) + ", unchanged");
}

QVariant AnswerModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    switch (role) {
        case Qt::DisplayRole:
            return text(index);
        case Qt::AccessibleTextRole:
            return spokenText(index);
        case Qt::ToolTipRole:
            return kind(index.row()) == RowKind::Sizes ? toolTipText(spokenText(index)) : QVariant();
        default:
            return {};
    }
}

QVariant AnswerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == Band ? "Sizes in px" : section == NarrowEnd ? "Narrow end" : "Wide end";
}

std::optional<PlotMark> AnswerModel::placeOf(const QModelIndex& index) const {
    if (!index.isValid()) return std::nullopt;
    const Row& row = at(index.row());
    if (row.kind == RowKind::Limit) return markOf(row.limit, conflicts_);
    if (row.kind == RowKind::Title) return std::nullopt;
    const bool narrow = index.column() != WideEnd;
    const solve::EndSize& end = narrow ? row.sizes.narrow : row.sizes.wide;
    // The width of a breakpoint belongs to the band below it.
    const double width = end.width + (narrow && row.sizes.band > 0 ? 1 : 0);
    return PlotMark{row.sizes.variant, row.sizes.role, width, end.after, {}, {}, false};
}

std::vector<PlotMark> AnswerModel::marks() const {
    std::vector<PlotMark> marks;
    for (const Row& row : rows_)
        if (row.kind == RowKind::Limit) marks.push_back(markOf(row.limit, conflicts_));
    return marks;
}

}  // namespace tenter::desktop::panels
