// A preview of a changed project, with a description of the changes, and buttons to apply or discard it.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "panels/target.h"

namespace tenter::desktop::panels {

class ProposalBox : public QWidget {
    Q_OBJECT

public:
    explicit ProposalBox(Context& context, QWidget* parent = nullptr);
    /// Shows a preview of `proposal`. It is null if there is nothing to apply. `undoName` is the name of the
    /// undo step, `buttonText` that of the button that applies it, `text` the description by paragraphs.
    void open(const QString& undoName, const QString& buttonText, ShownProject::Proposal proposal,
              const QStringList& text);
    /// Ends the preview without applying it.
    void discard();

Q_SIGNALS:
    void closed();  ///< by a button or Escape: the focus needs a new place

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void apply();
    void close();

    Context& context_;
    QLabel* text_;
    QPushButton* apply_;
    QPushButton* discard_;
    QString undoName_;
    ShownProject::Proposal proposal_;
    bool open_ = false;
};

}  // namespace tenter::desktop::panels
