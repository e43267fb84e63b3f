// A small picture of the row at one width, with a caption: the width and why it is a key width. A click goes
// there.
#pragma once

#include <QAbstractButton>
#include <QImage>

#include "checks/key_widths.h"
#include "controls/text_scale.h"
#include "row/pictures.h"
#include "row/row_painter.h"
#include "session/layout_cache.h"

namespace tenter::desktop::axis {

class Thumbnail : public QAbstractButton {
    Q_OBJECT

public:
    /// Draws the current row at a width of its own.
    Thumbnail(const LayoutCache& layouts, const Document& document, QWidget* parent);
    void show(const checks::KeyWidth& keyWidth);
    [[nodiscard]] double pageWidth() const { return keyWidth_.width; }
    /// Draws the row again.
    void redraw();
    /// Marks the thumbnail of the current width.
    void setCurrent(bool on);
    /// Height of the picture and of the two lines below it, px.
    static constexpr int pictureHeight = 64;
    static int captionHeight() { return controls::scaled(2 * 16 + 4); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    const LayoutCache& layouts_;
    layout::Layout layout_;  // at the width of the thumbnail
    row::Pictures pictures_;
    row::RowPainter painter_;
    checks::KeyWidth keyWidth_;
    QImage image_;
    bool cropped_ = false;
    bool current_ = false;
};

}  // namespace tenter::desktop::axis
