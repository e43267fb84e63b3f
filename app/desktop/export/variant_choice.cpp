#include "export/variant_choice.h"

#include "document/wording.h"

namespace tenter::desktop::exporting {

VariantChoice::VariantChoice(bool hasAll, QWidget* parent) : QComboBox(parent), hasAll_(hasAll) {
    setAccessibleName(QObject::tr("Variant"));
}

void VariantChoice::restore(const Choices& choices, const Session& session) {
    const project::Row& row = session.document.project().row();
    clear();
    if (hasAll_) addItem(QObject::tr("All variants"), QString());
    for (const project::Variant& variant : row.variants)
        addItem(variantTitle(variant), QString::fromStdString(variant.className));
    const QString now =
        hasAll_ ? QString() : QString::fromStdString(row.variants[session.view.variant()].className);
    const int remembered = findData(choices.value("variant", now).toString());
    setCurrentIndex(remembered >= 0 ? remembered : findData(now));
}

void VariantChoice::remember(const Choices& choices) const {
    choices.set("variant", currentData().toString());
}

std::vector<std::size_t> VariantChoice::variants() const {
    std::vector<std::size_t> all;
    const int offset = hasAll_ ? 1 : 0;
    for (int i = offset; i < count(); ++i)
        if ((hasAll_ && currentIndex() == 0) || currentIndex() == i)
            all.push_back(static_cast<std::size_t>(i - offset));
    return all;
}

}  // namespace tenter::desktop::exporting
