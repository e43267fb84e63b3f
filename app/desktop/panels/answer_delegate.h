// How the cells of the solver's answer are drawn.
#pragma once

#include <QStyledItemDelegate>

#include "panels/answer_model.h"

namespace tenter::desktop::panels {

/// Unchanged sizes are in the secondary colour. A limit has a lozenge, as on the plots, and its place is
/// underlined.
class AnswerDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    AnswerDelegate(const AnswerModel& model, QObject* parent);
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// The height of a row in a table `width` px wide, whose first column is `bandWidth` px wide.
    [[nodiscard]] int rowHeight(const QFont& font, int row, int width, int bandWidth) const;

private:
    const AnswerModel& model_;
};

}  // namespace tenter::desktop::panels
