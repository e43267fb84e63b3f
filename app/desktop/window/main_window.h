// The window: menus, the variant switch, the row above its axis, the panels beside them.
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
#include "window/file_desk.h"
#include "window/problem_panel.h"
#include "window/setting_search.h"
#include "window/start_page.h"
#include "window/status_note.h"

namespace tenter::desktop::compare {
class CompareDialog;
class Comparison;
}  // namespace tenter::desktop::compare

namespace tenter::desktop::given {
class GivenDialog;
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
    /// Which profile lines break by, kept from one start to the next: how the row is viewed, not the project.
    void chooseEngine(const text::BreakProfile& profile);
    /// Shows what a reader sees who zooms a window as wide as the page in: a page narrower by as much,
    /// enlarged.
    void zoomAsReader(double zoom);
    void followZoom(double zoom);
    void showProject();
    void showNotes();
    void fillRecent();
    void copyStylesheetOf(const std::vector<std::size_t>& variants);
    void takePagesRow();
    void openAudience();
    void readAudience(const QString& file);
    void goToWrap(int direction);
    void goToFinding(int direction);
    void useOwnMarkup();
    void showGiven();
    void copySize();
    /// Left and Right: 1 px; 10 with Shift; to a band edge with Ctrl.
    bool takeWidthKey(const QKeyEvent& event);
    void stepWidth(double by);
    /// The card, and its part, under a point of the screen; what is selected if there is none.
    [[nodiscard]] Viewing::Selection placeUnder(const QPoint& global) const;

    Document document_;
    Viewing viewing_;
    Survey survey_;
    FileDesk* files_;
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
    QPushButton* trialNote_ = nullptr;  ///< tells what the row is tried with; pressed, it ends that
    QActionGroup* readerZooms_ = nullptr;
    double readerZoom_ = 1;
    QLabel* fontNotes_ = nullptr;
    compare::CompareDialog* compare_ = nullptr;
    given::GivenDialog* given_ = nullptr;
    QMenu* recentMenu_ = nullptr;
    QAction* asSaved_ = nullptr;
    QAction* ownMarkup_ = nullptr;
    QAction* byWidths_ = nullptr;
    QList<QAction*> engineActions_;  // as text::profiles() has them
    QList<QAction*> projectActions_;
};

}  // namespace tenter::desktop::window
