#include "row/editing/text_editing.h"

#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "document/wording.h"
#include "row/canvas.h"
#include "row/ink.h"
#include "row/lookup.h"
#include "row/row_painter.h"

namespace tenter::desktop::row::editing {

namespace {

constexpr int around = 24;  // px kept visible around the caret

const project::TextPart* textAt(const project::Project& project, const project::PartRef& part) {
    const auto& cards = project.row().cards;
    if (part.card >= cards.size() || part.part >= cards[part.card].parts.size()) return nullptr;
    return std::get_if<project::TextPart>(&cards[part.card].parts[part.part]);
}

std::vector<std::size_t> shapeOf(const project::Project& project) {
    std::vector<std::size_t> shape;
    for (const project::Card& card : project.row().cards)
        shape.push_back(card.parts.size());
    return shape;
}

/// The text after `part` (before it with −1) in the order of the cards.
std::optional<project::PartRef> textBeside(const project::Project& project, project::PartRef part,
                                           int direction) {
    const auto& cards = project.row().cards;
    std::vector<project::PartRef> texts;
    for (std::size_t card = 0; card < cards.size(); ++card)
        for (std::size_t i = 0; i < cards[card].parts.size(); ++i)
            if (std::holds_alternative<project::TextPart>(cards[card].parts[i])) texts.push_back({card, i});
    const auto at = std::ranges::find(texts, part);
    if (at == texts.end()) return std::nullopt;
    if (direction < 0) return at == texts.begin() ? std::nullopt : std::optional(*std::prev(at));
    return std::next(at) == texts.end() ? std::nullopt : std::optional(*std::next(at));
}

// The colour of the caret: that of the text, if it can be seen on what is behind it.
QColor inkOf(const LaidOutRow& row, const project::TextStyle* style) {
    QColor ground = groundOf(row);
    if (style != nullptr && style->background)
        ground = mixed(ground, colourOf(*style->background), colourOf(*style->background).alphaF());
    const QColor strong = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
    return style != nullptr && style->colour ? legible(colourOf(*style->colour), ground, strong) : strong;
}

// The font for the windows of input methods.
QFont fontOf(const project::TextStyle* style, double size) {
    QFont font;
    if (style == nullptr) return font;
    if (style->family)
        for (const std::string& family : *style->family)
            font.setFamilies(font.families() << QString::fromStdString(family));
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(size))));
    font.setWeight(static_cast<QFont::Weight>(static_cast<int>(style->weight.value_or(400))));
    font.setItalic(style->slant == project::Slant::Italic);
    return font;
}

}  // namespace

TextEditing::TextEditing(Session& session, SheetLayout& sheets, QAbstractScrollArea& area)
    : session_(session), sheets_(sheets), area_(area), field_(new TextField(area.viewport())) {
    connect(field_, &TextField::edited, this, [this] {
        if (isActive()) put(field_->shownCopy());
    });
    connect(field_, &TextField::committed, this, &TextEditing::finish);
    connect(field_, &TextField::cancelled, this, &TextEditing::cancel);
    connect(field_, &TextField::tabbed, this, &TextEditing::goOn);
    connect(field_, &TextField::caretMoved, this, &TextEditing::showCaret);
    connect(&session_.document, &Document::changed, this, &TextEditing::onDocument);
}

const project::TextPart* TextEditing::text() const {
    return place_ ? textAt(session_.document.project(), *place_) : nullptr;
}

QString TextEditing::title() const {
    return partTitle(session_.document.project(), place_->card, place_->part);
}

