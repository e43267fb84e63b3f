// The window with the manual: its contents, its page, and a search.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QTreeWidget>

#include "help/manual_page.h"

namespace tenter::desktop::help {

class ManualWindow : public QDialog {
    Q_OBJECT

public:
    explicit ManualWindow(QWidget* parent);
    void setText(const QString& markdown);
    /// Shows the part with this heading; the start if there is none.
    void showTopic(const QString& heading);
    [[nodiscard]] ManualPage& page() { return *page_; }

private:
    void findNext();
    QLineEdit* search_;
    QLabel* missing_;
    QTreeWidget* contents_;
    ManualPage* page_;
};

}  // namespace tenter::desktop::help
