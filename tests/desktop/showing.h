// A window for tests: as it is when it is first started, with a project opened.
#pragma once

#include <QFile>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QtTest>
#include <algorithm>
#include <memory>

#include "document/background_job.h"
#include "project/file.h"
#include "window/main_window.h"

namespace tenter::desktop {

struct OwnSession {
    Session session;
};

/// A window with a session of its own.
class TestWindow : public OwnSession, public window::MainWindow {
public:
    TestWindow() : MainWindow(session) {}
};

/// Opens what a window of 1280 × 800 shows on demand: findings, wrap points, and the plots of size and
/// measure.
inline void openPlotsAndFindings(const window::MainWindow& window) {
    window.findChild<axis::AxisPane*>()->chooseLanes(
        QStringList{"Bands", "Wrap points", "Findings", "Audience", "Font size", "Measure", "Comparison"});
    window.findChild<findings::Panel*>()->setOpen(true);
}

/// The settings of a first start, apart from those of the user.
inline void forgetSettings() {
    QStandardPaths::setTestModeEnabled(true);
    QSettings().clear();
}

/// The window of a first start, without a project, that has the keyboard.
inline std::unique_ptr<TestWindow> activeWindow() {
    forgetSettings();
    auto window = std::make_unique<TestWindow>();
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    [&] { QVERIFY(QTest::qWaitForWindowActive(window.get())); }();
    return window;
}

/// A window with a project, its plots and its findings.
inline std::unique_ptr<TestWindow> shownWindow(const QString& file) {
    forgetSettings();
    auto window = std::make_unique<TestWindow>();
    window->resize(1280, 800);
    window->show();
    window->openFile(file);
    openPlotsAndFindings(*window);
    return window;
}

/// Waits until no background job of the window runs, so that its results are shown.
inline void waitForJobs(const QWidget& window) {
    const auto idle = [&] {
        return std::ranges::none_of(window.findChildren<BackgroundJob*>(), &BackgroundJob::isRunning);
    };
    QVERIFY(QTest::qWaitFor(idle, 30000));
    // A job may announce its result in a further event.
    QTest::qWait(0);
}

/// A sample without its wishes, in `folder`: tests say their own.
inline QString bareSample(const QString& name, const QTemporaryDir& folder) {
    const QString samples = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/");
    project::Problems problems;
    auto bare = project::read((samples + name + ".tenter.json").toStdString(), problems);
    if (!bare || !QFile::link(samples + "pictures", folder.filePath("pictures"))) return {};
    bare->row().wishes.reset();
    QFile file(folder.filePath(name + ".tenter.json"));
    if (!file.open(QIODevice::WriteOnly)) return {};
    file.write(QByteArray::fromStdString(project::write(*bare)));
    return file.fileName();
}

}  // namespace tenter::desktop
