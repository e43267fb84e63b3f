// A question with answers to choose from.
#pragma once

#include <QList>
#include <QMessageBox>

namespace tenter::desktop::controls {

struct Answer {
    QString text;  ///< of its button: a verb
    QMessageBox::ButtonRole role = QMessageBox::AcceptRole;
};

/// Asks in a box above `parent` and returns the index of the chosen answer. `explanation`: what the answers
/// lead to. Enter gives the first answer, Escape the one with RejectRole, which must exist.
int ask(QWidget* parent, const QString& title, const QString& question, const QString& explanation,
        const QList<Answer>& answers);

}  // namespace tenter::desktop::controls
