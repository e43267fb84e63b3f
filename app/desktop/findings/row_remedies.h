// The remedies of the finding that is open in the list: searched for, shown in its row, applied.
#pragma once

#include <QListView>
#include <QPointer>

#include "findings/delegate.h"
#include "findings/model.h"
#include "findings/remedy_box.h"
#include "findings/remedy_search.h"
#include "session/session.h"

namespace tenter::desktop::findings {

/// Only the document itself has remedies, not a proposal or the saved version.
class RowRemedies : public QObject {
    Q_OBJECT

public:
    /// `list` shows `model` by `delegate`.
    RowRemedies(Session& session, const Model& model, QListView& list, Delegate& delegate,
                QObject* parent = nullptr);
    /// To be called after the open row or the findings have changed.
    void follow();
    [[nodiscard]] RemedySearch& search() { return search_; }
    /// The box in the open row; null if there is none.
    [[nodiscard]] RemedyBox* box() const { return box_; }

Q_SIGNALS:
    void applied(const QString& label);  ///< a remedy has changed the project

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// What an answer belongs to.
    struct Asked {
        int revision = 0;  ///< of the document
        std::size_t variant = 0;
        std::string key, says;
        double share = 0;  ///< of the audience, which has no number
        std::optional<project::Trial> trial;
        friend bool operator==(const Asked&, const Asked&) = default;
    };
    void close();
    void open(int row);
    void ask(const checks::Finding& finding);
    void showAnswer();
    void resizeRow();
    void apply(int index);

    Session& session_;
    const Model& model_;
    QListView& list_;
    Delegate& delegate_;
    RemedySearch search_;
    QPointer<RemedyBox> box_;  // the list owns it and deletes it when its rows change
    int row_ = -1;             // of the box
    std::optional<Asked> asked_;
};

}  // namespace tenter::desktop::findings
