// Compares with a browser: which, how far it has come, what came of it.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <vector>

#include "compare/comparison.h"
#include "controls/segments.h"

namespace tenter::desktop::compare {

class CompareDialog : public QDialog {
    Q_OBJECT

public:
    CompareDialog(Comparison& comparison, Viewing& viewing, QWidget* parent);
    /// Looks which browsers are installed.
    void lookForBrowsers();
    /// For tests: as if these were installed.
    void offer(std::vector<Browser> browsers);
    /// Compares the row where this saved page has it; empty: alone.
    void setSavedPage(const QString& file);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildChoice();
    QWidget* buildPlace();
    QWidget* buildFigures();
    void choosePlace(int index);
    void startOrStop();
    void follow();
    void fillList();
    void goTo(int index);

    Comparison& comparison_;
    Viewing& viewing_;
    std::vector<Browser> browsers_;
    QLabel* none_ = nullptr;
    QPushButton* again_ = nullptr;
    QWidget* choice_ = nullptr;
    controls::Segments* segments_ = nullptr;
    QWidget* place_ = nullptr;  // only for a row that a page prints
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
    QString why_;  // it failed; empty: it did not
};

}  // namespace tenter::desktop::compare
