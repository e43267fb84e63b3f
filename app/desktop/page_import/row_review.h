// Shows the row that was found: its elements as a tree and as a drawing, the role of the selected element,
// and the theme CSS.
#pragma once

#include <QPlainTextEdit>
#include <QToolButton>
#include <QTreeView>

#include "page_import/card_drawing.h"
#include "page_import/element_model.h"
#include "page_import/role_bar.h"

namespace tenter::desktop::page_import {

class RowReview : public QWidget {
    Q_OBJECT

public:
    explicit RowReview(QWidget* parent = nullptr);
    /// Shows what was read, which must outlive it; `roles` are those of text that can be chosen, `typedTheme`
    /// is the theme's CSS as it was typed, if it was.
    void setResult(const ImportResult& result, const std::vector<std::string>& roles,
                   const std::optional<std::string>& typedTheme);
    /// Selects an element in the tree and in the drawing.
    void select(markup::NodeId node);
    [[nodiscard]] RoleBar* bar() const { return bar_; }

Q_SIGNALS:
    void themeTyped(const QString& css);

private:
    QWidget* buildTheme();
    void showTheme();
    [[nodiscard]] QString themeNow() const;

    const ImportResult* result_ = nullptr;
    std::optional<std::string> typedTheme_;
    ElementModel* model_;
    QTreeView* tree_;
    CardDrawing* drawing_;
    RoleBar* bar_;
    QToolButton* themeTitle_ = nullptr;
    QPlainTextEdit* theme_ = nullptr;
    markup::NodeId node_ = markup::noNode;
};

}  // namespace tenter::desktop::page_import
