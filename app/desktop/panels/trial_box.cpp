#include "panels/trial_box.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "checks/checks.h"
#include "controls/number_editors.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::panels {

namespace {

std::vector<checks::Finding> found(Session& session, const project::Project& project) {
    if (project.row().cards.empty()) return {};
    return checks::check(project, session.view.variant(), session.document.store(), {});
}

/// `2 more warnings`, `1 fewer note`.
QString moreOrFewer(checks::Severity severity, int more) {
    const int count = std::abs(more);
    switch (severity) {
        case checks::Severity::Error:
            return more > 0 ? QObject::tr("%n more error(s)", nullptr, count)
                            : QObject::tr("%n fewer error(s)", nullptr, count);
        case checks::Severity::Warning:
            return more > 0 ? QObject::tr("%n more warning(s)", nullptr, count)
                            : QObject::tr("%n fewer warning(s)", nullptr, count);
        case checks::Severity::Note:
            break;
    }
    return more > 0 ? QObject::tr("%n more note(s)", nullptr, count)
                    : QObject::tr("%n fewer note(s)", nullptr, count);
}

/// `2 more warnings, 1 fewer note`.
QString compared(const std::vector<checks::Finding>& tried, const std::vector<checks::Finding>& before) {
    using checks::Severity;
    QStringList parts;
    for (const Severity severity : {Severity::Error, Severity::Warning, Severity::Note}) {
        const auto countIn = [severity](const std::vector<checks::Finding>& findings) {
            return static_cast<int>(std::ranges::count(findings, severity, &checks::Finding::severity));
        };
        const int more = countIn(tried) - countIn(before);
        if (more == 0) continue;
        parts << moreOrFewer(severity, more);
    }
    return parts.isEmpty() ? QObject::tr("same findings") : parts.join(", ");
}

}  // namespace

TrialBox::TrialBox(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      share_(new controls::NumberField(controls::numberKind(1, 100 * project::mostLonger, 5, 0, " %"), this)),
      all_(new QPushButton(QObject::tr("Run all tests"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 0, 24, 0);
    box->setSpacing(8);
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(4);
    grid->setHorizontalSpacing(8);
    grid->setColumnStretch(1, 1);
    box->addLayout(grid);
    const auto add = [&](std::optional<project::Trial::Kind> kind, const QString& title) {
        const int row = grid->rowCount();
        auto* choice = new QRadioButton(title, this);
        auto* count = new QLabel(this);
        count->setForegroundRole(QPalette::PlaceholderText);
        count->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        count->setWordWrap(true);
        count->setAccessibleName(QObject::tr("Findings with: %1").arg(title));
        grid->addWidget(choice, row, 0);
        grid->addWidget(count, row, 1);
        lines_.push_back({kind, choice, count});
        connect(choice, &QRadioButton::clicked, this, [this, at = lines_.size() - 1] { start(lines_[at]); });
    };
    add(std::nullopt, QObject::tr("No test"));
    for (const project::Trial::Kind kind : project::trialKinds())
        add(kind, trialTitle(kind));
    lines_.front().choice->setChecked(true);

    auto* longer = new QHBoxLayout;
    longer->setSpacing(8);
    auto* label = new QLabel(QObject::tr("Longer by"), this);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setBuddy(share_);
    share_->setAccessibleName(QObject::tr("Longer by"));
    share_->setAlwaysFilled(true);
    share_->setAmount({100 * project::usualLonger, {}});
    share_->setFixedWidth(controls::scaled(72));
    longer->addWidget(label);
    longer->addWidget(share_);
    longer->addStretch(1);
    longer->addWidget(all_);
    box->addLayout(longer);
    all_->setToolTip(
        toolTipText(QObject::tr("Shows next to each test how many findings it adds or removes")));
    connect(all_, &QPushButton::clicked, this, &TrialBox::runAll);
    connect(share_, &controls::NumberField::amountEdited, this, [this] {
        const auto longerLine = std::ranges::find(lines_, project::Trial::Kind::LongerCopy, &Line::kind);
        longerLine->findings->clear();
        start(*longerLine);
    });
    onChange(context_.session.shown, ShownProject::Change::TextTest, this, &TrialBox::refresh);
}

std::optional<project::Trial> TrialBox::trialOf(const Line& line) const {
    if (!line.kind) return std::nullopt;
    return project::Trial{*line.kind, share_->amount().value / 100};
}

void TrialBox::start(const Line& line) {
    context_.session.shown.tryOut(trialOf(line));
}

void TrialBox::refresh() {
    const auto& trial = context_.session.shown.trial();
    for (const Line& line : lines_)
        if (line.kind == (trial ? std::optional(trial->kind) : std::nullopt)) line.choice->setChecked(true);
    if (testedVariant_ == context_.session.view.variant() && tested_ == context_.session.shown.untried())
        return;
    for (const Line& line : lines_)
        line.findings->clear();
}

void TrialBox::runAll() {
    Session& session = context_.session;
    tested_ = session.shown.untried();
    testedVariant_ = session.view.variant();
    const std::vector<checks::Finding> before = found(session, tested_);
    for (const Line& line : lines_)
        if (const auto trial = trialOf(line))
            line.findings->setText(compared(found(session, project::tried(tested_, *trial)), before));
}

}  // namespace tenter::desktop::panels
