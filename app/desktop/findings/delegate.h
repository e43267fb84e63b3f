// Draws a finding in the list: severity, share as a bar, text, width ranges.
#pragma once

#include <QStyledItemDelegate>
#include <functional>
#include <utility>

#include "findings/model.h"

namespace tenter::desktop::findings {

/// A closed row shows the first lines of the text. The open row shows the whole text and its basis (a
/// standard, a measurement or common practice).
class Delegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    Delegate(const Model& model, QObject* parent);
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// Sets the open row; −1: none.
    void setOpen(int row) { open_ = row; }
    [[nodiscard]] int open() const { return open_; }
    /// Sets what says how much room a widget needs below the text of the open row, which is `width` px wide.
    void setRoomBelow(std::function<int(int width)> room) { roomBelow_ = std::move(room); }

private:
    const Model& model_;
    int open_ = -1;
    std::function<int(int)> roomBelow_;
};

}  // namespace tenter::desktop::findings
