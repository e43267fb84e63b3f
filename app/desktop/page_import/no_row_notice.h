// Shown instead of a row while there is none: the reason, and a field for the selector of the cards.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "project/problem.h"

namespace tenter::desktop::page_import {

class NoRowNotice : public QWidget {
    Q_OBJECT

public:
    explicit NoRowNotice(QWidget* parent = nullptr);
    void showReading();
    /// Shows why no row was found. `refused`: problems with the selector that the user entered last. A
    /// stylesheet (`isSheet`) has no cards to select.
    void showProblems(const project::Problems& problems, const project::Problems& refused, bool isSheet);
    /// Shows why a file could not be read.
    void showFailure(const QString& why);

Q_SIGNALS:
    void cardSelectorEntered(const QString& selector);

private:
    void setTitle(const QString& title, bool cautious);

    QLabel *title_, *reason_, *selectorError_;
    QWidget* form_;
    QLineEdit* selector_;
};

}  // namespace tenter::desktop::page_import
