// How a finding stands in the list: its severity as a word, its share as a bar, then what it says.
#pragma once

#include <QStyledItemDelegate>

#include "findings/model.h"

namespace tenter::desktop::findings {

/// A finding shows the beginning of what it says; the current one all of it, and by which source.
class Delegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    Delegate(const Model& model, QObject* parent);
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// The row that is shown in full.
    void setOpen(int row) { open_ = row; }
    [[nodiscard]] int open() const { return open_; }

private:
    const Model& model_;
    int open_ = -1;
};

}  // namespace tenter::desktop::findings
