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
    previous_ = button(glyph(Glyph::Left), QObject::tr("Previous card"));
    next_ = button(glyph(Glyph::Right), QObject::tr("Next card"));
    box->addWidget(title_);
    box->addWidget(previous_);
    box->addWidget(next_);
    box->addStretch(1);
    connect(previous_, &QToolButton::clicked, this, [this] { go(-1); });
    connect(next_, &QToolButton::clicked, this, [this] { go(1); });
    if (!editing) return;
    earlier_ = button(glyph(Glyph::Up), QObject::tr("Move card one place earlier"));
    later_ = button(glyph(Glyph::Down), QObject::tr("Move card one place later"));
    add_ = button(glyph(Glyph::Add), QObject::tr("Add card after this one"));
    remove_ = button(glyph(Glyph::Remove), QObject::tr("Remove card"));
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

std::optional<std::size_t> CardBar::cardOf(const Session& session) {
    const std::size_t count = session.shown.untried().row().cards.size();
    if (count == 0) return std::nullopt;
    return std::min(session.selection.card().value_or(0), count - 1);
}

void CardBar::refresh() {
    const project::Project& project = context_.session.shown.untried();
    const std::size_t count = project.row().cards.size();
    const auto card = cardOf(context_.session);
    title_->setText(card ? QObject::tr("Card %1 of %2").arg(*card + 1).arg(count) : QObject::tr("No cards"));
    previous_->setEnabled(card && *card > 0);
    next_->setEnabled(card && *card + 1 < count);
    if (!add_) return;
    for (QToolButton* each : {earlier_, later_, add_, remove_})
        each->setVisible(!project.row().given);
    earlier_->setEnabled(previous_->isEnabled());
    later_->setEnabled(next_->isEnabled());
    remove_->setEnabled(card.has_value());
}

std::optional<std::size_t> CardBar::cardBeside(int by) const {
    const auto card = cardOf(context_.session);
    const std::size_t count = context_.session.document.project().row().cards.size();
    if (!card || (by < 0 && *card == 0) || *card + static_cast<std::size_t>(by) >= count) return std::nullopt;
    return *card + static_cast<std::size_t>(by);
}

void CardBar::go(int by) {
    const auto card = cardBeside(by);
    if (!card) return;
    const std::size_t count = context_.session.document.project().row().cards[*card].parts.size();
    auto part = context_.session.selection.place().value_or(Place{}).part;
    if (part && count > 0)
        part = std::min(*part, count - 1);
    else
        part.reset();
    context_.session.selection.select(Place{*card, part});
}

void CardBar::addCard() {
    const auto card = cardOf(context_.session);
    const bool accepted = context_.edit(QObject::tr("Add card"), [&](project::Project& project) {
        if (!card) {
            project.row().cards.push_back(newCard());
        } else {
            const auto at = project.row().cards.begin() + static_cast<std::ptrdiff_t>(*card);
            project.row().cards.insert(at + 1, project::Card(*at));
        }
    });
    if (accepted) context_.session.selection.select(Place{card ? *card + 1 : 0, {}});
}

void CardBar::removeCard() {
    const auto card = cardOf(context_.session);
    if (!card) return;
    context_.edit(QObject::tr("Remove card"), [&](project::Project& project) {
        project.row().cards.erase(project.row().cards.begin() + static_cast<std::ptrdiff_t>(*card));
    });
}

void CardBar::moveCard(int by) {
    const auto card = cardOf(context_.session);
    const auto to = cardBeside(by);
    if (!to) return;
    context_.edit(QObject::tr("Move card"), [&](project::Project& project) {
        std::swap(project.row().cards[*card], project.row().cards[*to]);
    });
    context_.session.selection.select(Place{*to, context_.session.selection.place().value_or(Place{}).part});
}

}  // namespace tenter::desktop::panels
