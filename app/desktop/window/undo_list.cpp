#include "window/undo_list.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QUndoView>
#include <QVBoxLayout>

namespace tenter::desktop::window {

namespace {

class UndoList : public QDialog {
public:
    UndoList(QUndoStack& undo, QWidget* parent) : QDialog(parent) {
        setWindowTitle(QObject::tr("Undo list"));
        setAttribute(Qt::WA_DeleteOnClose);
        resize(400, 480);
        auto* note =
            new QLabel(QObject::tr("Choose a step to return to the row as it was after that step."), this);
        note->setWordWrap(true);
        auto* list = new QUndoView(&undo, this);
        list->setEmptyLabel(QObject::tr("As opened"));
        list->setTextElideMode(Qt::ElideMiddle);
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setAccessibleName(QObject::tr("Undo list"));
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
        connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
        auto* box = new QVBoxLayout(this);
        box->setContentsMargins(16, 16, 16, 16);
        box->setSpacing(8);
        box->addWidget(note);
        box->addWidget(list, 1);
        box->addWidget(buttons);
        list->setFocus();
    }
};

}  // namespace

void showUndoList(QUndoStack& undo, QWidget* parent) {
    auto* open = parent->findChild<QWidget*>("undoList");
    if (open == nullptr) {
        open = new UndoList(undo, parent);
        open->setObjectName("undoList");
    }
    open->show();
    open->raise();
    open->activateWindow();
}

}  // namespace tenter::desktop::window
