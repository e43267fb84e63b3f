// What is copied to the clipboard, as actions for the menus and for the control in the strip.
#pragma once

#include <QAction>
#include <QObject>
#include <functional>
#include <vector>

#include "session/session.h"
#include "window/problem_panel.h"
#include "window/status_note.h"

namespace tenter::desktop::window {

class Exports : public QObject {
    Q_OBJECT

public:
    Exports(const Session& session, StatusNote& note, ProblemPanel& problems, QObject* parent);
    /// Adds an action that opens a dialog, after those that copy.
    void addDialog(const QString& text, std::function<void()> open);
    /// Copies the stylesheet of the current variant: the first action of the control.
    [[nodiscard]] QAction* first() const { return actions_.front(); }
    /// Copies the font size of the selected text.
    [[nodiscard]] QAction* copySizeAction() const { return copySize_; }
    /// All actions, in the order of the menu.
    [[nodiscard]] const QList<QAction*>& actions() const { return actions_; }
    /// The control that shows beside itself what was copied.
    void setControl(QWidget* control) { control_ = control; }

private:
    QAction* add(const QString& text, const QKeySequence& keys, void (Exports::*copy)());
    void copyStylesheet();
    void copyAllStylesheets();
    void copyMarkup();
    void copyBoth();
    void copyClasses();
    void copySize();
    /// False for an imported row, whose markup is that of its page; says so.
    bool hasOwnMarkup();
    /// The stylesheets of variants, given by index; empty, with the problems shown, if there is none.
    std::optional<std::string> stylesheet(const std::vector<std::size_t>& variants);
    /// `2 variants` or the class of the only one.
    [[nodiscard]] QString title(const std::vector<std::size_t>& variants) const;
    /// Puts `text` on the clipboard and says so: `Stylesheet copied: 3 variants, 214 lines`.
    void put(const QString& what, const QString& of, const std::string& text);

    const Session& session_;
    StatusNote& note_;
    ProblemPanel& problems_;
    QList<QAction*> actions_;
    QAction* copySize_;
    QWidget* control_ = nullptr;
};

}  // namespace tenter::desktop::window