bool TextEditing::begin(const project::PartRef& part, const std::optional<QPointF>& view) {
    const project::TextPart* const text = textAt(session_.document.project(), part);
    if (text == nullptr) return false;
    if (session_.shown.trial()) {
        Q_EMIT message(QObject::tr("A text test is shown. End it to edit the text."));
        return false;
    }
    if (!session_.shown.showsDocument()) {
        Q_EMIT message(QObject::tr("This is a preview. Apply or discard it to edit the text."));
        return false;
    }
    finish();
    session_.selection.select(Place::of(part));
    session_.document.endGesture();
    place_ = part;
    before_ = text->copy;
    shape_ = shapeOf(session_.document.project());
    byKey_ = !view;
    field_->showCopy(text->copy);
    field_->setAccessibleName(QObject::tr("Text of %1, in the row").arg(title()));
    QTextOption option = field_->document()->defaultTextOption();
    option.setTextDirection(session_.document.project().rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    field_->document()->setDefaultTextOption(option);
    follow();
    field_->show();
    field_->raise();
    field_->setFocus(Qt::OtherFocusReason);
    field_->putCaret(view);
    Q_EMIT message(QObject::tr("Tab: next text. Ctrl+Enter: done. Escape: restore the text."));
    Q_EMIT begun();
    return true;
}

void TextEditing::put(const project::Copy& copy) {
    const std::string role = text() == nullptr ? std::string() : text()->role;
    const project::PartRef at = *place_;
    putting_ = true;
    session_.scope.edit(
        QObject::tr("Change %1 text", "role").arg(roleInSentence(role)),
        [&](project::Project& project) {
            if (textAt(project, at) != nullptr) std::get<project::TextPart>(project.part(at)).copy = copy;
        },
        QStringLiteral("text in the row"));
    putting_ = false;
    // Unless the edit was refused, the field shows this text already.
    if (text() != nullptr) field_->showCopy(text()->copy);
    follow();
    showCaret();
}

void TextEditing::onDocument() {
    if (!isActive() || putting_) return;
    if (text() == nullptr || shape_ != shapeOf(session_.document.project())) {
        finish();
        return;
    }
    if (text()->copy == field_->shownCopy()) return;
    before_ = text()->copy;
    field_->showCopy(before_);
    follow();
}

void TextEditing::follow() {
    if (!isActive() || putting_) return;
    const LaidOutRow row = sheets_.rowOn(sheets_.active());
    const auto part = indexOf(row.layout, place_);
    if (text() == nullptr || !part || !session_.shown.showsDocument() || session_.shown.trial()) {
        finish();
        return;
    }
    const layout::LaidPart& laid = row.layout.parts[*part];
    const project::TextStyle* const style = styleOf(row, laid);
    const Projection at = sheets_.projection(sheets_.active());
    field_->follow(TextMap(row, *part, text()->copy), at, inkOf(row, style),
                   fontOf(style, laid.glyphSize * at.zoom));
}

void TextEditing::showCaret() {
    // While a character is typed, the layout is not that of the text yet.
    if (!isActive() || putting_ || text() == nullptr || text()->copy != field_->shownCopy()) return;
    const QRect caret = field_->caretRect().adjusted(-around, -around, around, around);
    const QRect view = area_.viewport()->rect();
    const auto reveal = [](QScrollBar* bar, int from, int to, int room) {
        if (from < 0)
            bar->setValue(bar->value() + from);
        else if (to > room)
            bar->setValue(bar->value() + to - room);
    };
    reveal(area_.verticalScrollBar(), caret.top(), caret.bottom(), view.height());
    reveal(area_.horizontalScrollBar(), caret.left(), caret.right(), view.width());
}

void TextEditing::goOn(int direction) {
    const auto next = textBeside(session_.document.project(), *place_, direction);
    finish();
    if (!next) return;
    begin(*next);
    if (const auto part = indexOf(session_.layouts.layout(), *next)) sheets_.ensureVisible(*part);
    field_->selectAll();
}

void TextEditing::cancel() {
    if (!isActive()) return;
    put(before_);
    end();
}

void TextEditing::finish() {
    if (isActive()) end();
}

void TextEditing::end() {
    place_.reset();
    session_.document.endGesture();
    // Before the field is hidden, which would pass the focus on.
    if (field_->hasFocus()) area_.setFocus(byKey_ ? Qt::ShortcutFocusReason : Qt::OtherFocusReason);
    field_->endComposition();
    field_->hide();
    Q_EMIT ended();
}

}  // namespace tenter::desktop::row::editing
