#include "page_import/role_bar.h"

#include <QGridLayout>
#include <QInputDialog>
#include <algorithm>

#include "controls/inks.h"
#include "controls/text_scale.h"
#include "css/places.h"
#include "css/selectors.h"
#include "document/wording.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

namespace {

QString barRoleTitle(const std::string& role) {
    return role.empty() ? QObject::tr("None") : roleTitle(role);
}

bool isInCard(const markup::GivenRow& row, markup::NodeId node) {
    return std::ranges::any_of(row.cards, [&](const markup::GivenCard& card) {
        return node != card.node && row.tree.isWithin(node, card.node);
    });
}

}  // namespace

QString selectorProblem(const QString& selector) {
    const std::string text = selector.toStdString();
    css::Problems problems;
    if (css::readSelectors(text, problems) && problems.empty()) return {};
    if (problems.empty()) return QObject::tr("This is not a selector. Write one, such as .walk-title.");
    const css::Place place = css::Lines(text).placeOf(problems.front().offset);
    project::Problem problem;
    problem.what = problems.front().what;
    problem.fix = problems.front().fix;
    return QObject::tr("Column %1: %2").arg(place.column).arg(problemSentence(problem));
}

RoleBar::RoleBar(QWidget* parent)
    : QWidget(parent),
      element_(new QLabel(this)),
      role_(new controls::CalmCombo(this)),
      selectorLabel_(new QLabel(QObject::tr("&Selector"), this)),
      selector_(new QLineEdit(this)),
      problem_(new QLabel(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(8);
    auto* roleLabel = new QLabel(QObject::tr("&Role"), this);
    roleLabel->setBuddy(role_);
    selectorLabel_->setBuddy(selector_);
    for (QLabel* label : {roleLabel, selectorLabel_})
        label->setForegroundRole(QPalette::PlaceholderText);
    QFont bold = element_->font();
    bold.setWeight(QFont::DemiBold);
    element_->setFont(bold);
    element_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    element_->setAccessibleName(QObject::tr("Selected element"));
    element_->setTextFormat(Qt::PlainText);
    role_->setAccessibleName(QObject::tr("Role of the selected element, in every card"));
    role_->setFixedWidth(controls::scaled(176));
    selector_->setAccessibleName(QObject::tr("Selector of all elements with this role"));
    problem_->setWordWrap(true);
    problem_->setTextFormat(Qt::PlainText);
    problem_->setAccessibleName(QObject::tr("Problem with the last change"));
    problem_->hide();
    grid->addWidget(element_, 0, 0, 1, 4);
    grid->addWidget(roleLabel, 1, 0);
    grid->addWidget(role_, 1, 1);
    grid->addWidget(selectorLabel_, 1, 2);
    grid->addWidget(selector_, 1, 3);
    grid->addWidget(problem_, 2, 0, 1, 4);
    grid->setColumnStretch(3, 1);
    connect(role_, &QComboBox::activated, this, &RoleBar::chooseRole);
    connect(selector_, &QLineEdit::textEdited, this,
            [this](const QString& text) { showProblem(selectorProblem(text)); });
    connect(selector_, &QLineEdit::editingFinished, this, &RoleBar::applySelector);
    showElement(nullptr, markup::noNode);
}

void RoleBar::showElement(const markup::GivenRow* row, markup::NodeId node) {
    showProblem({});
    node_ = row == nullptr ? markup::noNode : node;
    const bool any = node_ != markup::noNode;
    role_->setEnabled(any);
    currentRole_ = any ? roleOf(*row, node) : std::string();
    element_->setText(any ? elementTitle(row->tree, node)
                          : QObject::tr("Select an element in the tree or in the drawing"));
    element_->setToolTip(any ? element_->text() : QString());
    offered_.clear();
    if (any && isInCard(*row, node)) {
        offered_ = {"", "picture"};
        for (const std::string& role : textRoles_)
            offered_.push_back(role);
        for (const markup::RoleNodes& role : row->roles)
            if (std::ranges::find(offered_, role.role) == offered_.end() && role.role != "row" &&
                role.role != "card")
                offered_.push_back(role.role);
    } else if (any && currentRole_.empty()) {
        offered_ = {""};
    }
    if (any) offered_.insert(offered_.end(), {"card", "row"});
    fillRoles();
    const markup::RoleNodes* found = any && !currentRole_.empty() ? row->find(currentRole_) : nullptr;
    shownSelector_ = found == nullptr ? QString() : QString::fromStdString(found->selector);
    selector_->setText(shownSelector_);
    selector_->setEnabled(found != nullptr);
    selector_->setPlaceholderText(found == nullptr
                                      ? QObject::tr("no selector without a role")
                                      : QObject::tr("empty: the element with the variant’s class"));
}

void RoleBar::fillRoles() {
    role_->clear();
    for (const std::string& role : offered_)
        role_->addItem(barRoleTitle(role));
    const auto at = std::ranges::find(offered_, currentRole_);
    if (offered_.size() > 3) role_->addItem(QObject::tr("New role…"));
    role_->setCurrentIndex(at == offered_.end() ? -1 : static_cast<int>(at - offered_.begin()));
}

void RoleBar::chooseRole(int index) {
    std::string role;
    if (index >= static_cast<int>(offered_.size())) {
        const QString typed =
            QInputDialog::getText(
                this, QObject::tr("New role"),
                QObject::tr("Name of the role in lower-case letters, such as kicker or price:"))
                .trimmed();
        fillRoles();
        if (typed.isEmpty()) return;
        role = typed.toStdString();
        if (const QString wrong = wrongWithRole(role); !wrong.isEmpty()) {
            showProblem(wrong);
            return;
        }
    } else {
        role = offered_[static_cast<std::size_t>(index)];
    }
    if (role == currentRole_) return;
    Q_EMIT roleChosen(node_, QString::fromStdString(role));
}

void RoleBar::applySelector() {
    const QString text = selector_->text().trimmed();
    if (currentRole_.empty() || text == shownSelector_) return;
    if (text.isEmpty()) {
        selector_->setText(shownSelector_);
        showProblem({});
        return;
    }
    if (const QString problem = selectorProblem(text); !problem.isEmpty()) {
        showProblem(problem);
        return;
    }
    Q_EMIT selectorTyped(QString::fromStdString(currentRole_), text);
}

void RoleBar::showProblem(const QString& problem) {
    QPalette ink = palette();
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    problem_->setPalette(ink);
    problem_->setText(problem);
    problem_->setVisible(!problem.isEmpty());
}

}  // namespace tenter::desktop::page_import
