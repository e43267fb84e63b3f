// The main window: menus, variant switch, row view above the width axis, panels beside them.
#pragma once

#include <QMainWindow>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>

#include "axis/axis_pane.h"
#include "controls/segments.h"
#include "document/document.h"
#include "document/survey.h"
#include "document/viewing.h"
#include "findings/panel.h"
#include "panels/side_panel.h"
#include "row/row_view.h"
#include "window/file_controller.h"
#include "window/problem_panel.h"
#include "window/setting_search.h"
#include "window/start_page.h"
#include "window/status_note.h"

namespace tenter::desktop::compare {
class CompareDialog;
class Comparison;
}  // namespace tenter::desktop::compare

namespace tenter::desktop::page_import {
class ImportDialog;
}

namespace tenter::desktop::window {

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;
    void openFile(const QString& file) { files_->open(file); }
    [[nodiscard]] Document& document() { return document_; }
    [[nodiscard]] Viewing& viewing() { return viewing_; }
    [[nodiscard]] Survey& survey() { return survey_; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* buildStrip();
    QWidget* buildWork();
    void buildStatus();
    void buildMenus();
    void buildFileMenu();
    void buildEditMenu();
    void buildViewMenu();
    void buildGoMenu();
    void buildHelpMenu();
    QAction* needsProject(QAction* action);
    void showTitle();
    void showVariants();
    void compareWithBrowser();
    void showEngine();
    /// Sets the line-breaking rules of the views. Kept in the settings, because it is not part of the
    /// project.
    void chooseEngine(const text::BreakProfile& profile);
    /// Shows the row as in a browser window of the current width at this zoom: a viewport narrower by that
    /// factor, enlarged.
    void setBrowserZoom(double zoom);
    void onRowZoom(double zoom);
    void showProject();
    void showNotes();
    void fillRecent();
    void copyStylesheetOf(const std::vector<std::size_t>& variants);
    void importRow();
    void importAudience();
    void readAudience(const QString& file);
    void goToWrap(int direction);
    void goToFinding(int direction);
    void useOwnMarkup();
    void showGiven();
    void copySize();
    /// Handles Left and Right: 1 px, 10 px with Shift, to a band end with Ctrl. Returns false for other
    /// keys.
    bool handleWidthKey(const QKeyEvent& event);
    void stepWidth(double by);
    /// The card and part under a point of the screen; the selection if there is none.
    [[nodiscard]] Viewing::Selection placeUnder(const QPoint& global) const;
    void dropPictures(const QStringList& files, const QPoint& global);

    Document document_;
    Viewing viewing_;
    Survey survey_;
    FileController* files_;
    row::RowView* row_;
    compare::Comparison* comparison_;
    axis::AxisPane* axis_;
    panels::SidePanel* side_;
    findings::Panel* findings_;
    StartPage* start_;
    ProblemPanel* problems_;
    QStackedWidget* stack_ = nullptr;
    QWidget* strip_ = nullptr;
    controls::Segments* variants_ = nullptr;
    QToolButton* all_ = nullptr;
    controls::Segments* engines_ = nullptr;
    SettingSearch* search_ = nullptr;
    StatusNote* note_ = nullptr;
    QLabel* givenNote_ = nullptr;
    QPushButton* trialNote_ = nullptr;  ///< names the current text test; a click ends it
    QActionGroup* browserZooms_ = nullptr;
    double browserZoom_ = 1;
    QLabel* fontNotes_ = nullptr;
    compare::CompareDialog* compare_ = nullptr;
    page_import::ImportDialog* given_ = nullptr;
    QMenu* recentMenu_ = nullptr;
    QAction* showSaved_ = nullptr;
    QAction* ownMarkup_ = nullptr;
    QAction* stopWeighting_ = nullptr;
    QList<QAction*> engineActions_;  // in the order of text::profiles()
    QList<QAction*> projectActions_;
};

}  // namespace tenter::desktop::window
