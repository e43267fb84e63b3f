// One line with the classes that the elements of the row need for the stylesheet, with Copy.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "project/project.h"

namespace tenter::desktop::panels {

/// A click on one class copies it alone, without the leading dot, as the fields of a CMS take it. Hidden for
/// an imported row, whose elements keep the classes of their page.
class ClassesLine : public QWidget {
    Q_OBJECT

public:
    explicit ClassesLine(QWidget* parent = nullptr);
    /// Shows the classes for variant `variant` of `project`.
    void showClasses(const project::Project& project, std::size_t variant);
    [[nodiscard]] QPushButton* button() const { return copy_; }

Q_SIGNALS:
    void copied(const QString& message);  ///< to the clipboard

private:
    void copy(const QString& text, const QString& message, QWidget* near);

    QLabel* title_;
    QLabel* classes_;
    QPushButton* copy_;
    QString line_;
};

}  // namespace tenter::desktop::panels
