// The remedies of a finding, in its row of the list.
#pragma once

#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "findings/remedy_button.h"
#include "remedy/remedies.h"

namespace tenter::desktop::findings {

/// Stands at the lower end of the row, over the text that the delegate paints; clicks beside the buttons
/// reach the list.
class RemedyBox : public QWidget {
    Q_OBJECT

public:
    explicit RemedyBox(QWidget* parent = nullptr);
    /// Shows that remedies are being tried.
    void showSearch();
    /// Shows the remedies, or that there is none. Shares are of `shareOf`, `widths` or `visits`.
    void showRemedies(const project::Project& project, const std::vector<remedy::Remedy>& remedies,
                      const std::string& shareOf);
    /// Height of what is shown in a row of `width` px.
    [[nodiscard]] int heightOfContent(int width) const;
    [[nodiscard]] const std::vector<RemedyButton*>& buttons() const { return buttons_; }

Q_SIGNALS:
    void chosen(int index);  ///< the button of that remedy was pressed

private:
    void clear();

    QLabel* title_;
    QVBoxLayout* list_;
    std::vector<RemedyButton*> buttons_;
};

}  // namespace tenter::desktop::findings
