// The panels as tabs, with the subject they edit and the edit scope.
#pragma once

#include <QLabel>
#include <QPointer>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QTimer>
#include <algorithm>
#include <vector>

#include "controls/choice_editors.h"
#include "controls/text_scale.h"
#include "panels/panel.h"
#include "panels/panel_kind.h"

namespace tenter::desktop::panels {

class SidePanel : public QWidget {
    Q_OBJECT

public:
    explicit SidePanel(Session& session, QWidget* parent = nullptr);
    /// A setting that can be found and opened.
    struct Place {
        QString words;  ///< `Line height  ·  Text › Lines`
        QString also;   ///< other words for it
        PanelKind panel;
        std::size_t findable;
    };
    [[nodiscard]] std::vector<Place> places() const;
    /// Help on a setting: `Line height  ·  Text › Lines`, and the text for What’s this as HTML.
    struct Topic {
        QString title;
        QString help;
    };
    /// Help on all settings, in the order of the panels.
    [[nodiscard]] std::vector<Topic> topics() const;
    /// The title of the topic about the setting that `widget` belongs to; empty if it belongs to none.
    [[nodiscard]] QString topicOf(const QWidget* widget) const;
    /// Opens the panel of `place` and gives its field the focus.
    void go(const Place& place);
    void openPanel(PanelKind kind);
    /// Opens a panel at its top, with the keyboard on its tab.
    void goToPanel(PanelKind kind);
    /// Gives the focus to the name of the current variant, selected.
    void goToVariantName();
    /// Opens the Text panel and clicks its button Solve sizes.
    void solveSizes();
    [[nodiscard]] QSize sizeHint() const override { return {std::max(controls::scaled(328), widest_), 600}; }
    /// As wide as the widest setting: the text of some languages is long.
    [[nodiscard]] QSize minimumSizeHint() const override {
        return {std::max(controls::scaled(328), widest_), 200};
    }

Q_SIGNALS:
    void copied(const QString& message);  ///< to the clipboard
    void roomNeeded();  ///< the user asked for a setting or an answer here, which should be in full sight
    void importRowRequested();
    void ownMarkupRequested();  ///< the imported markup must be replaced by Tenter’s

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void showMessage(const QString& text);
    void fitFoot();
    void fitContent();
    /// A panel, and its page: its head, which stays, above the scroll area that it is in.
    struct Page {
        PanelKind kind;
        Panel* panel;
        QWidget* page;
        QScrollArea* area;  ///< that scrolls the panel
    };
    void addPanel(PanelKind kind, const QString& title, Panel* panel);
    void showHeader();
    void fillSubjects();
    void fillScopes();
    void refreshSoon();
    void refreshNow();
    void onWidth();
    [[nodiscard]] const Findable& findableOf(const Place& place) const;
    /// The page of the current tab.
    [[nodiscard]] const Page& currentPage() const;
    [[nodiscard]] Panel* current() const { return currentPage().panel; }

    Session& session_;
    Target target_;
    Context context_;
    QTabBar* tabs_;
    QWidget* header_;
    controls::CalmCombo* subject_;
    controls::Segments* scope_;
    QLabel* scopeNote_;
    QStackedWidget* stack_;
    QVBoxLayout* pinned_;  ///< below the panels
    QLabel* foot_;
    QPointer<QWidget> messageFor_;  ///< had the focus when the message in the foot was shown
    std::vector<Page> pages_;       ///< in the order of the tabs
    std::vector<std::string> subjects_;
    QTimer soon_;
    int widest_ = 0;  // px: what the content needs
    std::size_t band_ = 0;
};

}  // namespace tenter::desktop::panels
