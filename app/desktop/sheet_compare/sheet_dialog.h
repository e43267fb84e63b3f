// The dialog “Compare with stylesheet”: paste a stylesheet that is live or open one, see which settings
// differ from the project, and apply all or some of them as one undoable step.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>
#include <optional>
#include <vector>

#include "document/document.h"
#include "start/sheet_comparison.h"

namespace tenter::desktop::sheet_compare {

/// True for text that is likely to be a stylesheet: with a rule and without a tag.
bool looksLikeCss(const QString& text);

class SheetDialog : public QDialog {
    Q_OBJECT

public:
    SheetDialog(Document& document, QWidget* parent);
    /// Sets the stylesheet; `file` is empty for pasted text.
    void setSheet(const QString& css, const QString& file = {});
    [[nodiscard]] QTreeWidget& table() { return *table_; }

Q_SIGNALS:
    void applied(int settings);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QLayout* buildInput();
    QLayout* buildTable();
    QLayout* buildFoot();
    void openFile();
    void compare();
    void fillTable();
    void updateState();
    void setAll(bool on);
    void apply();
    [[nodiscard]] std::vector<bool> chosen() const;

    Document& document_;
    QPlainTextEdit* box_;
    QLabel* state_;
    QTreeWidget* table_;
    QPushButton* all_ = nullptr;
    QPushButton* none_ = nullptr;
    QPushButton* apply_ = nullptr;
    QLabel* consequence_ = nullptr;
    QTimer typingTimer_;
    QString file_;
    int revision_ = -1;  ///< of the document that was compared
    std::optional<start::SheetComparison> comparison_;
};

}  // namespace tenter::desktop::sheet_compare
