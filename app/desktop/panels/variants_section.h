// Adding a variant with another column count, and removing the current one.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "controls/number_field.h"
#include "document/background_fonts.h"
#include "document/background_job.h"
#include "panels/target.h"

namespace tenter::desktop::panels {

class VariantButtons : public QWidget {
    Q_OBJECT

public:
    explicit VariantButtons(Context& context, QWidget* parent = nullptr);
    void refresh();
    [[nodiscard]] QWidget* addButton() const { return add_; }

private:
    /// Makes the variant and solves its sizes in the background, then adds it; stops if that is going on.
    void addOrStop();
    void showResult(const QString& text);
    void remove();
    /// A column count that no variant has yet.
    [[nodiscard]] int nextColumns() const;

    Context& context_;
    controls::NumberField* columns_;
    bool isTyped_ = false;  ///< the user has set the column count
    QPushButton* add_;
    QPushButton* remove_;
    QLabel* result_;
    std::shared_ptr<BackgroundFonts> fonts_ = std::make_shared<BackgroundFonts>();
    BackgroundJob job_{this};
};

/// Why `text` is not a class name; empty if it is one.
QString wrongWithClass(const QString& text);

}  // namespace tenter::desktop::panels
