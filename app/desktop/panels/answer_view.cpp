#include "panels/answer_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollArea>

#include "panels/answer_delegate.h"
#include "row/ink.h"

namespace tenter::desktop::panels {

namespace {

/// The longest content of a column of sizes.
const QString widestSizes = QStringLiteral("88.88 → 88.88");

constexpr int headerHeight = 24;  // px

/// Column titles in the secondary colour above a hairline.
class AnswerHeader : public QHeaderView {
public:
    explicit AnswerHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {}
    [[nodiscard]] QSize sizeHint() const override { return {QHeaderView::sizeHint().width(), headerHeight}; }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override {
        painter->fillRect(rect, palette().color(QPalette::Window));
        painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1),
                          palette().color(QPalette::Midlight));
        painter->setPen(row::Ink::of(palette()).quiet);
        painter->drawText(rect.adjusted(AnswerView::cellMargin, 0, -AnswerView::cellMargin, 0),
                          Qt::AlignVCenter | (column == AnswerModel::Band ? Qt::AlignLeft : Qt::AlignRight),
                          model()->headerData(column, Qt::Horizontal).toString());
    }
};

}  // namespace

AnswerView::AnswerView(AnswerModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setModel(&model_);
    setItemDelegate(new AnswerDelegate(model_, this));
    setAccessibleName("Sizes before and after, and their limits");
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setSelectionMode(QAbstractItemView::NoSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    setCornerButtonEnabled(false);
    viewport()->setBackgroundRole(QPalette::Window);
    setMouseTracking(true);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(1);
    auto* header = new AnswerHeader(this);
    setHorizontalHeader(header);
    header->setHighlightSections(false);
    header->setSectionsClickable(false);
    header->setMinimumSectionSize(1);
    header->setSectionResizeMode(QHeaderView::Fixed);
    connect(this, &QAbstractItemView::clicked, this, &AnswerView::choose);
    connect(&model_, &QAbstractItemModel::modelReset, this, &AnswerView::updateRows);
}

void AnswerView::choose(const QModelIndex& index) {
    if (const auto place = model_.placeOf(index)) Q_EMIT placeChosen(*place);
}

void AnswerView::updateRows() {
    const int width = this->width();
    const int sizes = std::min(fontMetrics().horizontalAdvance(widestSizes) + 2 * cellMargin + 4, width / 3);
    const int band = width - 2 * sizes;
    setColumnWidth(AnswerModel::Band, band);
    setColumnWidth(AnswerModel::NarrowEnd, sizes);
    setColumnWidth(AnswerModel::WideEnd, sizes);
    clearSpans();
    bool hasSizes = false;
    const auto& delegate = static_cast<const AnswerDelegate&>(*itemDelegate());
    for (int row = 0; row < model_.rowCount(); ++row) {
        const bool isSizes = model_.kind(row) == AnswerModel::RowKind::Sizes;
        hasSizes = hasSizes || isSizes;
        if (!isSizes) setSpan(row, 0, 1, AnswerModel::ColumnCount);
        setRowHeight(row, delegate.rowHeight(font(), row, width, band));
    }
    horizontalHeader()->setVisible(hasSizes);
    setFixedHeight(verticalHeader()->length() + (hasSizes ? headerHeight : 0));
}

void AnswerView::resizeEvent(QResizeEvent* event) {
    if (event->size().width() != event->oldSize().width()) updateRows();
    QTableView::resizeEvent(event);
}

void AnswerView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
            choose(currentIndex());
            return;
        case Qt::Key_Escape:
            event->ignore();
            return;
        default:
            QTableView::keyPressEvent(event);
    }
}

void AnswerView::mouseMoveEvent(QMouseEvent* event) {
    const bool goes = model_.placeOf(indexAt(event->position().toPoint())).has_value();
    viewport()->setCursor(goes ? Qt::PointingHandCursor : Qt::ArrowCursor);
    QTableView::mouseMoveEvent(event);
}

void AnswerView::focusInEvent(QFocusEvent* event) {
    // The keyboard starts at the first place to go to, not at a title.
    for (int row = 0; row < model_.rowCount() && !currentIndex().isValid(); ++row) {
        const QModelIndex index = model_.index(row, AnswerModel::Band);
        if (model_.placeOf(index)) setCurrentIndex(index);
    }
    QTableView::focusInEvent(event);
}

void AnswerView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (!current.isValid() || !hasFocus()) return;
    const QRect cell = visualRect(current);
    for (QWidget* above = parentWidget(); above != nullptr; above = above->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(above)) {
            const QPoint centre = viewport()->mapTo(area->widget(), cell.center());
            area->ensureVisible(centre.x(), centre.y(), 0, cell.height() / 2 + 8);
            return;
        }
}

}  // namespace tenter::desktop::panels
