#include "row/editing/row_editing.h"

#include <algorithm>

#include "document/wording.h"
#include "row/editing/selected_cards.h"
#include "row/lookup.h"
#include "session/changes.h"

namespace tenter::desktop::row::editing {

namespace {

QString cardsTitle(std::size_t cards) {
    return QObject::tr("%n card(s)", nullptr, static_cast<int>(cards));
}

}  // namespace

RowEditing::RowEditing(Session& session, SheetLayout& sheets, QAbstractScrollArea& area)
    : session_(session),
      sheets_(sheets),
      area_(area),
      text_(session, sheets, area),
      spacing_(session, sheets, area),
      cards_(session, sheets, area),
      commands_(session),
      menu_(session, text_, commands_, area) {
    // A row that fits the window must not change its scale under the pointer or the caret.
    connect(this, &RowEditing::busyChanged, this, [this] { sheets_.holdZoom(isBusy()); });
    connect(&text_, &TextEditing::message, this, &RowEditing::message);
    connect(&text_, &TextEditing::begun, this, &RowEditing::busyChanged);
    connect(&text_, &TextEditing::ended, this, &RowEditing::busyChanged);
    connect(&cards_, &CardDrag::message, this, &RowEditing::message);
    connect(&cards_, &CardDrag::dropped, &commands_, &CardCommands::moveTo);
    connect(&commands_, &CardCommands::message, this, &RowEditing::message);
    connect(&menu_, &RowMenu::message, this, &RowEditing::message);
    onChange(session_.selection, SelectionModel::Change::Place, this, &RowEditing::describeSelection);
}

// ---- Pointer

bool RowEditing::press(const QMouseEvent& event) {
    pressed_.reset();
    const QPointF at = event.position();
    const auto sheet = sheets_.sheetAt(at);
    if (event.button() != Qt::LeftButton || !sheet || sheets_.edgeAt(at)) return false;
    if (spacing_.press(at)) {
        Q_EMIT busyChanged();
        return true;
    }
    cards_.press(at);
    const layout::Layout& layout = sheets_.rowOn(*sheet).layout;
    const QPointF page = sheets_.pageAt(at, *sheet);
    if (const auto part = partAt(layout, page)) pressed_ = Pressed{refOf(layout, *part), page};
    return false;
}

bool RowEditing::move(const QMouseEvent& event) {
    if (spacing_.isDragging()) {
        spacing_.move(event.position());
        return true;
    }
    const bool before = cards_.isDragging();
    if ((event.buttons() & Qt::LeftButton) == 0 || !cards_.move(event.position())) return false;
    if (!before) Q_EMIT busyChanged();
    return true;
}

bool RowEditing::release(const QMouseEvent& event) {
    const bool spacing = spacing_.isDragging();
    // A click that moves nothing selects nothing, as a click beside the cards does.
    if (spacing && !spacing_.release()) session_.selection.select({});
    const bool cards = !spacing && cards_.release();
    if (spacing || cards) Q_EMIT busyChanged();
    if (spacing) hover(event.position());
    return spacing || cards;
}

bool RowEditing::doubleClick(const QMouseEvent& event) {
    if (event.button() != Qt::LeftButton || event.modifiers() != Qt::NoModifier || !pressed_) return false;
    if (std::holds_alternative<project::PicturePart>(session_.document.project().part(pressed_->part))) {
        menu_.changePicture();
        return true;
    }
    const Projection at = sheets_.projection();
    return text_.begin(pressed_->part, QPointF(at.x(pressed_->page.x()), at.y(pressed_->page.y())));
}

void RowEditing::hover(const QPointF& view) {
    if (sheets_.edgeAt(view))
        spacing_.leave();
    else
        spacing_.hover(view);
}

void RowEditing::paint(QPainter& painter) const {
    spacing_.paint(painter);
    cards_.paint(painter);
}

// ---- Keyboard

bool RowEditing::altKey(int key) {
    const bool mirrored = session_.document.project().rightToLeft;
    switch (key) {
        case Qt::Key_Left:
            commands_.move(mirrored ? 1 : -1);
            return true;
        case Qt::Key_Right:
            commands_.move(mirrored ? -1 : 1);
            return true;
        case Qt::Key_Up:
            commands_.movePart(-1);
            return true;
        case Qt::Key_Down:
            commands_.movePart(1);
            return true;
        default:
            return false;
    }
}

bool RowEditing::key(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    if (event.key() == Qt::Key_Escape && (spacing_.isDragging() || cards_.isDragging())) {
        spacing_.cancel();
        cards_.cancel();
        Q_EMIT busyChanged();
        return true;
    }
    if (modifiers == Qt::AltModifier) return altKey(event.key());
    if (event.key() == Qt::Key_D && modifiers == Qt::ControlModifier) {
        commands_.duplicate();
        return true;
    }
    if (modifiers != Qt::NoModifier) return false;
    const auto part = session_.selection.part();
    if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) return part && text_.begin(*part);
    if (event.key() != Qt::Key_Delete || !session_.selection.place()) return false;
    part ? commands_.removePart() : commands_.remove();
    return true;
}

// ---- Menu and status line

void RowEditing::openMenu(const QContextMenuEvent& event) {
    if (event.reason() == QContextMenuEvent::Mouse) {
        const QPointF at = event.pos();
        const auto sheet = sheets_.sheetAt(at);
        std::optional<Place> place;
        if (sheet) {
            const layout::Layout& layout = sheets_.rowOn(*sheet).layout;
            const QPointF page = sheets_.pageAt(at, *sheet);
            if (const auto part = partAt(layout, page))
                place = Place::of(refOf(layout, *part));
            else if (const auto card = cardAt(layout, page))
                place = Place{*card, {}};
            if (sheets_.showsAll()) session_.view.setVariant(*sheet);
        }
        // A click on one of several selected parts is about all of them.
        const std::vector<Place> all = session_.selection.all();
        if (!place || std::ranges::find(all, *place) == all.end()) session_.selection.select(place);
        menu_.open(event.globalPos());
        return;
    }
    QPoint at(16, 16);
    if (const auto place = session_.selection.place())
        if (const layout::Box* box = boxOf(session_.layouts.layout(), *place))
            at = sheets_.projection().rect(*box).bottomLeft().toPoint();
    const QRect view = area_.viewport()->rect();
    at = {std::clamp(at.x(), 0, view.right()), std::clamp(at.y(), 0, view.bottom())};
    menu_.open(area_.viewport()->mapToGlobal(at));
}

// Says what acts on several selected parts.
void RowEditing::describeSelection() {
    if (session_.selection.others().empty()) return;
    const std::vector<Place> all = session_.selection.all();
    const auto parts = std::ranges::count_if(all, [](const Place& place) { return place.part.has_value(); });
    QStringList roles;
    for (const std::string& role : session_.selection.roles())
        roles << roleInSentence(role);
    Q_EMIT message(
        QObject::tr(
            "%n part(s) of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right "
            "and Ctrl+D act on the cards.",
            nullptr, static_cast<int>(parts))
            .arg(cardsTitle(selectedCards(session_.selection).size()),
                 roles.join(QObject::tr(" and ", "between roles"))));
}

}  // namespace tenter::desktop::row::editing
