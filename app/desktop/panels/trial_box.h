// The row tried with other copy and cards: chosen here, shown in the row, the plots and the findings.
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
    /// Shows what is tried, and forgets what was told of a row that is another now.
    void refresh();
    [[nodiscard]] QWidget* first() const { return lines_.front().choice; }

private:
    struct Line {
        std::optional<project::Trial::Kind> kind;  ///< none: the row as it is
        QRadioButton* choice = nullptr;
        QLabel* told = nullptr;  ///< what is found then
    };
    [[nodiscard]] std::optional<project::Trial> trialOf(const Line& line) const;
    void choose(const Line& line);
    void tryAll();

    Context& context_;
    std::vector<Line> lines_;
    controls::NumberField* share_;
    QPushButton* all_;
    project::Project told_;  ///< what was tried, and of which variant
    std::size_t toldVariant_ = 0;
};

}  // namespace tenter::desktop::panels
