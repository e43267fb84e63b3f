// The solver's answer as a table model: sizes before and after per role and band, with the limits and the
// findings that come and go below them.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "remedy/effects.h"
#include "session/plot_annotations.h"
#include "solve/answer_table.h"

namespace tenter::desktop::panels {

/// Rows are role titles, the sizes of a role in a band, limits and findings. Only sizes have several columns.
class AnswerModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Band, NarrowEnd, WideEnd, ColumnCount };
    enum class RowKind { Title, Sizes, Limit, Finding };
    /// What the sizes do to a finding.
    enum class Effect { Removes, Adds, Widens };

    explicit AnswerModel(QObject* parent = nullptr);
    /// Shows `table`, the answer for `project`: its sizes and limits, or the places of its conflict.
    /// The rows of the variant with the index `first` come first.
    void setTable(const project::Project& project, const solve::AnswerTable& table, std::size_t first);
    /// Adds the findings that come and go with the sizes, each below the role and band that has its worst
    /// place. `project` is the one that `setTable` was called with.
    void setEffects(const project::Project& project, const remedy::Effects& effects);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] RowKind kind(int row) const { return at(row).kind; }
    /// The sizes of a row of that kind.
    [[nodiscard]] const solve::SizeRow& sizes(int row) const { return at(row).sizes; }
    /// The limit of a row of that kind.
    [[nodiscard]] const solve::Limit& limit(int row) const { return at(row).limit; }
    /// The effect of a row with a finding.
    [[nodiscard]] Effect effect(int row) const { return at(row).effect; }
    /// The place to go to from a cell: that of a limit or a finding, or an end of a band. None for a title.
    [[nodiscard]] std::optional<PlotMark> placeOf(const QModelIndex& index) const;
    /// The places of all limits, for the plots.
    [[nodiscard]] std::vector<PlotMark> marks() const;

private:
    struct Row {
        RowKind kind = RowKind::Title;
        QString title;
        solve::SizeRow sizes;
        solve::Limit limit;
        Effect effect = Effect::Removes;
        remedy::Change finding;
        QString text;   ///< of a finding
        PlotMark mark;  ///< of a finding
    };
    [[nodiscard]] const Row& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    [[nodiscard]] QString text(const QModelIndex& index) const;
    [[nodiscard]] QString spokenText(const QModelIndex& index) const;

    /// The index behind the sizes to which a finding belongs, their limits and their other findings;
    /// empty if it belongs to none.
    [[nodiscard]] std::optional<std::size_t> placeFor(const project::Project& project,
                                                      const remedy::Change& change) const;

    std::vector<Row> rows_;
    bool conflicts_ = false;
};

}  // namespace tenter::desktop::panels
