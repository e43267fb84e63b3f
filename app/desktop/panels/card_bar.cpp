#include "panels/card_bar.h"

#include <QHBoxLayout>
#include <algorithm>

#include "controls/glyphs.h"
#include "document/new_card.h"

namespace tenter::desktop::panels {

using controls::Glyph;
using controls::glyph;

CardBar::CardBar(Context& context, bool editing, QWidget* parent)
    : QWidget(parent), context_(context), title_(new QLabel(this)) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(12, 0, 0, 0);
    box->setSpacing(4);
    QFont font = title_->font();
    font.setWeight(QFont::DemiBold);
    title_->setFont(font);
    previous_ = button(glyph(Glyph::Left), "Previous card");
    next_ = button(glyph(Glyph::Right), "Next card");
    box->addWidget(title_);
    box->addWidget(previous_);
    box->addWidget(next_);
    box->addStretch(1);
    connect(previous_, &QToolButton::clicked, this, [this] { go(-1); });
    connect(next_, &QToolButton::clicked, this, [this] { go(1); });
    if (!editing) return;
    earlier_ = button(glyph(Glyph::Up), "Move card one place earlier");
    later_ = button(glyph(Glyph::Down), "Move card one place later");
    add_ = button(glyph(Glyph::Add), "Add card after this one");
    remove_ = button(glyph(Glyph::Remove), "Remove card");
    for (QToolButton* each : {earlier_, later_, add_, remove_})
        box->addWidget(each);
    connect(earlier_, &QToolButton::clicked, this, [this] { moveCard(-1); });
    connect(later_, &QToolButton::clicked, this, [this] { moveCard(1); });
    connect(add_, &QToolButton::clicked, this, &CardBar::addCard);
    connect(remove_, &QToolButton::clicked, this, &CardBar::removeCard);
}

QToolButton* CardBar::button(const QIcon& icon, const QString& name) {
    auto* button = new QToolButton(this);
    button->setIcon(icon);
    button->setAutoRaise(true);
    button->setFixedSize(24, 24);
    button->setAccessibleName(name);
    button->setToolTip(name);
    return button;
}

int CardBar::cardOf(const Viewing& viewing) {
    const int count = static_cast<int>(viewing.untried().row().cards.size());
    if (count == 0) return -1;
    return std::clamp(viewing.selection().card, 0, count - 1);
}

void CardBar::refresh() {
    const int count = static_cast<int>(context_.viewing.untried().row().cards.size());
    const int card = cardOf(context_.viewing);
    title_->setText(card < 0 ? "No cards" : QString("Card %1 of %2").arg(card + 1).arg(count));
    previous_->setEnabled(card > 0);
    next_->setEnabled(card >= 0 && card + 1 < count);
    if (!add_) return;
    const bool own = !context_.viewing.untried().row().given;
    for (QToolButton* each : {earlier_, later_, add_, remove_})
        each->setVisible(own);
    earlier_->setEnabled(card > 0);
    later_->setEnabled(card >= 0 && card + 1 < count);
    remove_->setEnabled(card >= 0);
}

void CardBar::go(int by) {
    Viewing& viewing = context_.viewing;
    const int card = cardOf(viewing) + by;
    const auto& cards = viewing.document().project().row().cards;
    if (card < 0 || card >= static_cast<int>(cards.size())) return;
    const auto count = static_cast<int>(cards[static_cast<std::size_t>(card)].parts.size());
    viewing.select({card, std::min(viewing.selection().part, count - 1)});
}

void CardBar::addCard() {
    const int card = cardOf(context_.viewing);
    const bool accepted = context_.edit("Add card", [&](project::Project& project) {
        if (card < 0) {
            project.row().cards.push_back(newCard());
        } else {
            const auto at = project.row().cards.begin() + card;
            project.row().cards.insert(at + 1, project::Card(*at));
        }
    });
    if (accepted) context_.viewing.select({card + 1, -1});
}

void CardBar::removeCard() {
    const int card = cardOf(context_.viewing);
    if (card < 0) return;
    context_.edit("Remove card", [&](project::Project& project) {
        project.row().cards.erase(project.row().cards.begin() + card);
    });
}

void CardBar::moveCard(int by) {
    const int card = cardOf(context_.viewing);
    const int to = card + by;
    if (card < 0 || to < 0 ||
        to >= static_cast<int>(context_.viewing.document().project().row().cards.size()))
        return;
    context_.edit("Move card", [&](project::Project& project) {
        std::swap(project.row().cards[static_cast<std::size_t>(card)],
                  project.row().cards[static_cast<std::size_t>(to)]);
    });
    context_.viewing.select({to, context_.viewing.selection().part});
}

}  // namespace tenter::desktop::panels
