// The lane “Thumbnails”: the row at its key widths, each connected by a line to its width on the axis.
#pragma once

#include <QTimer>
#include <QWidget>
#include <vector>

#include "axis/thumbnail.h"
#include "axis/width_scale.h"
#include "session/session.h"

namespace tenter::desktop::axis {

class ThumbnailsLane : public QWidget {
    Q_OBJECT

public:
    static constexpr int leaderHeight = 12;
    static int laneHeight() {
        return leaderHeight + Thumbnail::pictureHeight + Thumbnail::captionHeight() + 4;
    }
    ThumbnailsLane(Session& session, const WidthScale& scale, QWidget* parent);
    [[nodiscard]] const std::vector<Thumbnail*>& thumbnails() const { return thumbnails_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void rebuild();
    void arrange();
    void onWidth();

    Session& session_;
    const WidthScale& scale_;
    QTimer idleTimer_;
    std::vector<Thumbnail*> thumbnails_;  // visible
    std::vector<Thumbnail*> spare_;       // hidden, to be reused
};

}  // namespace tenter::desktop::axis
