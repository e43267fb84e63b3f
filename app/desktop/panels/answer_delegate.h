// How the cells of the solver's answer are drawn.
#pragma once

#include <QCache>
#include <QFont>
#include <QStyledItemDelegate>
#include <QTextDocument>

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
    /// `html`, laid out `width` px wide. Valid until the next call. While a value is dragged most texts stay,
    /// so each is laid out once.
    [[nodiscard]] QTextDocument& laidOut(const QString& html, const QFont& font, int width,
                                         Qt::Alignment align, Qt::LayoutDirection direction) const;
    /// Forgets what was laid out in another font.
    void useFont(const QFont& font) const;
    [[nodiscard]] int heightOf(const QString& html, const QFont& font, int width) const;

    const AnswerModel& model_;
    mutable QCache<QString, QTextDocument> documents_{48};
    mutable QCache<QString, int> heights_{512};  // px; of every row, while only some are painted
    mutable QFont font_;                         // of `documents_` and `heights_`
};

}  // namespace tenter::desktop::panels
