#include "findings/silencing.h"

#include <QDialogButtonBox>
#include <QInputDialog>
#include <QPushButton>
#include <algorithm>

#include "checks/titles.h"

namespace tenter::desktop::findings {

namespace {

QString titleOf(const std::string& check) {
    return QString::fromStdString(checks::titleOfCheck(check));
}

}  // namespace

void silence(QWidget* parent, Document& document, const std::string& check) {
    const QString name = titleOf(check);
    QInputDialog dialog(parent);
    dialog.setWindowTitle(QObject::tr("Silence check “%1”").arg(name));
    dialog.setLabelText(QObject::tr("Tenter hides all findings of the check “%1” in this project.\n"
                                    "Reason (saved in the project, for others who work on it later):")
                            .arg(name));
    dialog.setOkButtonText(QObject::tr("Silence"));
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
    document.edit(QObject::tr("Silence check “%1”").arg(name), [&](project::Project& project) {
        std::vector<project::Silence>& silenced = project.checking.silenced;
        if (std::ranges::find(silenced, check, &project::Silence::check) == silenced.end())
            silenced.push_back({check, reason.toStdString()});
    });
}

void fillSilenceMenu(QMenu& menu, Document& document, const std::string& check) {
    menu.clear();
    QWidget* const parent = menu.parentWidget();
    if (!check.empty())
        menu.addAction(QObject::tr("Silence check “%1”…").arg(titleOf(check)), parent,
                       [parent, &document, check] { silence(parent, document, check); });
    for (const project::Silence& one : document.project().checking.silenced) {
        const QString name = titleOf(one.check);
        menu.addAction(QObject::tr("Stop silencing check “%1” (reason: %2)")
                           .arg(name, QString::fromStdString(one.reason)),
                       parent, [&document, name, silenced = one.check] {
                           document.edit(QObject::tr("Stop silencing check “%1”").arg(name),
                                         [&](project::Project& project) {
                                             std::erase_if(project.checking.silenced,
                                                           [&](const project::Silence& silence) {
                                                               return silence.check == silenced;
                                                           });
                                         });
                       });
    }
}

}  // namespace tenter::desktop::findings
