// Leeway: the range in which a breakpoint, gap, padding or row width of the current band can change while
// every wish still holds, with a preview of the suggested value.
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
    /// Updates the box, because the variant or the band may have changed.
    void refresh();

private:
    void showLeeway(solve::LeewaySetting setting, QPushButton* button);

    Context& context_;
    QLabel* intro_;
    std::vector<QPushButton*> buttons_;
    ProposalBox* proposal_;
    QPushButton* pressed_ = nullptr;
};

}  // namespace tenter::desktop::panels
