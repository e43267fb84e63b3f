// The table of the solver's answer, as high as its content. A click or Enter goes to the place of a cell.
#pragma once

#include <QTableView>

#include "panels/answer_model.h"

namespace tenter::desktop::panels {

class AnswerView : public QTableView {
    Q_OBJECT

public:
    /// Left and right of the content of a cell, px.
    static constexpr int cellMargin = 4;

    explicit AnswerView(AnswerModel& model, QWidget* parent = nullptr);

Q_SIGNALS:
    void placeChosen(const PlotMark& place);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void choose(const QModelIndex& index);
    /// Sets the spans, the heights of the rows and the height of the view.
    void updateRows();

    AnswerModel& model_;
};

}  // namespace tenter::desktop::panels
