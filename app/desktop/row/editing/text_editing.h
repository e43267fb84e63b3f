// Edits a text in place, in the row: begins, follows the layout, keeps or restores the text.
#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "row/editing/text_field.h"
#include "row/sheet_layout.h"
#include "session/session.h"

namespace tenter::desktop::row::editing {

class TextEditing : public QObject {
    Q_OBJECT

public:
    TextEditing(Session& session, SheetLayout& sheets, QAbstractScrollArea& area);
    [[nodiscard]] bool isActive() const { return place_.has_value(); }
    /// Edits the text of a part, with the caret at the point `view` of the viewport, or at its end. Returns
    /// false if the part is no text, or what is shown is not the document.
    bool begin(const project::PartRef& part, const std::optional<QPointF>& view = {});
    /// Ends the edit and keeps the text, as one step that can be undone.
    void finish();
    /// Ends the edit and restores the text from before.
    void cancel();
    /// Follows the row: its layout or its place in the viewport has changed.
    void follow();

Q_SIGNALS:
    void message(const QString& text);
    void begun();
    void ended();

private:
    void put(const project::Copy& copy);
    /// Shows a text that was changed elsewhere, as by undo.
    void onDocument();
    void goOn(int direction);
    void end();
    void showCaret();
    [[nodiscard]] const project::TextPart* text() const;
    [[nodiscard]] QString title() const;

    Session& session_;
    SheetLayout& sheets_;
    QAbstractScrollArea& area_;
    TextField* field_;
    std::optional<project::PartRef> place_;
    project::Copy before_;            // what `cancel` restores
    std::vector<std::size_t> shape_;  // number of parts of each card
    bool putting_ = false;
    bool byKey_ = false;
};

}  // namespace tenter::desktop::row::editing
