#include "help/shortcut_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "controls/text_scale.h"

namespace tenter::desktop::help {

ShortcutDialog::ShortcutDialog(const std::vector<ShortcutGroup>& groups, QWidget* parent) : QDialog(parent) {
    setWindowTitle(QObject::tr("Keyboard shortcuts"));
    resize(controls::scaled(600), controls::scaled(640));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* list = new QTreeWidget(this);
    list->setAccessibleName(QObject::tr("Keyboard shortcuts"));
    list->setHeaderLabels({QObject::tr("Keys"), QObject::tr("Effect")});
    list->setRootIsDecorated(false);
    list->setIndentation(16);
    for (const ShortcutGroup& group : groups) {
        auto* head = new QTreeWidgetItem(list, {group.title});
        QFont strong = list->font();
        strong.setWeight(QFont::DemiBold);
        head->setFont(0, strong);
        head->setFirstColumnSpanned(true);
        for (const Shortcut& shortcut : group.shortcuts)
            new QTreeWidgetItem(head, {shortcut.keys, shortcut.does});
    }
    list->expandAll();
    list->header()->setStretchLastSection(true);
    list->resizeColumnToContents(0);
    box->addWidget(list, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    box->addWidget(buttons);
}

}  // namespace tenter::desktop::help
