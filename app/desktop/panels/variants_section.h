// Adding a variant with another column count, and removing the current one.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "controls/number_field.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class VariantButtons : public QWidget {
    Q_OBJECT

public:
    explicit VariantButtons(Context& context, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] QWidget* addButton() const { return add_; }

private:
    void add();
    void remove();
    /// A column count that no variant has yet.
    [[nodiscard]] int nextColumns() const;

    Context& context_;
    controls::NumberField* columns_;
    bool isTyped_ = false;  ///< the user has set the column count
    QPushButton* add_;
    QPushButton* remove_;
    QLabel* result_;
};

/// Why `text` is not a class name; empty if it is one.
QString wrongWithClass(const QString& text);

}  // namespace tenter::desktop::panels
