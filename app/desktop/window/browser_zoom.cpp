#include "window/browser_zoom.h"

#include <QActionGroup>

#include "document/wording.h"

namespace tenter::desktop::window {

BrowserZoom::BrowserZoom(ViewState& view, row::RowView& row, StatusNote& note, QObject* parent)
    : QObject(parent), view_(view), row_(row), note_(note) {
    auto* group = new QActionGroup(this);
    for (const double zoom : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0}) {
        auto* action = new QAction(percent(zoom), this);
        action->setCheckable(true);
        action->setData(zoom);
        action->setChecked(zoom == 1);
        connect(action, &QAction::triggered, this, [this, zoom] { set(zoom); });
        group->addAction(action);
        actions_ << action;
    }
    connect(&row_, &row::RowView::zoomChanged, this, &BrowserZoom::onRowZoom);
}

// A reader at zoom z on a viewport W sees the page laid out at W / z. CSSOM View 1, § 2: page zoom.
void BrowserZoom::set(double zoom) {
    const double window = view_.width() * zoom_;
    zoom_ = zoom;
    view_.setWidth(window / zoom);
    row_.setZoom(zoom);
    const QString cut = view_.width() == window / zoom
                            ? QString()
                            : ' ' + QObject::tr("Shown at %1, the end of the project’s range of widths.")
                                        .arg(pixels(view_.width()));
    note_.showMessage(QObject::tr("A browser window of %1 at %2 zoom has a viewport of %3.")
                          .arg(pixels(window), percent(zoom), pixels(window / zoom)) +
                      cut);
}

void BrowserZoom::onRowZoom(double zoom) {
    if (zoom != zoom_) zoom_ = 1;
    for (QAction* action : actions_)
        action->setChecked(action->data().toDouble() == zoom_);
}

}  // namespace tenter::desktop::window
