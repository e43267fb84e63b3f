// The drawer “Findings”: a head with the counts, and below it filter, list with remedies, and a note on the
// limits of automated checks.
#pragma once

#include <QLabel>
#include <QMenu>
#include <QStackedWidget>
#include <QToolButton>
#include <QWidget>

#include "controls/segments.h"
#include "findings/delegate.h"
#include "findings/list.h"
#include "findings/model.h"
#include "findings/row_remedies.h"

namespace tenter::desktop::findings {

class Panel : public QWidget {
    Q_OBJECT

public:
    explicit Panel(Session& session, QWidget* parent = nullptr);
    /// Chooses the next (+1) or previous (−1) listed finding; false if there is none.
    bool go(int direction);
    /// Name of the check that reported the current finding of the list; empty if there is none.
    [[nodiscard]] std::string currentCheck() const;
    [[nodiscard]] RowRemedies& remedies() { return *remedies_; }
    /// Shows or hides what is below the head.
    void setOpen(bool open);
    [[nodiscard]] bool isOpen() const { return !body_->isHidden(); }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void opened(bool open);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void onFindings();
    void onChosen();
    void openForChosen();
    void buildBody();
    void showHead();
    void showFilter();
    void showDetails(int row);
    [[nodiscard]] QString silencedTitle() const;

    CheckRunner& checks_;
    Document& document_;
    Model* model_;
    QToolButton* head_;
    QWidget* bar_;  ///< the head
    QLabel* counts_;
    QWidget* body_;
    controls::Segments* filter_;
    List* list_;
    Delegate* delegate_;
    RowRemedies* remedies_;
    QLabel* empty_;
    QStackedWidget* stack_;
    int lastRow_ = 0;  ///< of the finding that was current last
    /// The check and the place of the finding for which the drawer was opened last.
    std::pair<std::string, std::optional<project::PartRef>> openedFor_;
    QMenu* menu_;  ///< context menu of the list
};

}  // namespace tenter::desktop::findings
