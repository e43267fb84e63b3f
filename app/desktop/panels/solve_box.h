// “Solve sizes”: a preview of the sizes found, with a table of them and of their limits, or the conflict of
// the wishes with what resolves it.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "document/background_fonts.h"
#include "document/background_job.h"
#include "panels/answer_view.h"
#include "panels/target.h"
#include "solve/memory.h"
#include "solve/solve.h"

namespace tenter::desktop::panels {

class SolveBox : public QWidget {
    Q_OBJECT

public:
    explicit SolveBox(Context& context, QWidget* parent = nullptr);
    ~SolveBox() override;
    /// Solves again if an answer is shown, because the project or the edit scope may have changed.
    void refresh();
    [[nodiscard]] QPushButton* button() const { return solve_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    /// What an answer is for.
    struct Task {
        project::Project project;
        std::vector<std::size_t> variants;
        friend bool operator==(const Task&, const Task&) = default;
    };
    [[nodiscard]] Task currentTask() const;
    struct Answer {
        solve::Answer answer;
        solve::AnswerTable table;
    };
    void solve();
    /// Solves `task_` in the background and shows the answer. Returns the project to preview if the answer is
    /// there within `milliseconds`; else null, and the preview follows.
    ShownProject::Proposal preview(int milliseconds);
    void onAnswer(Answer answer);
    void onProposal();
    void showAnswer();
    void showTable(const solve::AnswerTable& table);
    /// Compares the findings before and after in the background, then adds the differences to the table.
    void compareFindings();
    void showProgress(bool running);
    void apply();
    void discard();
    /// Gives the focus to the button Solve sizes, in sight.
    void goBack();
    void close();
    void clearResolutions();
    void addResolution(const solve::Resolution& resolution);

    Context& context_;
    QPushButton* solve_;
    QWidget* progress_;  ///< shown while solving takes longer than a moment
    QPushButton* stop_;
    QWidget* foot_;
    QPushButton* apply_;
    QPushButton* discard_;
    QCheckBox* preview_;  ///< shows the solved sizes, or the current ones
    QLabel* findings_;    ///< how many findings come and go
    QLabel* summary_;     ///< hidden if there is nothing to say besides the table
    AnswerModel* model_;
    AnswerView* view_;
    QLabel* advice_;
    QVBoxLayout* resolutions_;  ///< each change that resolves the conflict, with its button
    std::optional<Task> task_;
    ShownProject::Proposal solved_;
    bool isLate_ = false;               ///< the answer was not there when its preview was asked for
    std::optional<Answer> unshown_;     ///< an answer that must be shown once its preview is
    std::vector<std::size_t> changed_;  ///< the variants that `solved_` changes
    QTimer findingsTimer_;  ///< delays the comparison of findings, so that a drag keeps its frames
    /// What the solver's thread keeps from run to run.
    struct Kept {
        BackgroundFonts fonts;
        solve::Memory memory;
        std::filesystem::path folder;  ///< of the font files
    };
    std::shared_ptr<Kept> kept_ = std::make_shared<Kept>();
    std::shared_ptr<BackgroundFonts> findingsFonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_{this};
    BackgroundJob findingsJob_{this};
};

}  // namespace tenter::desktop::panels
