// What was wrong with a file, every line of it, above the row: nothing is lost, and it can be copied.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPlainTextEdit>

#include "project/problem.h"

namespace tenter::desktop::window {

class ProblemPanel : public QFrame {
    Q_OBJECT

public:
    explicit ProblemPanel(QWidget* parent = nullptr);
    /// `headline` says what could not be done.
    void tell(const QString& headline, const project::Problems& problems);

private:
    QLabel* headline_;
    QPlainTextEdit* lines_;
};

}  // namespace tenter::desktop::window
