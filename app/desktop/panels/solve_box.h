// Sizes solved from the wishes: shown on the row and the plots before they are taken, with what decides them,
// or why the wishes cannot be kept together.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "panels/target.h"
#include "solve/solve.h"

namespace tenter::desktop::panels {

class SolveBox : public QWidget {
    Q_OBJECT

public:
    explicit SolveBox(Context& context, QWidget* parent = nullptr);
    ~SolveBox() override;
    /// The project or the scope may be another one: solves again if an answer is shown.
    void refresh();
    [[nodiscard]] QPushButton* button() const { return solve_; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    /// What an answer was found for.
    struct Asked {
        project::Project project;
        std::vector<std::size_t> variants;
        friend bool operator==(const Asked&, const Asked&) = default;
    };
    [[nodiscard]] Asked ask() const;
    void solve();
    /// The answer for what `asked_` says, shown in here; the sizes found, null if there is nothing to show.
    Viewing::Proposal find();
    void tell(const solve::Answer& answer, bool same);
    void take();
    void leave();
    void close();
    void clearOffers();
    void offer(const solve::Loosening& loosening);

    Context& context_;
    QPushButton* solve_;
    QLabel* says_;  ///< a link is the index of a mark
    QWidget* foot_;
    QPushButton* take_;
    QPushButton* leave_;
    QVBoxLayout* offers_;  ///< each loosening that would help, and a button that takes it
    std::optional<Asked> asked_;
    Viewing::Proposal solved_;
};

}  // namespace tenter::desktop::panels
