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
    /// Shows what was read, which must outlive it; `roles` are those of text that can be chosen, `saidTheme`
    /// is the theme's CSS as it was typed, if it was.
    void setReading(const RowReading& reading, const std::vector<std::string>& roles,
                    const std::optional<std::string>& saidTheme);
    /// Makes an element the one that is told of.
    void select(markup::NodeId node);
    [[nodiscard]] RoleBar* bar() const { return bar_; }

signals:
    void themeTyped(const QString& css);

private:
    QWidget* buildTheme();
    void showTheme();
    [[nodiscard]] QString themeNow() const;

    const RowReading* reading_ = nullptr;
    std::optional<std::string> saidTheme_;
    ElementModel* model_;
    QTreeView* tree_;
    CardDrawing* drawing_;
    RoleBar* bar_;
    QToolButton* themeTitle_ = nullptr;
    QPlainTextEdit* theme_ = nullptr;
    markup::NodeId node_ = markup::noNode;
};

}  // namespace tenter::desktop::given
