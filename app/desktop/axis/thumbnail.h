// A small picture of the row at one width, with a caption: the width and why it is a key width. A click goes
// there.
#pragma once

#include <QAbstractButton>
#include <QImage>

#include "checks/key_widths.h"
#include "document/viewing.h"
#include "row/pictures.h"
#include "row/row_painter.h"

namespace tenter::desktop::axis {

class Thumbnail : public QAbstractButton {
    Q_OBJECT

public:
    /// Draws with `drawn`, which all thumbnails share; each one sets its own width before it draws.
    Thumbnail(Viewing& drawn, QWidget* parent);
    void show(const checks::KeyWidth& keyWidth);
    [[nodiscard]] double pageWidth() const { return keyWidth_.width; }
    /// Draws the row again.
    void redraw();
    /// Marks the thumbnail of the current width.
    void setCurrent(bool on);
    /// Height of the picture and of the two lines below it, px.
    static constexpr int pictureHeight = 64;
    static constexpr int captionHeight = 2 * 16 + 4;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    Viewing& drawn_;
    row::Pictures pictures_;
    row::RowPainter painter_;
    checks::KeyWidth keyWidth_;
    QImage image_;
    bool cropped_ = false;
    bool current_ = false;
};

}  // namespace tenter::desktop::axis
