// For which values of the band in view the wishes hold, sizes as they are: asked for, told, and the best
// taken.
#pragma once

#include <QGridLayout>
#include <vector>

#include "panels/proposal_box.h"
#include "solve/leeway.h"

namespace tenter::desktop::panels {

class LeewayBox : public QWidget {
    Q_OBJECT

public:
    explicit LeewayBox(Context& context, QWidget* parent = nullptr);
    /// The variant, or the band, may be another one.
    void refresh();

private:
    void ask(solve::Varied varied, QPushButton* from);

    Context& context_;
    QLabel* about_;
    std::vector<QPushButton*> buttons_;
    ProposalBox* proposal_;
    QPushButton* asked_ = nullptr;
};

}  // namespace tenter::desktop::panels
