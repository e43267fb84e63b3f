// The list of problems with a file, above the row. Its lines can be selected and copied.
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
    /// Shows `problems` under `headline`, a sentence that says what failed.
    void showProblems(const QString& headline, const project::Problems& problems);

private:
    QLabel* headline_;
    QPlainTextEdit* lines_;
};

}  // namespace tenter::desktop::window
