// The name of a lane in the left gutter: a toggle button that opens and closes the lane.
#pragma once

#include <QAbstractButton>

namespace tenter::desktop::axis {

class Disclosure : public QAbstractButton {
    Q_OBJECT

public:
    /// `subtitle`, such as the unit of the values, is shown below the name while the lane is open.
    Disclosure(const QString& name, const QString& subtitle, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    QString subtitle_;
};

}  // namespace tenter::desktop::axis
