// Something on the axis that is dragged, or moved by arrow keys when it has the focus.
#pragma once

#include <QWidget>

namespace tenter::desktop::axis {

class Handle : public QWidget {
    Q_OBJECT

public:
    enum class Shape { End, Edge };
    Handle(Shape shape, QWidget* parent);
    /// Shown in full; otherwise only while the pointer or the keyboard is on it.
    void setProminent(bool on);
    [[nodiscard]] bool isProminent() const { return prominent_; }
    [[nodiscard]] bool isDragged() const { return dragged_; }
    void setCentre(const QPointF& centre);

signals:
    void grabbed();
    /// The pointer's place in the parent, less where the handle was taken hold of.
    void movedTo(const QPointF& centre);
    /// Steps right and up; ten times as far if `coarse`.
    void nudged(int right, int up, bool coarse);
    void released();

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
