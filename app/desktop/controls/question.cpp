#include "controls/question.h"

#include <QPushButton>

namespace tenter::desktop::controls {

int ask(QWidget* parent, const QString& title, const QString& question, const QString& explanation,
        const QList<Answer>& answers) {
    QMessageBox box(QMessageBox::NoIcon, title, question, QMessageBox::NoButton, parent);
    box.setInformativeText(explanation);
    QList<QAbstractButton*> buttons;
    for (const Answer& answer : answers) {
        QPushButton* const button = box.addButton(answer.text, answer.role);
        if (buttons.isEmpty()) box.setDefaultButton(button);
        if (answer.role == QMessageBox::RejectRole) box.setEscapeButton(button);
        buttons << button;
    }
    box.exec();
    return static_cast<int>(buttons.indexOf(box.clickedButton()));
}

}  // namespace tenter::desktop::controls
