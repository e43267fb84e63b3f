#include "window/drops.h"

#include "document/place_font.h"
#include "document/place_picture.h"
#include "document/wording.h"

namespace tenter::desktop::window {

namespace {

bool isPage(const QString& file) {
    return file.endsWith(".html", Qt::CaseInsensitive) || file.endsWith(".htm", Qt::CaseInsensitive) ||
           file.endsWith(".xhtml", Qt::CaseInsensitive);
}

}  // namespace

void Drops::drop(const QStringList& files, const QPoint& global) {
    const QString& first = files.first();
    if (first.endsWith(project::fileEnding)) {
        files_.open(first);
    } else if (isPage(first)) {
        if (startImport) startImport(first);
    } else if (!document_.hasProject() && !isFontName(first)) {
        if (startNewRow) startNewRow(files);
    } else if (first.endsWith(".csv", Qt::CaseInsensitive)) {
        audience_.read(first);
    } else if (!document_.hasProject()) {
        note_.showMessage(QObject::tr("Open a project first. Then drop fonts."));
    } else if (isFontName(first)) {
        const QString wrong = placeFont(document_, first, selection_.role());
        note_.showMessage(
            wrong.isEmpty() ? QObject::tr("%1 now has this font").arg(roleTitle(selection_.role())) : wrong);
    } else {
        dropPictures(files, global);
    }
}

std::optional<Place> Drops::placeUnder(const QPoint& global) const {
    const QPoint at = row_.viewport()->mapFromGlobal(global);
    if (!row_.viewport()->rect().contains(at)) return selection_.place();
    const std::optional<Place> place = row_.placeAt(at);
    return place ? place : selection_.place();
}

void Drops::dropPictures(const QStringList& files, const QPoint& global) {
    const bool makesCards = document_.project().row().cards.empty();
    const std::optional<Place> under = makesCards ? Place{} : placeUnder(global);
    if (!under) {
        note_.showMessage(QObject::tr("Drop a picture on a card, or a .tenter.json file anywhere."));
        return;
    }
    const PlacedPictures done = placePictures(document_, under->card, files, under->part);
    if (!done.problem.isEmpty()) {
        note_.showMessage(done.problem);
        return;
    }

    QString message;
    if (makesCards)
        message = QObject::tr("%n card(s) added. Edit the text in the Words panel.", nullptr,
                              static_cast<int>(done.placed));
    else if (done.placed == 1)
        message = QObject::tr("Picture placed in card %1.").arg(under->card + 1);
    else
        message = QObject::tr("Pictures placed in cards %1 to %2.")
                      .arg(under->card + 1)
                      .arg(under->card + done.placed);
    if (const std::size_t unused = static_cast<std::size_t>(files.size()) - done.placed; unused > 0)
        message += ' ' + QObject::tr("%n picture(s) were not used, because there are no more cards.", nullptr,
                                     static_cast<int>(unused));
    note_.showMessage(message);
}

}  // namespace tenter::desktop::window
