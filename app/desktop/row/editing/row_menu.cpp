#include "row/editing/row_menu.h"

#include <QFileDialog>

#include "document/place_picture.h"
#include "document/wording.h"
#include "row/editing/selected_cards.h"

namespace tenter::desktop::row::editing {

bool RowMenu::isPicture() const {
    const auto part = session_.selection.part();
    return part && std::holds_alternative<project::PicturePart>(session_.document.project().part(*part));
}

void RowMenu::open(const QPoint& global) {
    auto* menu = new QMenu(&parent_);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (session_.selection.part()) addPart(*menu);
    if (whyCardsStay(session_).isEmpty()) addCards(*menu);
    menu->addAction(tr("&Show settings"), this, &RowMenu::settingsRequested);
    menu->addSeparator();
    menu->addActions(always_);
    menu->popup(global);
}

void RowMenu::addPart(QMenu& menu) {
    const project::PartRef part = *session_.selection.part();
    const bool changes = session_.shown.showsDocument() && !session_.shown.trial();
    // With several parts selected, only what acts on all of them.
    if (session_.selection.others().empty()) {
        if (isPicture() && changes)
            menu.addAction(tr("Change &picture…"), this, &RowMenu::changePicture);
        else if (!isPicture() && changes)
            // The key is shown; the row view handles it.
            menu.addAction(tr("&Edit text") + "\tEnter", this, [this, part] { text_.begin(part); });
        if (!isPicture()) menu.addActions(forText_);
        if (whyCardsStay(session_).isEmpty()) {
            menu.addSeparator();
            if (commands_.canMovePart(-1))
                menu.addAction(tr("Move part &up") + "\tAlt+Up", &commands_,
                               [this] { commands_.movePart(-1); });
            if (commands_.canMovePart(1))
                menu.addAction(tr("Move part d&own") + "\tAlt+Down", &commands_,
                               [this] { commands_.movePart(1); });
        }
    }
    if (whyCardsStay(session_).isEmpty())
        menu.addAction(commands_.removePartTitle() + "\tDelete", &commands_, &CardCommands::removePart);
    menu.addSeparator();
}

void RowMenu::addCards(QMenu& menu) {
    const bool mirrored = session_.document.project().rightToLeft;
    const auto cards = selectedCards(session_.selection);
    const QString what = cards.size() > 1 ? tr("%1 cards").arg(cards.size()) : tr("card");
    const auto addMove = [&](const QString& where, const QString& key, int by) {
        if (commands_.canMove(by))
            menu.addAction(tr("Move %1 %2").arg(what, where) + '\t' + key, &commands_,
                           [this, by] { commands_.move(by); });
    };
    addMove(tr("&left"), "Alt+Left", mirrored ? 1 : -1);
    addMove(tr("&right"), "Alt+Right", mirrored ? -1 : 1);
    if (!cards.empty()) {
        menu.addAction(tr("&Duplicate %1").arg(what) + "\tCtrl+D", &commands_, &CardCommands::duplicate);
        const bool byKey = !session_.selection.part();
        menu.addAction(tr("Re&move %1").arg(what) + (byKey ? "\tDelete" : ""), &commands_,
                       &CardCommands::remove);
    }
    menu.addAction(tr("&Add card"), &commands_, &CardCommands::add);
    menu.addSeparator();
}

void RowMenu::changePicture() {
    const auto part = session_.selection.part();
    if (!part || !isPicture()) return;
    const QString file = QFileDialog::getOpenFileName(
        &parent_, tr("Choose picture"), QString::fromStdString(session_.document.folder().string()),
        tr("Pictures (*.png *.jpg *.jpeg *.webp *.avif)"));
    if (file.isEmpty()) return;
    const PlacedPictures done = placePictures(session_.document, part->card, {file}, part->part);
    if (!done.problem.isEmpty()) Q_EMIT message(done.problem);
}

}  // namespace tenter::desktop::row::editing
