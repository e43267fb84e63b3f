#include "findings/model.h"

#include <algorithm>

#include "findings/wording.h"
#include "session/changes.h"

namespace tenter::desktop::findings {

Model::Model(const CheckRunner& checks, QObject* parent) : QAbstractListModel(parent), checks_(checks) {
    onChange(checks_, CheckRunner::Change::Findings, this, &Model::fill);
    fill();
}

void Model::setSeverity(std::optional<checks::Severity> severity) {
    if (severity == severity_) return;
    severity_ = severity;
    fill();
}

int Model::count(checks::Severity severity) const {
    return static_cast<int>(std::ranges::count(checks_.findings(), severity, &checks::Finding::severity));
}

// While a ramp is dragged, often only the widths of findings change. Then the model is not reset, so that
// views keep their scroll position and selection.
void Model::fill() {
    std::vector<std::size_t> listed;
    std::vector<checks::Finding> shown;
    const std::vector<checks::Finding>& all = checks_.findings();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (severity_ && all[i].severity != *severity_) continue;
        listed.push_back(i);
        shown.push_back(all[i]);
    }
    const bool same = std::ranges::equal(shown, shown_, [](const auto& one, const auto& other) {
        return one.check == other.check && one.severity == other.severity && one.place == other.place;
    });
    if (!same) beginResetModel();
    listed_ = std::move(listed);
    shown_ = std::move(shown);
    if (!same)
        endResetModel();
    else if (!listed_.empty())
        Q_EMIT dataChanged(index(0), index(static_cast<int>(listed_.size()) - 1));
}

int Model::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(listed_.size());
}

const checks::Finding& Model::finding(int row) const {
    return shown_[static_cast<std::size_t>(row)];
}

int Model::rowOf(std::size_t index) const {
    const auto found = std::ranges::find(listed_, index);
    return found == listed_.end() ? -1 : static_cast<int>(found - listed_.begin());
}

QVariant Model::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return describe(checks_.project(), finding(index.row()), checks_.audience());
    return {};
}

}  // namespace tenter::desktop::findings
