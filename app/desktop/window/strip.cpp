#include "window/strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>

#include "controls/glossary.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::window {

Strip::Strip(ViewState& view, const LayoutCache& layouts, const row::RowView& row, panels::SidePanel& side,
             QWidget* parent)
    : QWidget(parent), layouts_(layouts) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(16, 0, 16, 0);
    box->setSpacing(12);
    auto* label = new QLabel(QObject::tr("Variant"), this);
    label->setToolTip(QObject::tr(glossary::variant));
    label->setForegroundRole(QPalette::PlaceholderText);
    variants_ = new controls::Segments(this);
    variants_->setAccessibleName(QObject::tr("Variant"));
    search_ = new SettingSearch(side, this);
    search_->setMinimumWidth(controls::scaled(96));
    search_->setMaximumWidth(controls::scaled(208));
    box->addWidget(label);
    box->addWidget(variants_);
    all_ = new QToolButton(this);
    all_->setDefaultAction(row.allVariantsAction());
    all_->setAccessibleName(QObject::tr("All variants at this width"));
    box->addWidget(all_);
    box->addStretch(1);
    box->addWidget(search_, 4);
    connect(variants_, &controls::Segments::chosen, this,
            [&view](int index) { view.setVariant(static_cast<std::size_t>(index)); });
    connect(variants_, &controls::Segments::doubleClicked, this, [&side] { side.goToVariantName(); });
    onChange(layouts_, LayoutCache::Change::Row, this, &Strip::showVariants);
    showVariants();
}

void Strip::addExports(Exports& exports) {
    auto* copy = new QPushButton(QObject::tr("Copy stylesheet"), this);
    copy->setObjectName("copyStylesheet");
    copy->setToolTip(QObject::tr("Copy the stylesheet of this variant (Ctrl+Shift+C)"));
    connect(copy, &QPushButton::clicked, exports.first(), &QAction::trigger);
    auto* more = new QPushButton(QObject::tr("Export"), this);
    auto* menu = new QMenu(more);
    menu->addActions(exports.actions());
    more->setMenu(menu);
    layout()->addWidget(copy);
    layout()->addWidget(more);
    exports.setControl(copy);
}

void Strip::showVariants() {
    QStringList titles;
    QStringList names;
    for (const project::Variant& variant : layouts_.project().row().variants) {
        titles << variantTitle(variant);
        names << variantTitle(variant) + ", " + variantFacts(layouts_.project(), variant);
    }
    variants_->setTexts(titles, names);
    variants_->setCurrent(static_cast<int>(layouts_.variant()));
    all_->setVisible(titles.size() > 1);
}

}  // namespace tenter::desktop::window
