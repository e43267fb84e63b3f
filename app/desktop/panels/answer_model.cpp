#include "panels/answer_model.h"

#include <algorithm>

#include "document/wording.h"
#include "findings/wording.h"

namespace tenter::desktop::panels {

namespace {

QString otherFindings() {
    return QObject::tr("Other findings");
}

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

/// `Removes warning: ` before what a finding says.
QString effectTitle(AnswerModel::Effect effect, const QString& severity) {
    switch (effect) {
        case AnswerModel::Effect::Removes:
            return QObject::tr("Removes %1:", "severity of a finding").arg(severity);
        case AnswerModel::Effect::Adds:
            return QObject::tr("Adds %1:", "severity of a finding").arg(severity);
        case AnswerModel::Effect::Widens:
            break;
    }
    return QObject::tr("Widens %1:", "severity of a finding").arg(severity);
}

/// The role of the part with the worst place; empty for a finding of the row or of a picture.
std::string roleOf(const project::Project& project, const checks::Finding& finding) {
    if (!finding.place || finding.place->card >= project.row().cards.size()) return {};
    const auto& parts = project.row().cards[finding.place->card].parts;
    if (finding.place->part >= parts.size()) return {};
    const auto* text = std::get_if<project::TextPart>(&parts[finding.place->part]);
    return text == nullptr ? std::string() : text->role;
}

PlotMark markOf(const project::Project& project, const remedy::Change& change) {
    const checks::Finding& finding = change.finding;
    PlotMark mark{change.variant, roleOf(project, finding), finding.at, 0, finding.place, {}, false};
    mark.says = QString::fromStdString(finding.says);
    return mark;
}

bool isChanged(const solve::EndSize& end) {
    return solve::sizeLabel(end.before) != solve::sizeLabel(end.after);
}

}  // namespace

AnswerModel::AnswerModel(QObject* parent) : QAbstractTableModel(parent) {}

void AnswerModel::setTable(const project::Project& project, const solve::AnswerTable& table,
                           std::size_t first) {
    beginResetModel();
    rows_.clear();
    conflicts_ = table.conflict.has_value();
    QString title;
    std::vector<solve::SizeRow> ordered = table.rows;
    std::ranges::stable_partition(ordered,
                                  [&](const solve::SizeRow& sizes) { return sizes.variant == first; });
    for (const solve::SizeRow& sizes : ordered) {
        QString own = roleTitle(sizes.role);
        if (table.variants.size() > 1) own += ", " + variantTitle(project.row().variants[sizes.variant]);
        if (own != title) rows_.push_back(Row{RowKind::Title, own, {}, {}, {}, {}, {}, {}});
        title = own;
        rows_.push_back(Row{RowKind::Sizes, title, sizes, {}, {}, {}, {}, {}});
        for (const solve::Limit& limit : sizes.limits)
            rows_.push_back(Row{RowKind::Limit, title, sizes, limit, {}, {}, {}, {}});
    }
    if (table.conflict)
        for (const solve::Limit& place : table.conflict->places)
            rows_.push_back(Row{RowKind::Limit, {}, {}, place, {}, {}, {}, {}});
    endResetModel();
}

std::optional<std::size_t> AnswerModel::placeFor(const project::Project& project,
                                                 const remedy::Change& change) const {
    const std::string role = roleOf(project, change.finding);
    std::optional<std::size_t> place;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const solve::SizeRow& sizes = rows_[i].sizes;
        if (rows_[i].kind == RowKind::Title || sizes.variant != change.variant || sizes.role != role)
            continue;
        // The width of a breakpoint belongs to the band below it.
        const bool isAbove = sizes.band == 0 || change.finding.at > sizes.narrow.width;
        if (isAbove && change.finding.at <= sizes.wide.width) place = i + 1;
    }
    return place;
}

void AnswerModel::setEffects(const project::Project& project, const remedy::Effects& effects) {
    beginResetModel();
    std::erase_if(
        rows_, [](const Row& row) { return row.kind == RowKind::Finding || row.title == otherFindings(); });
    const bool several = project.row().variants.size() > 1;
    std::vector<Row> others;
    const auto add = [&](Effect effect, const std::vector<remedy::Change>& changes) {
        for (const remedy::Change& change : changes) {
            Row row;
            row.kind = RowKind::Finding;
            row.effect = effect;
            row.finding = change;
            const std::optional<std::size_t> at = placeFor(project, change);
            const std::string what =
                checks::textOf({change.finding.statement.what, {}, {}}, change.finding.profiles);
            row.text =
                effectTitle(effect, inSentence(findings::severityTitle(change.finding.severity))) + ' ';
            if (!at) {
                if (several) row.text += variantTitle(project.row().variants[change.variant]) + ": ";
                row.text += QString::fromStdString(what);
                others.push_back(std::move(row));
                continue;
            }
            row.text += QString::fromStdString(what);
            row.title = rows_[*at - 1].title;
            row.sizes = rows_[*at - 1].sizes;
            rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(*at), std::move(row));
        }
    };
    add(Effect::Removes, effects.lost);
    add(Effect::Adds, effects.gained);
    add(Effect::Widens, effects.grown);
    if (!others.empty()) {
        Row title;
        title.title = otherFindings();
        rows_.push_back(std::move(title));
        rows_.insert(rows_.end(), others.begin(), others.end());
    }
    for (Row& row : rows_)
        if (row.kind == RowKind::Finding) row.mark = markOf(project, row.finding);
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
    if (row.kind == RowKind::Finding) return index.column() == Band ? row.text : QString();
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
    if (row.kind == RowKind::Finding) return row.title.isEmpty() ? row.text : row.title + ": " + row.text;
    if (row.kind == RowKind::Title || index.column() == Band) return text(index).replace('\n', ", ");
    const solve::EndSize& end = endOf(row.sizes, index.column());
    const QString where =
        QObject::tr("%1, %2, at %3:").arg(row.title, columnsTitle(row.sizes.columns), pixels(end.width));
    return where + ' ' +
           (isChanged(end) ? QObject::tr("%1, was %2", "sizes").arg(pixels(end.after), pixels(end.before))
                           : QObject::tr("%1, unchanged", "size").arg(pixels(end.before)));
}

QVariant AnswerModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    switch (role) {
        case Qt::DisplayRole:
            return text(index);
        case Qt::AccessibleTextRole:
            return spokenText(index);
        case Qt::ToolTipRole:
            if (kind(index.row()) == RowKind::Finding) return toolTipText(at(index.row()).mark.says);
            return kind(index.row()) == RowKind::Sizes ? toolTipText(spokenText(index)) : QVariant();
        default:
            return {};
    }
}

QVariant AnswerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == Band        ? QObject::tr("Sizes in px")
           : section == NarrowEnd ? QObject::tr("Narrow end")
                                  : QObject::tr("Wide end");
}

std::optional<PlotMark> AnswerModel::placeOf(const QModelIndex& index) const {
    if (!index.isValid()) return std::nullopt;
    const Row& row = at(index.row());
    if (row.kind == RowKind::Limit) return markOf(row.limit, conflicts_);
    if (row.kind == RowKind::Title) return std::nullopt;
    if (row.kind == RowKind::Finding) return row.mark;
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
