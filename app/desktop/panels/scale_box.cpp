#include "panels/scale_box.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "document/handover.h"
#include "document/wording.h"
#include "project/card_scale.h"
#include "project/cascade.h"
#include "solve/card_scale.h"

namespace tenter::desktop::panels {

namespace {

/// True if the size of a role that cards use follows `follow` in some band of some variant.
bool someSizeFollows(const project::Project& project, project::Follow follow) {
    for (const project::Variant& variant : project.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const project::Settings settings = project::resolve(project, variant, band);
            for (const std::string& role : project::usedRoles(project))
                if (const auto* style = settings.text.find(role); style != nullptr && style->follow == follow)
                    return true;
        }
    return false;
}

QStringList sentences(const project::Problems& problems) {
    QStringList words;
    for (const project::Problem& problem : problems)
        words << QString::fromStdString(problem.sentenceWithPlace());
    return words;
}

}  // namespace

ScaleBox::ScaleBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      useCardWidth_(new QPushButton(QObject::tr("Use card width for all sizes…"), this)),
      usePageWidth_(new QPushButton(QObject::tr("Use viewport width for all sizes…"), this)),
      proposal_(new ProposalBox(context, this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    auto* buttons = new QVBoxLayout;
    buttons->setContentsMargins(12, 4, 24, 0);
    buttons->setSpacing(4);
    buttons->addWidget(useCardWidth_, 0, Qt::AlignLeft);
    buttons->addWidget(usePageWidth_, 0, Qt::AlignLeft);
    box->addLayout(buttons);
    box->addWidget(proposal_);
    useCardWidth_->setToolTip(toolTipText(QObject::tr(
        "One ramp per role that follows the card width, for every column count. You see a preview before you "
        "apply it.")));
    usePageWidth_->setToolTip(toolTipText(QObject::tr(
        "Ramps that follow the viewport width, one per role and band. You see a preview before you "
        "apply them.")));
    connect(useCardWidth_, &QPushButton::clicked, this, &ScaleBox::previewCardWidth);
    connect(usePageWidth_, &QPushButton::clicked, this, &ScaleBox::previewPageWidth);
    connect(proposal_, &ProposalBox::closed, this,
            [this] { (useCardWidth_->isHidden() ? usePageWidth_ : useCardWidth_)->setFocus(); });
}

void ScaleBox::refresh() {
    const project::Project& project = context_.session.document.project();
    useCardWidth_->setVisible(someSizeFollows(project, project::Follow::Viewport));
    usePageWidth_->setVisible(someSizeFollows(project, project::Follow::Card));
    for (QPushButton* button : {useCardWidth_, usePageWidth_})
        button->setEnabled(!context_.session.shown.showsSaved());
}

void ScaleBox::previewCardWidth() {
    const project::Project& project = context_.session.document.project();
    project::Problems problems;
    auto scale = solve::toCardScale(project, context_.session.document.store(), problems);
    QStringList text;
    if (scale)
        for (const std::string& sentence : solve::describe(project, *scale))
            text << QString::fromStdString(sentence);
    else
        text << QObject::tr("Sizes cannot follow the card width here.") << sentences(problems);
    proposal_->open(QObject::tr("Use card width for all sizes"), QObject::tr("Apply sizes"),
                    scale ? std::make_shared<const project::Project>(std::move(scale->project)) : nullptr,
                    text);
}

void ScaleBox::previewPageWidth() {
    project::Problems problems;
    auto converted = std::make_shared<const project::Project>(
        sizesByPageWidth(context_.session.document.project(), context_.session.document.store(),
                         context_.session.view.profile(), problems));
    proposal_->open(
        QObject::tr("Use viewport width for all sizes"), QObject::tr("Apply sizes"), std::move(converted),
        QStringList{QObject::tr("Each band gets its own ramps, which follow the viewport width. Cards are no "
                                "longer size containers. If you change the column count later, solve the "
                                "sizes again.")} +
            sentences(problems));
}

}  // namespace tenter::desktop::panels
