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
    menu->addAction(QObject::tr("&Show settings"), this, &RowMenu::settingsRequested);
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
            menu.addAction(QObject::tr("Change &picture…"), this, &RowMenu::changePicture);
        else if (!isPicture() && changes)
            // The key is shown; the row view handles it.
            menu.addAction(QObject::tr("&Edit text") + '\t' + keysTitle("Enter"), this,
                           [this, part] { text_.begin(part); });
        if (!isPicture()) menu.addActions(forText_);
        if (whyCardsStay(session_).isEmpty()) {
            menu.addSeparator();
            if (commands_.canMovePart(-1))
                menu.addAction(QObject::tr("Move part &up") + '\t' + keysTitle("Alt+Up"), &commands_,
                               [this] { commands_.movePart(-1); });
            if (commands_.canMovePart(1))
                menu.addAction(QObject::tr("Move part d&own") + '\t' + keysTitle("Alt+Down"), &commands_,
                               [this] { commands_.movePart(1); });
        }
    }
    if (whyCardsStay(session_).isEmpty())
        menu.addAction(commands_.removePartTitle() + '\t' + keysTitle("Delete"), &commands_,
                       &CardCommands::removePart);
    menu.addSeparator();
}

void RowMenu::addCards(QMenu& menu) {
    const bool mirrored = session_.document.project().rightToLeft;
    const auto cards = selectedCards(session_.selection);
    const auto count = static_cast<int>(cards.size());
    const bool several = count > 1;
    const auto addMove = [&](const QString& title, const QString& keys, int by) {
        if (commands_.canMove(by))
            menu.addAction(title + '\t' + keysTitle(keys), &commands_, [this, by] { commands_.move(by); });
    };
    addMove(several ? QObject::tr("Move %n card(s) &left", nullptr, count) : QObject::tr("Move card &left"),
            "Alt+Left", mirrored ? 1 : -1);
    addMove(several ? QObject::tr("Move %n card(s) &right", nullptr, count) : QObject::tr("Move card &right"),
            "Alt+Right", mirrored ? -1 : 1);
    if (!cards.empty()) {
        menu.addAction((several ? QObject::tr("&Duplicate %n card(s)", nullptr, count)
                                : QObject::tr("&Duplicate card")) +
                           '\t' + keysTitle("Ctrl+D"),
                       &commands_, &CardCommands::duplicate);
        const bool byKey = !session_.selection.part();
        const QString title =
            several ? QObject::tr("Re&move %n card(s)", nullptr, count) : QObject::tr("Re&move card");
        menu.addAction(byKey ? title + '\t' + keysTitle("Delete") : title, &commands_, &CardCommands::remove);
    }
    menu.addAction(QObject::tr("&Add card"), &commands_, &CardCommands::add);
    menu.addSeparator();
}

void RowMenu::changePicture() {
    const auto part = session_.selection.part();
    if (!part || !isPicture()) return;
    const QString file = QFileDialog::getOpenFileName(
        &parent_, QObject::tr("Choose picture"), QString::fromStdString(session_.document.folder().string()),
        QObject::tr("Pictures (*.png *.jpg *.jpeg *.webp *.avif)"));
    if (file.isEmpty()) return;
    const PlacedPictures done = placePictures(session_.document, part->card, {file}, part->part);
    if (!done.problem.isEmpty()) Q_EMIT message(done.problem);
}

}  // namespace tenter::desktop::row::editing
