#include "window/setting_search.h"

#include <QCoreApplication>
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
constexpr Synonym synonyms[] = {
    {QT_TRANSLATE_NOOP("SettingSearch", "size at least"), QT_TRANSLATE_NOOP("SettingSearch", "size from")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at least"), QT_TRANSLATE_NOOP("SettingSearch", "minimum size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at least"), QT_TRANSLATE_NOOP("SettingSearch", "least size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at least"),
     QT_TRANSLATE_NOOP("SettingSearch", "smallest size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at most"), QT_TRANSLATE_NOOP("SettingSearch", "size to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at most"), QT_TRANSLATE_NOOP("SettingSearch", "maximum size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size at most"), QT_TRANSLATE_NOOP("SettingSearch", "largest size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure at least"),
     QT_TRANSLATE_NOOP("SettingSearch", "measure from")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure at least"),
     QT_TRANSLATE_NOOP("SettingSearch", "minimum measure")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure at most"), QT_TRANSLATE_NOOP("SettingSearch", "measure to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure at most"),
     QT_TRANSLATE_NOOP("SettingSearch", "maximum measure")},
    {QT_TRANSLATE_NOOP("SettingSearch", "lines at most"), QT_TRANSLATE_NOOP("SettingSearch", "lines up to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "lines at most"),
     QT_TRANSLATE_NOOP("SettingSearch", "maximum lines")},
    {QT_TRANSLATE_NOOP("SettingSearch", "lines at most"),
     QT_TRANSLATE_NOOP("SettingSearch", "at most lines")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure"), QT_TRANSLATE_NOOP("SettingSearch", "line length")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure"),
     QT_TRANSLATE_NOOP("SettingSearch", "characters per line")},
    {QT_TRANSLATE_NOOP("SettingSearch", "measure"),
     QT_TRANSLATE_NOOP("SettingSearch", "characters to a line")},
    {QT_TRANSLATE_NOOP("SettingSearch", "column gap"), QT_TRANSLATE_NOOP("SettingSearch", "gutter")},
    {QT_TRANSLATE_NOOP("SettingSearch", "line height"), QT_TRANSLATE_NOOP("SettingSearch", "leading")},
    {QT_TRANSLATE_NOOP("SettingSearch", "letter spacing"), QT_TRANSLATE_NOOP("SettingSearch", "tracking")},
    {QT_TRANSLATE_NOOP("SettingSearch", "letter case"), QT_TRANSLATE_NOOP("SettingSearch", "capitals")},
    {QT_TRANSLATE_NOOP("SettingSearch", "letter case"), QT_TRANSLATE_NOOP("SettingSearch", "text transform")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text wrap"), QT_TRANSLATE_NOOP("SettingSearch", "balanced")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text wrap"), QT_TRANSLATE_NOOP("SettingSearch", "greedy")},
    {QT_TRANSLATE_NOOP("SettingSearch", "long words"), QT_TRANSLATE_NOOP("SettingSearch", "overflow wrap")},
    {QT_TRANSLATE_NOOP("SettingSearch", "minimum lines"), QT_TRANSLATE_NOOP("SettingSearch", "keep lines")},
    {QT_TRANSLATE_NOOP("SettingSearch", "minimum lines"),
     QT_TRANSLATE_NOOP("SettingSearch", "reserve lines")},
    {QT_TRANSLATE_NOOP("SettingSearch", "grows with"), QT_TRANSLATE_NOOP("SettingSearch", "follows")},
    {QT_TRANSLATE_NOOP("SettingSearch", "grows with"), QT_TRANSLATE_NOOP("SettingSearch", "container query")},
    {QT_TRANSLATE_NOOP("SettingSearch", "align parts"), QT_TRANSLATE_NOOP("SettingSearch", "level parts")},
    {QT_TRANSLATE_NOOP("SettingSearch", "align parts"), QT_TRANSLATE_NOOP("SettingSearch", "subgrid")},
    {QT_TRANSLATE_NOOP("SettingSearch", "alignment"), QT_TRANSLATE_NOOP("SettingSearch", "stands at")},
    {QT_TRANSLATE_NOOP("SettingSearch", "alignment"), QT_TRANSLATE_NOOP("SettingSearch", "position")},
    {QT_TRANSLATE_NOOP("SettingSearch", "background"), QT_TRANSLATE_NOOP("SettingSearch", "ground")},
    {QT_TRANSLATE_NOOP("SettingSearch", "corner radius"), QT_TRANSLATE_NOOP("SettingSearch", "corners")},
    {QT_TRANSLATE_NOOP("SettingSearch", "corner radius"),
     QT_TRANSLATE_NOOP("SettingSearch", "border radius")},
    {QT_TRANSLATE_NOOP("SettingSearch", "corner radius"), QT_TRANSLATE_NOOP("SettingSearch", "rounded")},
    {QT_TRANSLATE_NOOP("SettingSearch", "hover"), QT_TRANSLATE_NOOP("SettingSearch", "under the pointer")},
    {QT_TRANSLATE_NOOP("SettingSearch", "focus ring"), QT_TRANSLATE_NOOP("SettingSearch", "outline")},
    {QT_TRANSLATE_NOOP("SettingSearch", "offset x"), QT_TRANSLATE_NOOP("SettingSearch", "right by")},
    {QT_TRANSLATE_NOOP("SettingSearch", "offset y"), QT_TRANSLATE_NOOP("SettingSearch", "down by")},
    {QT_TRANSLATE_NOOP("SettingSearch", "full-bleed picture"),
     QT_TRANSLATE_NOOP("SettingSearch", "edge to edge")},
    {QT_TRANSLATE_NOOP("SettingSearch", "picture width"), QT_TRANSLATE_NOOP("SettingSearch", "its share")},
    {QT_TRANSLATE_NOOP("SettingSearch", "aspect ratio"), QT_TRANSLATE_NOOP("SettingSearch", "crop")},
    {QT_TRANSLATE_NOOP("SettingSearch", "container"), QT_TRANSLATE_NOOP("SettingSearch", "page container")},
    {QT_TRANSLATE_NOOP("SettingSearch", "container background"),
     QT_TRANSLATE_NOOP("SettingSearch", "page ground")},
    {QT_TRANSLATE_NOOP("SettingSearch", "container side padding"),
     QT_TRANSLATE_NOOP("SettingSearch", "page sides")},
    {QT_TRANSLATE_NOOP("SettingSearch", "solver: slack <"),
     QT_TRANSLATE_NOOP("SettingSearch", "slack below")},
    {QT_TRANSLATE_NOOP("SettingSearch", "container "), QT_TRANSLATE_NOOP("SettingSearch", "page ")},
    {QT_TRANSLATE_NOOP("SettingSearch", "maximum width"), QT_TRANSLATE_NOOP("SettingSearch", "widest")},
    {QT_TRANSLATE_NOOP("SettingSearch", "maximum width"), QT_TRANSLATE_NOOP("SettingSearch", "max-width")},
    {QT_TRANSLATE_NOOP("SettingSearch", "container maximum width"),
     QT_TRANSLATE_NOOP("SettingSearch", "container widest")},
    {QT_TRANSLATE_NOOP("SettingSearch", "side padding"), QT_TRANSLATE_NOOP("SettingSearch", "sides")},
    {QT_TRANSLATE_NOOP("SettingSearch", "theme root size"),
     QT_TRANSLATE_NOOP("SettingSearch", "theme’s root")},
    {QT_TRANSLATE_NOOP("SettingSearch", "theme root size"), QT_TRANSLATE_NOOP("SettingSearch", "rem")},
    {QT_TRANSLATE_NOOP("SettingSearch", "reader text size"),
     QT_TRANSLATE_NOOP("SettingSearch", "reader’s size")},
    {QT_TRANSLATE_NOOP("SettingSearch", "smallest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "preview from")},
    {QT_TRANSLATE_NOOP("SettingSearch", "smallest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "widths from")},
    {QT_TRANSLATE_NOOP("SettingSearch", "smallest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "checked range")},
    {QT_TRANSLATE_NOOP("SettingSearch", "largest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "preview to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "largest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "widths to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "largest viewport width"),
     QT_TRANSLATE_NOOP("SettingSearch", "checked range")},
    {QT_TRANSLATE_NOOP("SettingSearch", "class prefix"), QT_TRANSLATE_NOOP("SettingSearch", "row name")},
    {QT_TRANSLATE_NOOP("SettingSearch", "double at zoom"), QT_TRANSLATE_NOOP("SettingSearch", "zoom for 2×")},
    {QT_TRANSLATE_NOOP("SettingSearch", "wish: ratio to role"),
     QT_TRANSLATE_NOOP("SettingSearch", "wish: factor")},
    {QT_TRANSLATE_NOOP("SettingSearch", "solver: reserve"),
     QT_TRANSLATE_NOOP("SettingSearch", "room for longer text")},
    {QT_TRANSLATE_NOOP("SettingSearch", "viewport width for all sizes"),
     QT_TRANSLATE_NOOP("SettingSearch", "page width for all sizes")},
    {QT_TRANSLATE_NOOP("SettingSearch", "longest heading"),
     QT_TRANSLATE_NOOP("SettingSearch", "longest title")},
    {QT_TRANSLATE_NOOP("SettingSearch", "size unit"), QT_TRANSLATE_NOOP("SettingSearch", "sizes in")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text of a card"),
     QT_TRANSLATE_NOOP("SettingSearch", "copy of a card")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text of a card"),
     QT_TRANSLATE_NOOP("SettingSearch", "link address")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text of a card"), QT_TRANSLATE_NOOP("SettingSearch", "leads to")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text of a card"),
     QT_TRANSLATE_NOOP("SettingSearch", "accessible name")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text of a card"), QT_TRANSLATE_NOOP("SettingSearch", "read out as")},
    {QT_TRANSLATE_NOOP("SettingSearch", "text tests"),
     QT_TRANSLATE_NOOP("SettingSearch", "try the row with")},
    {QT_TRANSLATE_NOOP("SettingSearch", "breakpoint"), QT_TRANSLATE_NOOP("SettingSearch", "media query")}};

QString searchWord(const char* word) {
    return QCoreApplication::translate("SettingSearch", word);
}

/// All texts that a place is found by, one a line.
QString wordsFor(const panels::SidePanel::Place& place) {
    QString all = place.words + '\n' + place.also;
    for (const Synonym& synonym : synonyms)
        for (const QString& words : {place.words, place.also})
            if (const QString word = searchWord(synonym.word); words.contains(word, Qt::CaseInsensitive))
                all += '\n' + QString(words).replace(word, searchWord(synonym.other), Qt::CaseInsensitive);
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
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    setTextMargins(mirrored ? 0 : iconRoom, 0, mirrored ? iconRoom : 0, 0);
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
