// Makes every size follow the card width, or the page width: shows a preview and what would change.
#pragma once

#include "panels/proposal_box.h"

namespace tenter::desktop::panels {

class ScaleBox : public QWidget {
    Q_OBJECT

public:
    explicit ScaleBox(Context& context, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] QPushButton* button() const { return useCardWidth_; }

private:
    void previewCardWidth();
    void previewPageWidth();

    Context& context_;
    QPushButton* useCardWidth_;
    QPushButton* usePageWidth_;
    ProposalBox* proposal_;
};

}  // namespace tenter::desktop::panels
