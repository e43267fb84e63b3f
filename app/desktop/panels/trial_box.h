// Text tests: the row with longer text, no pictures and so on, shown in the row, the plots and the findings.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QWidget>
#include <optional>
#include <vector>

#include "controls/number_field.h"
#include "panels/target.h"
#include "project/trial.h"

namespace tenter::desktop::panels {

class TrialBox : public QWidget {
    Q_OBJECT

public:
    explicit TrialBox(Context& context, QWidget* parent = nullptr);
    /// Shows the current test, and removes counts of findings that are out of date.
    void refresh();
    [[nodiscard]] QWidget* first() const { return lines_.front().choice; }

private:
    struct Line {
        std::optional<project::Trial::Kind> kind;  ///< none: no test
        QRadioButton* choice = nullptr;
        QLabel* findings = nullptr;  ///< how many findings the test adds or removes
    };
    [[nodiscard]] std::optional<project::Trial> trialOf(const Line& line) const;
    void start(const Line& line);
    void runAll();

    Context& context_;
    std::vector<Line> lines_;
    controls::NumberField* share_;
    QPushButton* all_;
    project::Project tested_;  ///< the project that the counts are for
    std::size_t testedVariant_ = 0;
};

}  // namespace tenter::desktop::panels
