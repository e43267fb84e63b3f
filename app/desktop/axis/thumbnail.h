// The row at one width, small, captioned with the width and why it is shown; pressing it goes there.
#pragma once

#include <QAbstractButton>
#include <QImage>

#include "checks/telling_widths.h"
#include "document/viewing.h"
#include "row/pictures.h"
#include "row/row_painter.h"

namespace tenter::desktop::axis {

class Thumbnail : public QAbstractButton {
    Q_OBJECT

public:
    /// `drawn` is set to each thumbnail's width in turn.
    Thumbnail(Viewing& drawn, QWidget* parent);
    void show(const checks::TellingWidth& told);
    [[nodiscard]] double pageWidth() const { return told_.width; }
    /// Draws the row anew.
    void redraw();
    /// True if it shows the width in view.
    void setCurrent(bool on);
    /// Room of the picture and of two lines below it, px.
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
    checks::TellingWidth told_;
    QImage image_;
    bool cropped_ = false;
    bool current_ = false;
};

}  // namespace tenter::desktop::axis
