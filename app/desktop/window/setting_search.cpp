#include "window/setting_search.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QStandardItemModel>

#include "controls/glyphs.h"

namespace tenter::desktop::window {

namespace {

constexpr int searched = Qt::UserRole;
constexpr int placeAt = Qt::UserRole + 1;

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

/// Searches other texts than it shows.
class Finder : public QCompleter {
public:
    using QCompleter::QCompleter;
    [[nodiscard]] QString pathFromIndex(const QModelIndex& index) const override {
        return index.data(Qt::DisplayRole).toString();
    }
};

}  // namespace

SettingSearch::SettingSearch(panels::SidePanel& panel, QWidget* parent)
    : QLineEdit(parent), panel_(panel), places_(panel.places()) {
    setPlaceholderText("Find setting");
    setAccessibleName("Find setting");
    setToolTip("Find a setting by its label or another word for it (Ctrl+F)");
    setClearButtonEnabled(false);
    addAction(controls::glyph(controls::Glyph::Search), QLineEdit::LeadingPosition);
    auto* found = new QStandardItemModel(this);
    for (std::size_t i = 0; i < places_.size(); ++i) {
        auto* item = new QStandardItem(places_[i].words);
        item->setData(wordsFor(places_[i]), searched);
        item->setData(static_cast<int>(i), placeAt);
        found->appendRow(item);
    }
    auto* completer = new Finder(found, this);
    completer->setCompletionRole(searched);
    completer->setFilterMode(Qt::MatchContains);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setMaxVisibleItems(12);
    setCompleter(completer);
    connect(completer, QOverload<const QModelIndex&>::of(&QCompleter::activated), this,
            [this](const QModelIndex& index) {
                // After the list has closed.
                QMetaObject::invokeMethod(
                    this, [this, place = index.data(placeAt).toInt()] { go(place); }, Qt::QueuedConnection);
            });
}

bool SettingSearch::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) return false;
    }
    return QLineEdit::event(event);
}

void SettingSearch::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        clear();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (text().isEmpty()) return;
        // The highlighted entry, or the first.
        const QModelIndex lit = completer()->popup()->currentIndex();
        if (completer()->popup()->isVisible() && lit.isValid())
            go(lit.data(placeAt).toInt());
        else if (completer()->completionCount() > 0)
            go(completer()->completionModel()->index(0, 0).data(placeAt).toInt());
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void SettingSearch::go(int place) {
    clear();
    completer()->popup()->hide();
    panel_.go(places_[static_cast<std::size_t>(place)]);
}

}  // namespace tenter::desktop::window
