// A lane's name in the left gutter, which opens and closes the lane.
#pragma once

#include <QAbstractButton>

namespace tenter::desktop::axis {

class Disclosure : public QAbstractButton {
    Q_OBJECT

public:
    Disclosure(const QString& name, const QString& unit, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    QString unit_;  ///< of the lane's values, under its name while it is open
};

}  // namespace tenter::desktop::axis
