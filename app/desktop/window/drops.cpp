#include "window/drops.h"

#include "document/place_font.h"
#include "document/place_picture.h"
#include "document/wording.h"

namespace tenter::desktop::window {

void Drops::drop(const QStringList& files, const QPoint& global) {
    const QString& first = files.first();
    if (first.endsWith(project::fileEnding)) {
        files_.open(first);
    } else if (first.endsWith(".csv", Qt::CaseInsensitive)) {
        audience_.read(first);
    } else if (!viewing_.document().hasProject()) {
        note_.showMessage("Open a project first. Then drop pictures and fonts.");
    } else if (isFontName(first)) {
        const QString wrong = placeFont(viewing_.document(), first, viewing_.role());
        note_.showMessage(wrong.isEmpty() ? roleTitle(viewing_.role()) + " now has this font" : wrong);
    } else {
        dropPictures(files, global);
    }
}

Viewing::Selection Drops::placeUnder(const QPoint& global) const {
    const QPoint at = row_.viewport()->mapFromGlobal(global);
    if (!row_.viewport()->rect().contains(at)) return viewing_.selection();
    return row_.placeAt(at).value_or(viewing_.selection());
}

void Drops::dropPictures(const QStringList& files, const QPoint& global) {
    const bool makesCards = viewing_.document().project().row().cards.empty();
    const Viewing::Selection under = makesCards ? Viewing::Selection{0, -1} : placeUnder(global);
    if (under.card < 0) {
        note_.showMessage("Drop a picture on a card, or a .tenter.json file anywhere.");
        return;
    }
    const auto part = under.part < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(under.part));
    const PlacedPictures done =
        placePictures(viewing_.document(), static_cast<std::size_t>(under.card), files, part);
    if (!done.problem.isEmpty()) {
        note_.showMessage(done.problem);
        return;
    }
    const auto counted = [](std::size_t count, const char* one) {
        return QString::number(count) + ' ' + one + (count == 1 ? "" : "s");
    };
    QString message;
    if (makesCards)
        message = counted(done.placed, "card") + " added. Edit the text in the Words panel.";
    else if (done.placed == 1)
        message = QString("Picture placed in card %1.").arg(under.card + 1);
    else
        message = QString("Pictures placed in cards %1 to %2.")
                      .arg(under.card + 1)
                      .arg(under.card + static_cast<int>(done.placed));
    if (const std::size_t unused = static_cast<std::size_t>(files.size()) - done.placed; unused > 0)
        message += ' ' + counted(unused, "picture") + (unused == 1 ? " was" : " were") +
                   " not used, because there are no more cards.";
    note_.showMessage(message);
}

}  // namespace tenter::desktop::window
