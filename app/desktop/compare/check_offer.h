// The offer to check an imported row at all widths in a browser, above the row, and the result of the check.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <vector>

#include "compare/browser.h"
#include "compare/comparison.h"

namespace tenter::desktop::compare {

class CheckOffer : public QFrame {
    Q_OBJECT

public:
    explicit CheckOffer(Comparison& comparison, QWidget* parent = nullptr);
    /// Offers to check the row that was imported from the saved page `file`. Nothing is shown without a file
    /// or without a browser.
    void offer(const QString& file, std::vector<Browser> browsers);
    [[nodiscard]] const QString& page() const { return file_; }

Q_SIGNALS:
    void detailsRequested();

private:
    void startOrStop();
    void updateState();

    Comparison& comparison_;
    std::vector<Browser> browsers_;
    QString file_;
    QString failure_;      ///< message if the check failed; otherwise empty
    bool isOurs_ = false;  ///< true if the comparison is the one that was started here
    QLabel* text_;
    QPushButton* check_;
    QPushButton* details_;
};

}  // namespace tenter::desktop::compare
