// A handle on the axis: moved by dragging, or by the arrow keys while it has the focus.
#pragma once

#include <QWidget>

namespace tenter::desktop::axis {

class Handle : public QWidget {
    Q_OBJECT

public:
    enum class Shape { End, Edge };
    Handle(Shape shape, QWidget* parent);
    /// A prominent handle is always drawn; any other only while it is hovered, dragged or focused.
    void setProminent(bool on);
    [[nodiscard]] bool isProminent() const { return prominent_; }
    [[nodiscard]] bool isDragged() const { return dragged_; }
    void setCentre(const QPointF& centre);
    /// Moves by steps: the end of a ramp upwards, an edge to the right; negative: down, to the left.
    void nudge(int steps);

Q_SIGNALS:
    void grabbed();
    /// Where the centre of the handle should go, in px of the parent.
    void movedTo(const QPointF& centre);
    /// Steps to the right and upwards (negative: left, down); `coarse` means ten times as far.
    void nudged(int right, int up, bool coarse);
    void released();
    /// Escape during a drag: the value from before it is to be restored. `released` follows.
    void cancelled();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    Shape shape_;
    bool prominent_ = false;
    bool hovered_ = false;
    bool dragged_ = false;
    bool nudging_ = false;
    QPointF hold_;
};

}  // namespace tenter::desktop::axis
