// The main window: menus, variant switch, row view above the width axis, panels beside them.
#pragma once

#include <QMainWindow>
#include <QStackedWidget>
#include <memory>

#include "axis/axis_pane.h"
#include "findings/panel.h"
#include "help/help.h"
#include "panels/side_panel.h"
#include "row/row_view.h"
#include "session/session.h"
#include "start_page/start_page.h"
#include "window/audience_import.h"
#include "window/break_choice.h"
#include "window/browser_zoom.h"
#include "window/drops.h"
#include "window/exports.h"
#include "window/file_controller.h"
#include "window/navigation.h"
#include "window/problem_panel.h"
#include "window/saved_version.h"
#include "window/status_note.h"
#include "window/strip.h"
#include "window/tooltips.h"
#include "window/view_choices.h"
#include "window/work_area.h"

namespace tenter::desktop::compare {
class CheckOffer;
class CompareDialog;
class Comparison;
}  // namespace tenter::desktop::compare

namespace tenter::desktop::recovery {
class Offer;
class Recorder;
}  // namespace tenter::desktop::recovery

namespace tenter::desktop::page_import {
class ImportDialog;
}
namespace tenter::desktop::sheet_compare {
class SheetDialog;
}
namespace tenter::desktop::new_row {
class NewRowDialog;
}

namespace tenter::desktop::window {

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// `session` must outlive the window.
    explicit MainWindow(Session& session, QWidget* parent = nullptr);
    ~MainWindow() override;
    void openFile(const QString& file) { files_->open(file); }
    /// Keeps unsaved changes in recovery files in `folder` from now on. Offers to restore those of a program
    /// that did not close by itself, and shows reports of its error.
    void keepUnsavedWork(const QString& folder);
    /// The menus. They are not QMainWindow’s menu bar, because they share a line with the strip.
    [[nodiscard]] QMenuBar* menuBar() const { return menus_; }

protected:
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void takeRoom();
    void followSession();
    void buildMenus();
    void buildFileMenu();
    void buildEditMenu();
    void buildViewMenu();
    void buildGoMenu();
    void buildHelpMenu();
    QAction* needsProject(QAction* action);
    void showTitle();
    void showProject();
    void showSettings();
    void compareWithBrowser();
    void fillRecent();
    /// Opens the dialog for a new row, with files if there are any.
    void newRow(const QStringList& files = {});
    /// Opens the dialog that compares the project with a stylesheet.
    void compareSheet();
    void importRow(const QString& page = {});
    /// False if the person keeps the open project.
    bool startProject(const project::Project& project, const std::filesystem::path& folder,
                      const QString& message);
    /// Offers to check the row that was imported last in a browser.
    void offerCheck();
    void useOwnMarkup();
    void revertToSaved();
    void enableOwnMarkup();
    void showPreviewState();
    void restoreUnsavedWork();

    Session& session_;
    QMenuBar* menus_;
    FileController* files_;
    row::RowView* row_;
    compare::Comparison* comparison_;
    axis::AxisPane* axis_;
    panels::SidePanel* side_;
    findings::Panel* findings_;
    start_page::StartPage* start_;
    ProblemPanel* problems_;
    StatusNote* note_;
    BreakChoice* breaks_;
    BrowserZoom* browserZoom_;
    SavedVersion* saved_;
    Strip* strip_;
    ViewChoices* choices_;
    Exports* exports_;
    help::Help* help_;
    std::unique_ptr<AudienceImport> audience_;
    std::unique_ptr<Drops> drops_;
    std::unique_ptr<Navigation> navigation_;
    WrappedTooltips tooltips_;
    QStackedWidget* stack_ = nullptr;
    WorkArea* work_ = nullptr;
    compare::CheckOffer* check_ = nullptr;
    recovery::Offer* recovery_ = nullptr;
    recovery::Recorder* recorder_ = nullptr;  ///< null: unsaved changes are not kept
    compare::CompareDialog* compare_ = nullptr;
    page_import::ImportDialog* given_ = nullptr;
    sheet_compare::SheetDialog* sheet_ = nullptr;
    new_row::NewRowDialog* newRow_ = nullptr;
    QMenu* recentMenu_ = nullptr;
    QAction* preview_ = nullptr;
    QAction* ownMarkup_ = nullptr;
    QAction* stopWeighting_ = nullptr;
    QList<QAction*> projectActions_;
};

}  // namespace tenter::desktop::window
