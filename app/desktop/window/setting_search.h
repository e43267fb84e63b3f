// The field “Find setting”: a search for settings by their labels and synonyms.
#pragma once

#include <QLineEdit>
#include <vector>

#include "panels/side_panel.h"
#include "window/setting_list.h"

namespace tenter::desktop::window {

class SettingSearch : public QLineEdit {
    Q_OBJECT

public:
    explicit SettingSearch(panels::SidePanel& panel, QWidget* parent = nullptr);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void go(int place);

    panels::SidePanel& panel_;
    std::vector<panels::SidePanel::Place> places_;
    SettingList* list_;
};

}  // namespace tenter::desktop::window
