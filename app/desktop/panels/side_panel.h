// The panels as tabs, with what they are about and where their edits go.
#pragma once

#include <QLabel>
#include <QPointer>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QTimer>
#include <vector>

#include "controls/choice_editors.h"
#include "panels/panel.h"

namespace tenter::desktop::panels {

class SidePanel : public QWidget {
    Q_OBJECT

public:
    explicit SidePanel(Viewing& viewing, QWidget* parent = nullptr);
    /// A setting that can be jumped to.
    struct Place {
        QString words;  ///< `Line height  ·  Text, lines`
        QString also;   ///< other words for it
        int panel;
        std::size_t findable;
    };
    [[nodiscard]] std::vector<Place> places() const;
    /// Opens its panel and gives it the keyboard.
    void go(const Place& place);
    void openPanel(int index) { tabs_->setCurrentIndex(index); }
    /// As the button for it does.
    void solveSizes();
    [[nodiscard]] QSize sizeHint() const override { return {328, 600}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {328, 200}; }

signals:
    void pagesRowWanted();   ///< a page's row is to be taken in
    void ownMarkupWanted();  ///< the row is to have our own markup again

private:
    void say(const QString& text);
    void addPanel(const QString& title, Panel* panel);
    void showHeader();
    void fillSubjects();
    void fillScopes();
    void refreshSoon();
    void refreshNow();
    void onWidth();
    [[nodiscard]] Panel* current() const;

    Viewing& viewing_;
    Target target_;
    Context context_;
    QTabBar* tabs_;
    QWidget* header_;
    controls::CalmCombo* subject_;
    controls::Segments* scope_;
    QLabel* scopeSays_;
    QStackedWidget* stack_;
    QLabel* foot_;
    QPointer<QWidget> saidTo_;  ///< who had the keyboard when the foot was filled
    std::vector<Panel*> panels_;
    std::vector<std::string> subjects_;
    QTimer soon_;
    std::size_t band_ = 0;
};

}  // namespace tenter::desktop::panels
