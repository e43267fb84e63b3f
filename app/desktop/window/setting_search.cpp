#include "window/setting_search.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyle>

#include "controls/glyphs.h"

namespace tenter::desktop::window {

namespace {

constexpr int iconSide = 16;
constexpr int iconRoom = 20;  // px left of the text

/// Another word for a word in a label: what people may search for instead.
struct Synonym {
    const char* word;
    const char* other;
};
constexpr Synonym synonyms[] = {{"size at least", "size from"},
                                {"size at least", "minimum size"},
                                {"size at least", "least size"},
                                {"size at least", "smallest size"},
                                {"size at most", "size to"},
                                {"size at most", "maximum size"},
                                {"size at most", "largest size"},
                                {"measure at least", "measure from"},
                                {"measure at least", "minimum measure"},
                                {"measure at most", "measure to"},
                                {"measure at most", "maximum measure"},
                                {"lines at most", "lines up to"},
                                {"lines at most", "maximum lines"},
                                {"lines at most", "at most lines"},
                                {"measure", "line length"},
                                {"measure", "characters per line"},
                                {"measure", "characters to a line"},
                                {"column gap", "gutter"},
                                {"line height", "leading"},
                                {"letter spacing", "tracking"},
                                {"letter case", "capitals"},
                                {"letter case", "text transform"},
                                {"text wrap", "balanced"},
                                {"text wrap", "greedy"},
                                {"long words", "overflow wrap"},
                                {"minimum lines", "keep lines"},
                                {"minimum lines", "reserve lines"},
                                {"grows with", "follows"},
                                {"grows with", "container query"},
                                {"align parts", "level parts"},
                                {"align parts", "subgrid"},
                                {"alignment", "stands at"},
                                {"alignment", "position"},
                                {"background", "ground"},
                                {"corner radius", "corners"},
                                {"corner radius", "border radius"},
                                {"corner radius", "rounded"},
                                {"hover", "under the pointer"},
                                {"focus ring", "outline"},
                                {"offset x", "right by"},
                                {"offset y", "down by"},
                                {"full-bleed picture", "edge to edge"},
                                {"picture width", "its share"},
                                {"aspect ratio", "crop"},
                                {"container", "page container"},
                                {"container background", "page ground"},
                                {"container side padding", "page sides"},
                                {"solver: slack <", "slack below"},
                                {"container ", "page "},
                                {"maximum width", "widest"},
                                {"maximum width", "max-width"},
                                {"container maximum width", "container widest"},
                                {"side padding", "sides"},
                                {"theme root size", "theme’s root"},
                                {"theme root size", "rem"},
                                {"reader text size", "reader’s size"},
                                {"smallest viewport width", "preview from"},
                                {"smallest viewport width", "widths from"},
                                {"smallest viewport width", "checked range"},
                                {"largest viewport width", "preview to"},
                                {"largest viewport width", "widths to"},
                                {"largest viewport width", "checked range"},
                                {"class prefix", "row name"},
                                {"double at zoom", "zoom for 2×"},
                                {"wish: ratio to role", "wish: factor"},
                                {"solver: reserve", "room for longer text"},
                                {"viewport width for all sizes", "page width for all sizes"},
                                {"longest heading", "longest title"},
                                {"size unit", "sizes in"},
                                {"text of a card", "copy of a card"},
                                {"text of a card", "link address"},
                                {"text of a card", "leads to"},
                                {"text of a card", "accessible name"},
                                {"text of a card", "read out as"},
                                {"text tests", "try the row with"},
                                {"breakpoint", "media query"}};

/// All texts that a place is found by, one a line.
QString wordsFor(const panels::SidePanel::Place& place) {
    QString all = place.words + '\n' + place.also;
    for (const Synonym& synonym : synonyms)
        for (const QString& words : {place.words, place.also})
            if (words.contains(synonym.word, Qt::CaseInsensitive))
                all += '\n' + QString(words).replace(synonym.word, synonym.other, Qt::CaseInsensitive);
    // People type straight apostrophes.
    return all.replace(QChar(0x2019), '\'');
}

}  // namespace

SettingSearch::SettingSearch(panels::SidePanel& panel, QWidget* parent)
    : QLineEdit(parent), panel_(panel), places_(panel.places()), list_(new SettingList(this)) {
    setPlaceholderText(QObject::tr("Find setting"));
    setAccessibleName(QObject::tr("Find setting"));
    setToolTip(QObject::tr("Find a setting by its label or another word for it (Ctrl+F)"));
    setClearButtonEnabled(false);
    setTextMargins(iconRoom, 0, 0, 0);
    for (std::size_t i = 0; i < places_.size(); ++i)
        list_->add(places_[i].words, wordsFor(places_[i]), static_cast<int>(i));
    connect(this, &QLineEdit::textEdited, list_, &SettingList::find);
    connect(list_, &SettingList::chosen, this, &SettingSearch::go);
}

// The icon is a drawing: as an action of the field it would be a button without a function.
void SettingSearch::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    QPainter painter(this);
    const QRect box(6, (height() - iconSide) / 2, iconSide, iconSide);
    controls::glyph(controls::Glyph::Search)
        .paint(&painter, QStyle::visualRect(layoutDirection(), rect(), box));
}

bool SettingSearch::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) return false;
    }
    return QLineEdit::event(event);
}

void SettingSearch::keyPressEvent(QKeyEvent* event) {
    const bool isOpen = list_->isVisible();
    switch (event->key()) {
        case Qt::Key_Escape:
            // In an empty field it is the window’s.
            if (text().isEmpty() && !isOpen) {
                event->ignore();
                return;
            }
            clear();
            list_->hide();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (!isOpen) list_->find(text());
            if (const int place = list_->lit(); place >= 0) go(place);
            return;
        case Qt::Key_Down:
        case Qt::Key_Up:
            if (isOpen)
                list_->step(event->key() == Qt::Key_Down ? 1 : -1);
            else
                list_->find(text());
            return;
        default:
            QLineEdit::keyPressEvent(event);
    }
}

void SettingSearch::go(int place) {
    clear();
    list_->hide();
    panel_.go(places_[static_cast<std::size_t>(place)]);
}

}  // namespace tenter::desktop::window
