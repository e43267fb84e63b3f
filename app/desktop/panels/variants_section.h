// The variant that is looked at: its name and class; adding and removing variants.
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
    /// What is offered: columns that no variant has yet.
    [[nodiscard]] int nextColumns() const;

    Context& context_;
    controls::NumberField* columns_;
    bool isAsked_ = false;  ///< the number of columns was typed
    QPushButton* add_;
    QPushButton* remove_;
    QLabel* says_;
};

/// What is wrong with `text` as a class name; empty if nothing is.
QString wrongWithClass(const QString& text);

}  // namespace tenter::desktop::panels
