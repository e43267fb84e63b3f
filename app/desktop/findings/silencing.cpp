#include "findings/silencing.h"

#include <QInputDialog>
#include <algorithm>

namespace tenter::desktop::findings {

void silence(QWidget* parent, Document& document, const std::string& check) {
    const QString name = QString::fromStdString(check);
    bool sure = false;
    const QString reason =
        QInputDialog::getText(parent, "Silence a check",
                              "Why " + name + " is not to be told, for whoever comes back to this row:",
                              QLineEdit::Normal, {}, &sure)
            .trimmed();
    if (!sure || reason.isEmpty()) return;
    document.edit("Silence " + name, [&](project::Project& project) {
        std::vector<project::Silence>& silenced = project.checking.silenced;
        if (std::ranges::find(silenced, check, &project::Silence::check) == silenced.end())
            silenced.push_back({check, reason.toStdString()});
    });
}

void fillSilencing(QMenu& menu, Document& document, const std::string& check) {
    menu.clear();
    QWidget* const parent = menu.parentWidget();
    if (!check.empty())
        menu.addAction("Silence " + QString::fromStdString(check) + "…", parent,
                       [parent, &document, check] { silence(parent, document, check); });
    for (const project::Silence& one : document.project().checking.silenced) {
        const QString name = QString::fromStdString(one.check);
        menu.addAction("Tell " + name + " again (" + QString::fromStdString(one.reason) + ")", parent,
                       [&document, name, told = one.check] {
                           document.edit("Tell " + name + " again", [&](project::Project& project) {
                               std::erase_if(project.checking.silenced, [&](const project::Silence& silence) {
                                   return silence.check == told;
                               });
                           });
                       });
    }
}

}  // namespace tenter::desktop::findings
