// All sizes by the card's width, or by the page's again: what it would change, before it does.
#pragma once

#include "panels/proposal_box.h"

namespace tenter::desktop::panels {

class ScaleBox : public QWidget {
    Q_OBJECT

public:
    explicit ScaleBox(Context& context, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] QPushButton* button() const { return byCard_; }

private:
    void proposeCard();
    void proposePage();

    Context& context_;
    QPushButton* byCard_;
    QPushButton* byPage_;
    ProposalBox* proposal_;
};

}  // namespace tenter::desktop::panels
