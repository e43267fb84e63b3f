#include "panels/scale_box.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "document/handover.h"
#include "project/card_scale.h"
#include "project/cascade.h"
#include "solve/card_scale.h"

namespace tenter::desktop::panels {

namespace {

/// Whether some role that cards use follows `follow` in some band of some variant.
bool someFollow(const project::Project& project, project::Follow follow) {
    for (const project::Variant& variant : project.variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const project::Settings settings = project::resolve(project, variant, band);
            for (const std::string& role : project::usedRoles(project))
                if (const auto* style = settings.text.find(role); style != nullptr && style->follow == follow)
                    return true;
        }
    return false;
}

QStringList inWords(const project::Problems& problems) {
    QStringList words;
    for (const project::Problem& problem : problems)
        words << QString::fromStdString(problem.place + ": " + problem.what + "; " + problem.mend) + ".";
    return words;
}

}  // namespace

ScaleBox::ScaleBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      byCard_(new QPushButton("All sizes by the card…", this)),
      byPage_(new QPushButton("All sizes by the page…", this)),
      proposal_(new ProposalBox(context, this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    auto* buttons = new QVBoxLayout;
    buttons->setContentsMargins(12, 4, 24, 0);
    buttons->setSpacing(4);
    buttons->addWidget(byCard_, 0, Qt::AlignLeft);
    buttons->addWidget(byPage_, 0, Qt::AlignLeft);
    box->addLayout(buttons);
    box->addWidget(proposal_);
    byCard_->setToolTip("One ramp a role over the card’s width, for every number of columns: shown first");
    byPage_->setToolTip("Ramps over the page’s width, band by band: shown first");
    connect(byCard_, &QPushButton::clicked, this, &ScaleBox::proposeCard);
    connect(byPage_, &QPushButton::clicked, this, &ScaleBox::proposePage);
    connect(proposal_, &ProposalBox::left, this,
            [this] { (byCard_->isHidden() ? byPage_ : byCard_)->setFocus(); });
}

void ScaleBox::refresh() {
    const project::Project& project = context_.viewing.document().project();
    byCard_->setVisible(someFollow(project, project::Follow::Viewport));
    byPage_->setVisible(someFollow(project, project::Follow::Card));
    for (QPushButton* button : {byCard_, byPage_})
        button->setEnabled(!context_.viewing.showsSaved());
}

void ScaleBox::proposeCard() {
    const project::Project& project = context_.viewing.document().project();
    project::Problems problems;
    auto scale = solve::inCardScale(project, context_.viewing.document().store(), problems);
    QStringList says;
    if (scale)
        for (const std::string& sentence : solve::sentences(project, *scale))
            says << QString::fromStdString(sentence);
    else
        says << QString("Cards cannot be containers here.") << inWords(problems);
    proposal_->open("All sizes by the card", "Follow the card",
                    scale ? std::make_shared<const project::Project>(std::move(scale->project)) : nullptr,
                    says);
}

void ScaleBox::proposePage() {
    project::Problems problems;
    auto turned = std::make_shared<const project::Project>(sizesByPage(context_.viewing.document().project(),
                                                                       context_.viewing.document().store(),
                                                                       context_.viewing.profile(), problems));
    proposal_->open("All sizes by the page", "Follow the page", std::move(turned),
                    QStringList{"Each band has ramps of its own over the page’s width. No container is "
                                "needed any more, and a new number of columns needs new sizes."} +
                        inWords(problems));
}

}  // namespace tenter::desktop::panels
