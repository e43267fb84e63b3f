// The variant that is looked at: its name and class; adding and removing variants.
#pragma once

#include <QPushButton>

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

    Context& context_;
    QPushButton* add_;
    QPushButton* remove_;
};

/// What is wrong with `text` as a class name; empty if nothing is.
QString wrongWithClass(const QString& text);

}  // namespace tenter::desktop::panels
