// A changed project, shown in the window before it is taken, with what it changes in words.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "panels/target.h"

namespace tenter::desktop::panels {

class ProposalBox : public QWidget {
    Q_OBJECT

public:
    explicit ProposalBox(Context& context, QWidget* parent = nullptr);
    /// `proposal` is null where there is nothing to take; `name` is what undo calls taking it, `take` what
    /// the button says.
    void open(const QString& name, const QString& take, Viewing::Proposal proposal, const QStringList& says);
    /// Back to the document as it is.
    void leave();

signals:
    void left();  ///< taken or not: the focus needs a place

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void take();
    void close();

    Context& context_;
    QLabel* says_;
    QPushButton* take_;
    QPushButton* leave_;
    QString name_;
    Viewing::Proposal proposal_;
    bool open_ = false;
};

}  // namespace tenter::desktop::panels
