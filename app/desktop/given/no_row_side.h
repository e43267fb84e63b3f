// No row was found: why, and a field to say which elements are its cards.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "project/problem.h"

namespace tenter::desktop::given {

class NoRowSide : public QWidget {
    Q_OBJECT

public:
    explicit NoRowSide(QWidget* parent = nullptr);
    void showReading();
    /// `refused`: what is wrong with the selector that was said last.
    void showProblems(const project::Problems& problems, const project::Problems& refused);
    /// A file could not be read.
    void showFailure(const QString& why);

signals:
    void cardsSaid(const QString& selector);

private:
    void setTitle(const QString& title, bool cautious);

    QLabel *title_, *says_, *refused_;
    QWidget* form_;
    QLineEdit* selector_;
};

}  // namespace tenter::desktop::given
