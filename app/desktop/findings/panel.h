// Findings, under the settings: which there are, by share, and what no check can promise.
#pragma once

#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QStackedWidget>
#include <QWidget>

#include "controls/segments.h"
#include "findings/delegate.h"
#include "findings/model.h"

namespace tenter::desktop::findings {

class Panel : public QWidget {
    Q_OBJECT

public:
    Panel(Survey& survey, const Viewing& viewing, QWidget* parent = nullptr);
    /// Chooses the next (+1) or the previous (−1) of those listed; false past the last.
    bool go(int direction);
    /// The check of the finding that is current in the list; empty if none is.
    [[nodiscard]] std::string currentCheck() const;
    [[nodiscard]] QSize sizeHint() const override { return {328, 304}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {304, 160}; }

private:
    void onSurvey();
    void onChosen();
    void showFilter();
    void setOpen(int row);
    [[nodiscard]] QString silencedTitle() const;

    Survey& survey_;
    const Viewing& viewing_;
    Model* model_;
    controls::Segments* filter_;
    QListView* list_;
    Delegate* delegate_;
    QLabel* empty_;
    QStackedWidget* stack_;
    QMenu* menu_;  ///< of the list
};

}  // namespace tenter::desktop::findings
