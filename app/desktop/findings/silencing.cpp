#include "findings/silencing.h"

#include <QDialogButtonBox>
#include <QInputDialog>
#include <QPushButton>
#include <algorithm>

namespace tenter::desktop::findings {

void silence(QWidget* parent, Document& document, const std::string& check) {
    const QString name = QString::fromStdString(check);
    QInputDialog dialog(parent);
    dialog.setWindowTitle("Silence check “" + name + "”");
    dialog.setLabelText("Tenter hides all findings of the check “" + name +
                        "” in this project.\n"
                        "Reason (saved in the project, for others who work on it later):");
    dialog.setOkButtonText("Silence");
    if (const auto* buttons = dialog.findChild<QDialogButtonBox*>()) {
        QPushButton* const ok = buttons->button(QDialogButtonBox::Ok);
        ok->setEnabled(false);
        QObject::connect(&dialog, &QInputDialog::textValueChanged, ok,
                         [ok](const QString& text) { ok->setEnabled(!text.trimmed().isEmpty()); });
    }
    const bool accepted = dialog.exec() == QDialog::Accepted;
    const QString reason = dialog.textValue().trimmed();
    if (!accepted || reason.isEmpty()) return;
    // A check of a finding, once, with a reason: this is never refused.
    document.edit("Silence check “" + name + "”", [&](project::Project& project) {
        std::vector<project::Silence>& silenced = project.checking.silenced;
        if (std::ranges::find(silenced, check, &project::Silence::check) == silenced.end())
            silenced.push_back({check, reason.toStdString()});
    });
}

void fillSilenceMenu(QMenu& menu, Document& document, const std::string& check) {
    menu.clear();
    QWidget* const parent = menu.parentWidget();
    if (!check.empty())
        menu.addAction("Silence check “" + QString::fromStdString(check) + "”…", parent,
                       [parent, &document, check] { silence(parent, document, check); });
    for (const project::Silence& one : document.project().checking.silenced) {
        const QString name = QString::fromStdString(one.check);
        menu.addAction(
            "Stop silencing check “" + name + "” (reason: " + QString::fromStdString(one.reason) + ")",
            parent, [&document, name, silenced = one.check] {
                document.edit("Stop silencing check “" + name + "”", [&](project::Project& project) {
                    std::erase_if(project.checking.silenced,
                                  [&](const project::Silence& silence) { return silence.check == silenced; });
                });
            });
    }
}

}  // namespace tenter::desktop::findings
