// A row that was found: its elements as a tree and as a drawing, one of them with its role, its page's theme.
#pragma once

#include <QPlainTextEdit>
#include <QToolButton>
#include <QTreeView>

#include "given/card_drawing.h"
#include "given/element_model.h"
#include "given/role_bar.h"

namespace tenter::desktop::given {

class RowSide : public QWidget {
    Q_OBJECT

public:
    explicit RowSide(QWidget* parent = nullptr);
    /// Shows what was read, which must outlive it; `roles` are those of text that can be chosen.
    void setReading(const RowReading& reading, const std::vector<std::string>& roles);
    /// Makes an element the one that is told of.
    void select(markup::NodeId node);
    [[nodiscard]] RoleBar* bar() const { return bar_; }

private:
    QWidget* buildTheme();
    void showTheme();

    const RowReading* reading_ = nullptr;
    ElementModel* model_;
    QTreeView* tree_;
    CardDrawing* drawing_;
    RoleBar* bar_;
    QToolButton* themeTitle_ = nullptr;
    QPlainTextEdit* theme_ = nullptr;
    markup::NodeId node_ = markup::noNode;
};

}  // namespace tenter::desktop::given
