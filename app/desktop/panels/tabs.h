// The tab bar of the panels. The current tab is underlined.
#pragma once

#include <QTabBar>

namespace tenter::desktop::panels {

class Tabs : public QTabBar {
    Q_OBJECT

public:
    explicit Tabs(QWidget* parent = nullptr);

protected:
    QSize tabSizeHint(int index) const override;
    QSize minimumTabSizeHint(int index) const override;
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace tenter::desktop::panels
