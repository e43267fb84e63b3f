#include "panels/leeway_box.h"

#include <QVBoxLayout>
#include <algorithm>

#include "document/wording.h"
#include "units/number.h"

namespace tenter::desktop::panels {

namespace {

struct Question {
    solve::Varied varied;
    const char* title;
    const char* edit;
};
constexpr Question questions[] = {{solve::Varied::Breakpoint, "Breakpoint", "Move a breakpoint"},
                                  {solve::Varied::ColumnGap, "Column gap", "Row column gap"},
                                  {solve::Varied::CardPadding, "Card padding", "Card padding"},
                                  {solve::Varied::RowWidth, "Row width", "Row width"}};

QString inUnit(double value, units::Unit unit) {
    const std::string_view suffix = units::suffix(unit);
    return figure(value) + ' ' + QString::fromUtf8(suffix.data(), static_cast<qsizetype>(suffix.size()));
}

}  // namespace

LeewayBox::LeewayBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      about_(new QLabel(this)),
      proposal_(new ProposalBox(context, this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    about_->setWordWrap(true);
    about_->setForegroundRole(QPalette::PlaceholderText);
    about_->setContentsMargins(12, 0, 24, 0);
    box->addWidget(about_);
    auto* grid = new QGridLayout;
    grid->setContentsMargins(12, 4, 24, 0);
    grid->setSpacing(8);
    for (const Question& question : questions) {
        auto* button = new QPushButton(question.title, this);
        button->setAccessibleName(QString("Leeway of the ") + QString(question.title).toLower());
        const auto at = static_cast<int>(buttons_.size());
        grid->addWidget(button, at / 2, at % 2);
        connect(button, &QPushButton::clicked, this,
                [this, varied = question.varied, button] { ask(varied, button); });
        buttons_.push_back(button);
    }
    box->addLayout(grid);
    box->addWidget(proposal_);
    connect(proposal_, &ProposalBox::left, this, [this] {
        if (asked_ != nullptr) asked_->setFocus();
    });
}

void LeewayBox::refresh() {
    const Viewing& viewing = context_.viewing;
    // What is asked is asked of the document, not of what it is proposed to become.
    if (!viewing.showsDocument()) return;
    const project::Variant& variant = viewing.shown().variants[viewing.variant()];
    const std::size_t band = viewing.band();
    QString about = "With sizes as they are, for which values do the wishes hold in the band " +
                    bandTitle(viewing, band) + "?";
    const bool breaks = variant.bands.size() > 1;
    if (!breaks) about += " With one band there is no breakpoint.";
    const bool gaps = viewing.row().settings(band).row.columns.value_or(1) > 1;
    if (!gaps) about += " One column has no gap.";
    about_->setText(about);
    buttons_[0]->setEnabled(breaks);
    buttons_[1]->setEnabled(gaps);
    setFocusProxy(*std::ranges::find_if(buttons_, &QPushButton::isEnabled));
}

void LeewayBox::ask(solve::Varied varied, QPushButton* from) {
    asked_ = from;
    const Viewing& viewing = context_.viewing;
    const project::Project& project = viewing.document().project();
    const std::size_t variant = viewing.variant();
    std::size_t band = viewing.row().bandAt(viewing.width());
    // The widest band ends nowhere: its breakpoint is where it starts.
    if (varied == solve::Varied::Breakpoint && band > 0 && !project.variants[variant].bands[band].upTo)
        --band;
    const auto leeway = solve::leewayOf(project, variant, band, varied, viewing.document().store());
    const auto& question =
        questions[static_cast<std::size_t>(std::ranges::find(buttons_, from) - buttons_.begin())];
    if (!leeway) {
        proposal_->open(
            {}, {}, nullptr,
            {"There is no figure to vary in this band: what is set is a word, or lies outside the widths "
             "looked at."});
        return;
    }
    const QString says = QString::fromStdString(solve::sentenceOf(project, variant, band, varied, *leeway));
    Viewing::Proposal proposal;
    QString take;
    if (leeway->run && leeway->run->best != leeway->now) {
        proposal = std::make_shared<const project::Project>(
            solve::withValue(project, variant, band, varied, leeway->run->best, leeway->unit));
        take = "Take " + inUnit(leeway->run->best, leeway->unit);
    }
    proposal_->open(question.edit, take, std::move(proposal), {says});
}

}  // namespace tenter::desktop::panels
