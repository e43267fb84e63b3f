#include "panels/answer_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollArea>

#include "panels/answer_delegate.h"
#include "panels/plain_header.h"

namespace tenter::desktop::panels {

namespace {

/// The longest content of a column of sizes.
const QString widestSizes = QStringLiteral("88.88 → 88.88");

}  // namespace

AnswerView::AnswerView(AnswerModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setModel(&model_);
    setItemDelegate(new AnswerDelegate(model_, this));
    setAccessibleName(QObject::tr("Sizes before and after, their limits and their findings"));
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
    auto* header = new PlainHeader(cellMargin, this);
    setHorizontalHeader(header);
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
    setFixedHeight(verticalHeader()->length() + (hasSizes ? PlainHeader::height : 0));
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
