#include "panels/leeway_box.h"

#include <QVBoxLayout>
#include <algorithm>

#include "document/wording.h"
#include "units/number.h"

namespace tenter::desktop::panels {

namespace {

struct Entry {
    solve::LeewaySetting setting;
    const char* title;
    const char* name;
    const char* undoName;
};
constexpr Entry entries[] = {{solve::LeewaySetting::Breakpoint, QT_TRANSLATE_NOOP("QObject", "Breakpoint"),
                              QT_TRANSLATE_NOOP("QObject", "Leeway of the breakpoint"),
                              QT_TRANSLATE_NOOP("QObject", "Change breakpoint")},
                             {solve::LeewaySetting::ColumnGap, QT_TRANSLATE_NOOP("QObject", "Column gap"),
                              QT_TRANSLATE_NOOP("QObject", "Leeway of the column gap"),
                              QT_TRANSLATE_NOOP("QObject", "Change column gap")},
                             {solve::LeewaySetting::CardPadding, QT_TRANSLATE_NOOP("QObject", "Card padding"),
                              QT_TRANSLATE_NOOP("QObject", "Leeway of the card padding"),
                              QT_TRANSLATE_NOOP("QObject", "Change card padding")},
                             {solve::LeewaySetting::RowWidth, QT_TRANSLATE_NOOP("QObject", "Row width"),
                              QT_TRANSLATE_NOOP("QObject", "Leeway of the row width"),
                              QT_TRANSLATE_NOOP("QObject", "Change row width")}};

QString inUnit(double value, units::Unit unit) {
    const std::string_view suffix = units::suffix(unit);
    return figure(value) + QChar(QChar::Nbsp) +
           QString::fromUtf8(suffix.data(), static_cast<qsizetype>(suffix.size()));
}

}  // namespace

LeewayBox::LeewayBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      intro_(new QLabel(this)),
      proposal_(new ProposalBox(context, this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    intro_->setWordWrap(true);
    intro_->setForegroundRole(QPalette::PlaceholderText);
    intro_->setContentsMargins(12, 0, 24, 0);
    box->addWidget(intro_);
    auto* grid = new QGridLayout;
    grid->setContentsMargins(12, 4, 24, 0);
    grid->setSpacing(8);
    for (const Entry& entry : entries) {
        auto* button = new QPushButton(QObject::tr(entry.title), this);
        button->setAccessibleName(QObject::tr(entry.name));
        const auto at = static_cast<int>(buttons_.size());
        grid->addWidget(button, at / 2, at % 2);
        connect(button, &QPushButton::clicked, this,
                [this, setting = entry.setting, button] { showLeeway(setting, button); });
        buttons_.push_back(button);
    }
    box->addLayout(grid);
    box->addWidget(proposal_);
    connect(proposal_, &ProposalBox::closed, this, [this] {
        if (pressed_ != nullptr) pressed_->setFocus();
    });
}

void LeewayBox::refresh() {
    const Session& session = context_.session;
    // The leeway is that of the document, not of a proposal.
    if (!session.shown.showsDocument()) return;
    const project::Variant& variant = session.shown.project().row().variants[session.view.variant()];
    const std::size_t band = session.layouts.band();
    QString intro =
        QObject::tr("Leeway in the band %1 at the current sizes.").arg(bandTitle(session.layouts, band));
    const bool hasBreakpoint = variant.bands.size() > 1;
    if (!hasBreakpoint) intro += ' ' + QObject::tr("A variant with one band has no breakpoint.");
    const bool hasGap = session.layouts.row().settings(band).row.columns.value_or(1) > 1;
    if (!hasGap) intro += ' ' + QObject::tr("One column has no gap.");
    intro_->setText(intro);
    buttons_[0]->setEnabled(hasBreakpoint);
    buttons_[1]->setEnabled(hasGap);
    setFocusProxy(*std::ranges::find_if(buttons_, &QPushButton::isEnabled));
}

void LeewayBox::showLeeway(solve::LeewaySetting setting, QPushButton* button) {
    pressed_ = button;
    Session& session = context_.session;
    const project::Project& project = session.document.project();
    const std::size_t variant = session.view.variant();
    std::size_t band = session.layouts.row().bandAt(session.view.width());
    // The widest band has no end: its breakpoint is where it starts.
    if (setting == solve::LeewaySetting::Breakpoint && band > 0 &&
        !project.row().variants[variant].bands[band].upTo)
        --band;
    const auto leeway = solve::leewayOf(project, variant, band, setting, session.document.store());
    const auto& entry =
        entries[static_cast<std::size_t>(std::ranges::find(buttons_, button) - buttons_.begin())];
    if (!leeway) {
        const auto& width = session.layouts.row().settings(band).row.width;
        const bool isKeyword = setting == solve::LeewaySetting::RowWidth && width && width->isKeyword();
        proposal_->open(
            {}, {}, nullptr,
            {isKeyword ? QObject::tr("The row width of this band is a keyword, so it has no leeway.")
                       : QObject::tr("This band is outside the project’s range of widths.")});
        return;
    }
    const QString text = QString::fromStdString(solve::describe(project, variant, band, setting, *leeway));
    ShownProject::Proposal proposal;
    QString buttonText;
    if (leeway->range && leeway->range->suggested != leeway->current) {
        proposal = std::make_shared<const project::Project>(
            solve::withValue(project, variant, band, setting, leeway->range->suggested, leeway->unit));
        buttonText = QObject::tr("Apply %1").arg(inUnit(leeway->range->suggested, leeway->unit));
    }
    proposal_->open(QObject::tr(entry.undoName), buttonText, std::move(proposal), {text});
}

}  // namespace tenter::desktop::panels
