// The choices for the form of a stylesheet.
#pragma once

#include <QCheckBox>
#include <QFormLayout>

#include "controls/segments.h"
#include "document/handover.h"
#include "export/choices.h"

namespace tenter::desktop::exporting {

/// Rows of a form: unit, width that sizes follow, and the check boxes for the rest.
class SheetChoices : public QObject {
    Q_OBJECT

public:
    SheetChoices(QFormLayout& form, QWidget* parent);
    /// Shows what was chosen for the project, which may have an imported row.
    void restore(const Choices& choices, const project::Project& project);
    void remember(const Choices& choices) const;
    [[nodiscard]] SheetChoice value() const;

Q_SIGNALS:
    void changed();  ///< by the person

private:
    QCheckBox* box(const QString& text, const QString& explanation);

    controls::Segments* unit_;
    controls::Segments* follow_;
    QWidget* boxes_;
    QCheckBox *properties_, *layer_, *comments_, *minified_, *late_;
};

}  // namespace tenter::desktop::exporting
