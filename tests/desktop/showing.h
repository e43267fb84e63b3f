// A window for tests: as it is when it is first started, with a project opened.
#pragma once

#include <QSettings>
#include <QStandardPaths>
#include <memory>

#include "window/main_window.h"

namespace tenter::desktop {

inline std::unique_ptr<window::MainWindow> shownWindow(const QString& file) {
    QStandardPaths::setTestModeEnabled(true);
    QSettings().clear();
    auto window = std::make_unique<window::MainWindow>();
    window->resize(1280, 800);
    window->show();
    window->openFile(file);
    return window;
}

}  // namespace tenter::desktop
