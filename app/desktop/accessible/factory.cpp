#include "accessible/factory.h"

#include <QAccessible>
#include <QComboBox>

#include "accessible/axis_interface.h"
#include "accessible/expander_interface.h"
#include "accessible/finding_list_interface.h"
#include "accessible/handle_interface.h"
#include "accessible/label_interface.h"
#include "accessible/number_field_interface.h"
#include "accessible/row_interface.h"
#include "accessible/table_interface.h"
#include "controls/expander.h"
#include "controls/segments.h"
#include "findings/remedy_box.h"

namespace tenter::desktop::accessible {

namespace {

/// Names a widget that Qt makes inside another, which nobody else can name before it exists.
void nameInnerWidget(QWidget& widget, const QString& className) {
    if (!widget.accessibleName().isEmpty()) return;
    if (className == "QComboBoxListView") {
        QWidget* owner = widget.parentWidget();
        while (owner != nullptr && qobject_cast<QComboBox*>(owner) == nullptr)
            owner = owner->parentWidget();
        if (owner != nullptr) widget.setAccessibleName(owner->accessibleName());
    }
}

/// The interface for `object` as one of its classes, `className`; null if Qt’s own is right.
QAccessibleInterface* make(const QString& className, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    if (widget == nullptr) return nullptr;
    nameInnerWidget(*widget, className);
    if (auto* field = qobject_cast<controls::NumberField*>(widget)) return new NumberFieldInterface(field);
    if (auto* field = qobject_cast<QLineEdit*>(widget)) return new LineEditInterface(field);
    // Every label: it gets its name later than its text, with which a screen reader that runs asks for it.
    if (auto* label = qobject_cast<QLabel*>(widget)) return new LabelInterface(label);
    if (controls::isExpander(*widget)) return new ExpanderInterface(static_cast<QAbstractButton*>(widget));
    if (auto* handle = qobject_cast<axis::Handle*>(widget)) return new HandleInterface(handle);
    if (auto* pane = qobject_cast<axis::AxisPane*>(widget)) return new AxisInterface(pane);
    if (auto* view = qobject_cast<row::RowView*>(widget)) return new RowInterface(view);
    if (auto* list = qobject_cast<findings::List*>(widget)) return new FindingListInterface(list);
    if (qobject_cast<findings::RemedyBox*>(widget) != nullptr) return new RemediesInterface(widget);
    if (const auto* source = dynamic_cast<controls::HasData*>(widget))
        return new TableInterface(widget, *source);
    if (qobject_cast<controls::Segments*>(widget) != nullptr)
        return new QAccessibleWidget(widget, QAccessible::Grouping);
    return nullptr;
}

}  // namespace

void install() {
    QAccessible::installFactory(make);
}

}  // namespace tenter::desktop::accessible
