// The dialog “Compare with browser”: choice of browser, progress, results.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <vector>

#include "compare/comparison.h"
#include "controls/segments.h"
#include "session/session.h"

namespace tenter::desktop::compare {

class CompareDialog : public QDialog {
    Q_OBJECT

public:
    CompareDialog(Comparison& comparison, Session& session, QWidget* parent);
    /// Offers the browsers that are installed.
    void findBrowsers();
    /// Offers these browsers.
    void setBrowsers(std::vector<Browser> browsers);
    /// Measures the row inside this saved page; empty: on a page of its own.
    void setSavedPage(const QString& file);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildChoice();
    QWidget* buildPlace();
    QWidget* buildFigures();
    void choosePlace(int index);
    void startOrStop();
    void updateState();
    void fillList();
    void goTo(int index);

    Comparison& comparison_;
    Session& session_;
    std::vector<Browser> browsers_;
    QLabel* none_ = nullptr;
    QPushButton* again_ = nullptr;
    QWidget* choice_ = nullptr;
    controls::Segments* segments_ = nullptr;
    QWidget* place_ = nullptr;  // visible for an imported row only
    controls::Segments* places_ = nullptr;
    QLabel* saved_ = nullptr;
    QString savedPage_;
    QPushButton* start_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* headline_ = nullptr;
    QLabel* stale_ = nullptr;
    QWidget* figures_ = nullptr;
    QLabel *parts_ = nullptr, *differing_ = nullptr, *tight_ = nullptr, *box_ = nullptr, *size_ = nullptr;
    QLabel* listTitle_ = nullptr;
    QListWidget* list_ = nullptr;
    QString failure_;  // message if the last comparison failed; otherwise empty
};

}  // namespace tenter::desktop::compare
