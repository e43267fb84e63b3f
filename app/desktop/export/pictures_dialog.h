// The dialog “Pictures”: cuts the pictures of the row to the sizes that it needs.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <memory>
#include <vector>

#include "controls/segments.h"
#include "export/export_dialog.h"
#include "pictures/cut_plan.h"

namespace tenter::desktop::exporting {

class PicturesDialog : public ExportDialog {
    Q_OBJECT

public:
    PicturesDialog(Session& session, QWidget* parent);
    /// The row's markup with the cut files that were written last; for an imported row the element of each
    /// picture.
    [[nodiscard]] QString markup() const;

protected:
    [[nodiscard]] QString usualDestination() const override;
    void restore(const Choices& choices) override;
    void remember(const Choices& choices) const override;
    [[nodiscard]] Planner planner() const override;
    [[nodiscard]] Writer writer() const override;

private:
    /// A copy of everything that a plan is made from.
    struct Request;
    [[nodiscard]] std::shared_ptr<const Request> request() const;
    [[nodiscard]] tenter::pictures::CutOptions cutOptions() const;
    QWidget* buildFormats();
    void copyMarkup();

    controls::Segments* variants_;
    std::vector<QCheckBox*> formats_;
    QComboBox* candidates_;
    QComboBox* quality_;  // the data of its entries is the quality; 0: the usual one of each format
    QLineEdit* address_;
    QPushButton* copy_;
};

}  // namespace tenter::desktop::exporting
