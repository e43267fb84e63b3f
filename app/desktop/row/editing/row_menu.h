// The context menu of the row view: what can be done with a part, a card, the row or the empty page.
#pragma once

#include <QAction>
#include <QMenu>
#include <optional>

#include "row/editing/card_commands.h"
#include "row/editing/text_editing.h"

namespace tenter::desktop::row::editing {

class RowMenu : public QObject {
    Q_OBJECT

public:
    RowMenu(Session& session, TextEditing& text, CardCommands& commands, QWidget& parent)
        : session_(session), text_(text), commands_(commands), parent_(parent) {}
    /// Actions of the window that the menu shows for a text, and always.
    void setActions(const QList<QAction*>& forText, const QList<QAction*>& always) {
        forText_ = forText;
        always_ = always;
    }
    /// Opens the menu for what is selected.
    void open(const QPoint& global);
    /// Asks for a picture file for the selected picture.
    void changePicture();

Q_SIGNALS:
    void message(const QString& text);
    /// The panel with the settings of what is selected must be opened.
    void settingsRequested();

private:
    void addPart(QMenu& menu);
    void addCards(QMenu& menu);
    [[nodiscard]] bool isPicture() const;

    Session& session_;
    TextEditing& text_;
    CardCommands& commands_;
    QWidget& parent_;
    QList<QAction*> forText_, always_;
};

}  // namespace tenter::desktop::row::editing
