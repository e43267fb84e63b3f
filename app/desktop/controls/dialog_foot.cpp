#include "controls/dialog_foot.h"

#include <QShortcut>

namespace tenter::desktop::controls {

DialogFoot dialogFoot(QDialog* dialog, const QString& action, const QString& tip,
                      const std::function<void()>& act) {
    const DialogFoot foot{new QHBoxLayout, new QLabel(dialog), new QPushButton(action, dialog)};
    foot.layout->setSpacing(8);
    foot.hint->setWordWrap(true);
    foot.hint->setForegroundRole(QPalette::PlaceholderText);
    foot.action->setToolTip(tip);
    auto* cancel = new QPushButton(QObject::tr("Cancel"), dialog);
    QWidget::setTabOrder(cancel, foot.action);
    for (QPushButton* button : {cancel, foot.action})
        button->setAutoDefault(false);
    foot.layout->addWidget(foot.hint, 1);
    foot.layout->addWidget(cancel);
    foot.layout->addWidget(foot.action);
    QObject::connect(cancel, &QPushButton::clicked, dialog, &QDialog::reject);
    QObject::connect(foot.action, &QPushButton::clicked, dialog, act);
    for (const int key : {Qt::Key_Return, Qt::Key_Enter})
        QObject::connect(new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key)), dialog),
                         &QShortcut::activated, dialog, act);
    return foot;
}

}  // namespace tenter::desktop::controls
