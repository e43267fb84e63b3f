// A small preview of a picture, for setting its focal point.
#pragma once

#include <QImage>
#include <QString>
#include <QWidget>

namespace tenter::desktop::panels {

/// A click, a drag or arrow keys move the point. The area that the slot crops is darkened.
class FocusPicker : public QWidget {
    Q_OBJECT

public:
    explicit FocusPicker(QWidget* parent = nullptr);
    /// `ratio`: width of the slot divided by its height. `x` and `y`: the focal point, 0 to 1 from the top
    /// left.
    void preview(const QString& file, double x, double y, double ratio);
    [[nodiscard]] double focusX() const { return x_; }
    [[nodiscard]] double focusY() const { return y_; }
    [[nodiscard]] QSize sizeHint() const override { return {240, 168}; }

Q_SIGNALS:
    void moved();
    void released();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QRectF frame() const;
    void moveTo(const QPointF& position);
    void put(double x, double y);

    QString file_;
    QImage image_;
    double x_ = 0.5, y_ = 0.5, ratio_ = 1;
};

}  // namespace tenter::desktop::panels
