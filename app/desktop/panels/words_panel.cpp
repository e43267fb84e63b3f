#include "panels/words_panel.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QMenu>
#include <algorithm>
#include <variant>

#include "checks/room_for_copy.h"
#include "controls/glyphs.h"
#include "controls/text_editor.h"
#include "controls/text_scale.h"
#include "document/new_card.h"
#include "document/wording.h"
#include "panels/row_parts.h"
#include "panels/setting_help.h"

namespace tenter::desktop::panels {

using controls::CopyEdit;
using controls::Glyph;
using controls::glyph;

/// The editor of one part: its role, buttons that format its words and move it, its text, its link.
struct WordsPanel::Line : QWidget {
    using QWidget::QWidget;
    QLabel* title = nullptr;
    CopyEdit* copy = nullptr;
    controls::TextEditor* link = nullptr;
    controls::TextEditor* name = nullptr;
    QLabel* room = nullptr;
};

namespace {

/// `Wish of at most 2 lines: room for 14 more characters, at 961 px viewport width`.
QString roomTitle(const checks::RoomForCopy& room) {
    const int count = std::abs(room.spare);
    const QString what = room.spare < 0    ? QObject::tr("%n character(s) too long", nullptr, count)
                         : room.spare == 0 ? QObject::tr("no room for more characters")
                                           : QObject::tr("room for %n more character(s)", nullptr, count);
    return QObject::tr("Wish of at most %1: %2, at %3 viewport width")
        .arg(linesTitle(static_cast<std::size_t>(room.lines)), what, pixels(room.width));
}

QString roomExplained(const checks::RoomForCopy& room) {
    return QObject::tr("The text has %1 characters. The fewest characters fit at a viewport width of %2.")
        .arg(room.characters)
        .arg(pixels(room.width));
}

QToolButton* small(QWidget* parent, Glyph sign, const QString& name) {
    auto* button = new QToolButton(parent);
    button->setIcon(glyph(sign));
    button->setIconSize({14, 14});
    button->setAutoRaise(true);
    button->setFixedSize(buttonSide, buttonSide);
    button->setAccessibleName(name);
    button->setToolTip(name);
    return button;
}

QWidget* labelled(QWidget* parent, const QString& title, controls::TextEditor* editor) {
    auto* widget = new QWidget(parent);
    auto* box = new QHBoxLayout(widget);
    box->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(title, widget);
    label->setFixedWidth(controls::scaled(112));
    label->setWordWrap(true);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setBuddy(editor);
    setHelp(*widget, *editor, title, propertyHelp(title));
    box->addWidget(label);
    box->addWidget(editor, 1);
    return widget;
}

}  // namespace

WordsPanel::WordsPanel(Context& context, QWidget* parent)
    : Panel(context, parent),
      bar_(new CardBar(context, true)),
      given_(buildGiven()),
      holder_(new QWidget),
      lines_(new QVBoxLayout(holder_)),
      add_(new QPushButton(QObject::tr("Add part"))),
      trial_(new TrialBox(context)) {
    rest_.setSingleShot(true);
    connect(&rest_, &QTimer::timeout, this, &WordsPanel::showRoom);
    section({});
    addWidget(given_);
    lines_->setContentsMargins(12, 8, 0, 0);
    lines_->setSpacing(16);
    addWidget(holder_);
    auto* foot = new QWidget;
    auto* box = new QHBoxLayout(foot);
    box->setContentsMargins(12, 12, 0, 0);
    box->addWidget(add_);
    box->addStretch(1);
    addWidget(foot);
    auto* menu = new QMenu(add_);
    add_->setMenu(menu);
    add_->setIcon(glyph(Glyph::Add));
    connect(menu, &QMenu::aboutToShow, this, [this, menu] {
        menu->clear();
        for (const std::string& role : project::roles(document().project()))
            menu->addAction(roleTitle(role), this, [this, role] { addPart(role); });
        menu->addSeparator();
        menu->addAction(QObject::tr("New role…"), this, [this] {
            const QString role =
                QInputDialog::getText(
                    this, QObject::tr("New role"),
                    QObject::tr("Name of the role in lower-case letters, such as kicker or price:"))
                    .trimmed();
            if (role.isEmpty()) return;
            if (const QString wrong = wrongWithRole(role.toStdString()); !wrong.isEmpty())
                this->context().showMessage(wrong);
            else
                addPart(role.toStdString());
        });
    });
    addFindable(QObject::tr("Text of a card"), add_);
    section(QObject::tr("Text tests"));
    explain(QObject::tr("Show the row with other texts, pictures or cards; the project is not changed"));
    addWidget(trial_);
    addFindable(QObject::tr("Longer text, longest heading, no pictures, one more card"), trial_->first());
    close();
}

QWidget* WordsPanel::buildGiven() {
    auto* given = new QWidget;
    auto* box = new QVBoxLayout(given);
    box->setContentsMargins(12, 0, 0, 8);
    box->setSpacing(8);
    givenNote_ = new QLabel(given);
    givenNote_->setWordWrap(true);
    givenNote_->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(givenNote_);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    auto* again = new QPushButton(QObject::tr("Import again…"), given);
    auto* own = new QPushButton(QObject::tr("Use Tenter’s markup"), given);
    buttons->addWidget(again);
    buttons->addWidget(own);
    buttons->addStretch(1);
    box->addLayout(buttons);
    connect(again, &QPushButton::clicked, this, &WordsPanel::importRowRequested);
    connect(own, &QPushButton::clicked, this, &WordsPanel::ownMarkupRequested);
    return given;
}

std::vector<std::string> WordsPanel::shape() const {
    std::vector<std::string> shape;
    const auto card = CardBar::cardOf(session());
    if (!card) return shape;
    for (const project::Part& part : session().shown.untried().row().cards[*card].parts) {
        const auto* text = std::get_if<project::TextPart>(&part);
        shape.push_back(text ? text->role : "picture");
    }
    return shape;
}

void WordsPanel::refresh() {
    bar_->refresh();
    const auto card = CardBar::cardOf(session());
    add_->setEnabled(card.has_value());
    const bool given = session().shown.untried().row().given.has_value();
    given_->setVisible(given);
    add_->setVisible(!given);
    const auto cards = session().shown.untried().row().cards.size();
    givenNote_->setText(QObject::tr(
        "This row of %n card(s) is imported from a page. You can edit its text here. To add, move or "
        "remove parts, change the page and import the row again.",
        nullptr, static_cast<int>(cards)));
    if (const auto now = shape(); card != card_ || now != builtShape_ || given != builtGiven_) {
        card_ = card;
        builtGiven_ = given;
        builtShape_ = now;
        rebuild();
    }
    trial_->refresh();
    // A drag changes the row in every frame: with many parts, wait until it ends.
    rest_.start(session().shown.hasFewParts() ? 40 : 400);
    if (!card_) return;
    const auto& parts = session().shown.untried().row().cards[*card_].parts;
    for (std::size_t i = 0; i < built_.size(); ++i) {
        const auto* text = std::get_if<project::TextPart>(&parts[i]);
        if (!text) {
            const auto& picture = std::get<project::PicturePart>(parts[i]);
            built_[i]->title->setText(roleTitle("picture") + "  " +
                                      QFileInfo(QString::fromStdString(picture.file)).fileName());
            continue;
        }
        built_[i]->copy->setCopy(text->copy);
        if (built_[i]->link) built_[i]->link->setValue(text->link);
        if (built_[i]->name) built_[i]->name->setValue(text->name);
    }
}

void WordsPanel::showEvent(QShowEvent* event) {
    Panel::showEvent(event);
    rest_.start(0);
}

void WordsPanel::showRoom() {
    if (!isVisible() || !card_) return;
    const auto rooms =
        checks::roomForCopy(session().shown.untried(), session().view.variant(), document().store());
    for (std::size_t i = 0; i < built_.size(); ++i) {
        if (built_[i]->room == nullptr) continue;
        const auto room = std::ranges::find_if(rooms, [&](const checks::RoomForCopy& one) {
            return one.place == project::PartRef{*card_, i};
        });
        built_[i]->room->setVisible(room != rooms.end());
        if (room == rooms.end()) continue;
        built_[i]->room->setText(roomTitle(*room));
        built_[i]->room->setToolTip(roomExplained(*room));
    }
}

void WordsPanel::rebuild() {
    for (Line* line : built_) {
        line->hide();
        line->deleteLater();
    }
    built_.clear();
    for (std::size_t i = 0; i < builtShape_.size(); ++i) {
        built_.push_back(buildLine(i));
        lines_->addWidget(built_.back());
    }
    if (focusAfterRebuild_ && *focusAfterRebuild_ < built_.size() && built_[*focusAfterRebuild_]->copy)
        built_[*focusAfterRebuild_]->copy->setFocus();
    focusAfterRebuild_.reset();
}

WordsPanel::Line* WordsPanel::buildLine(std::size_t part) {
    const std::string role = builtShape_[part];
    const QString title = roleTitle(role);
    auto* line = new Line(holder_);
    auto* box = new QVBoxLayout(line);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->setSpacing(0);
    auto* label = new QLabel(title, line);
    head->addWidget(label, 1);
    line->title = label;
    box->addLayout(head);
    // A text has the focus for its tools too: they are reached by keys, so that Tab goes to the next text.
    const bool isText = role != "picture";
    const auto tool = [&](Glyph sign, const QString& name, const QString& keys) {
        QToolButton* button = small(line, sign, isText ? name + " (" + keysTitle(keys) + ")" : name);
        // Every text has the same tools.
        button->setAccessibleName(
            name.contains(title, Qt::CaseInsensitive) ? name : name + ", " + roleInSentence(role));
        if (isText) button->setFocusPolicy(Qt::NoFocus);
        return button;
    };
    auto* up = tool(Glyph::Up, QObject::tr("Move %1 up", "role").arg(roleInSentence(role)), "Alt+Up");
    auto* down = tool(Glyph::Down, QObject::tr("Move %1 down", "role").arg(roleInSentence(role)), "Alt+Down");
    auto* remove =
        tool(Glyph::Remove, QObject::tr("Remove %1", "role").arg(roleInSentence(role)), "Ctrl+Shift+Delete");
    up->setEnabled(part > 0);
    down->setEnabled(part + 1 < builtShape_.size());
    connect(up, &QToolButton::clicked, this, [this, part] { movePart(part, -1); });
    connect(down, &QToolButton::clicked, this, [this, part] { movePart(part, 1); });
    connect(remove, &QToolButton::clicked, this, [this, part] { removePart(part); });
    if (isText) {
        auto* copy = line->copy = new CopyEdit(line);
        const QString textTitle = QObject::tr("%1 text", "role").arg(title);
        copy->setAccessibleName(textTitle);
        copy->setWhatsThis(whatsThisText(textTitle, propertyHelp(QObject::tr("Text of a card")), {}));
        label->setBuddy(copy);
        auto* strong = tool(Glyph::Strong, QObject::tr("Strong"), "Ctrl+B");
        auto* emphasis = tool(Glyph::Emphasis, QObject::tr("Emphasis"), "Ctrl+I");
        auto* link = tool(Glyph::Link, QObject::tr("Link"), "Ctrl+K");
        auto* lineBreak = tool(Glyph::LineBreak, QObject::tr("Line break"), "Enter");
        for (QToolButton* button : {strong, emphasis, link, lineBreak})
            head->addWidget(button);
        // The names of some roles need this room too.
        head->addItem(new QSpacerItem(8, 0, QSizePolicy::Maximum));
        connect(strong, &QToolButton::clicked, copy, &CopyEdit::toggleStrong);
        connect(emphasis, &QToolButton::clicked, copy, &CopyEdit::toggleEmphasis);
        connect(link, &QToolButton::clicked, copy, &CopyEdit::editLink);
        connect(lineBreak, &QToolButton::clicked, copy, &CopyEdit::breakLine);
        connect(copy, &CopyEdit::edited, this, [this, part, copy, role] {
            selectPart(part);
            editPart(part, QObject::tr("Change %1 text", "role").arg(roleInSentence(role)),
                     [copy](project::TextPart& text) { text.copy = copy->copyText(); });
        });
        connect(copy, &CopyEdit::editingFinished, this, [this] { document().endGesture(); });
        // The mark in the row follows the text that is edited.
        connect(copy, &CopyEdit::focused, this, [this, part] { selectPart(part); });
        if (!builtGiven_) {
            connect(copy, &CopyEdit::moveRequested, this, [this, part](int by) {
                const std::size_t to = part + static_cast<std::size_t>(by);
                if (to >= builtShape_.size()) return;
                focusAfterRebuild_ = to;
                movePart(part, by);
            });
            connect(copy, &CopyEdit::removeRequested, this, [this, part] { removePart(part); });
        }
        box->addWidget(copy);
        line->room = new QLabel(line);
        line->room->setWordWrap(true);
        line->room->setForegroundRole(QPalette::PlaceholderText);
        line->room->setAccessibleName(
            QObject::tr("Room for longer text, %1", "role").arg(roleInSentence(role)));
        line->room->hide();
        box->addWidget(line->room);
    }
    for (QToolButton* button : {up, down, remove}) {
        head->addWidget(button);
        button->setVisible(!builtGiven_);
    }
    if (role == "button") {
        line->link = new controls::TextEditor({}, line);
        line->link->setName(QObject::tr("Link address of the button"));
        const auto select = [this, part] { selectPart(part); };
        connect(line->link, &controls::TextEditor::focused, this, select);
        line->name = new controls::TextEditor({}, line);
        line->name->setName(QObject::tr("Accessible name of the button"));
        line->name->setPlaceholder(QObject::tr("same as its text"));
        connect(line->name, &controls::TextEditor::focused, this, select);
        box->addWidget(labelled(line, QObject::tr("Link address"), line->link));
        box->addWidget(labelled(line, QObject::tr("Accessible name"), line->name));
        const auto join = [&](controls::TextEditor* editor, const QString& name,
                              std::string project::TextPart::*member) {
            const auto put = [this, part, name, member, editor] {
                editPart(part, name,
                         [&](project::TextPart& text) { text.*member = editor->value().get<std::string>(); });
            };
            connect(editor, &controls::Editor::edited, this, put);
            connect(editor, &controls::Editor::reverted, this, put);
            connect(editor, &controls::Editor::finished, this, [this] { document().endGesture(); });
        };
        join(line->link, QObject::tr("Change button link address"), &project::TextPart::link);
        join(line->name, QObject::tr("Change button accessible name"), &project::TextPart::name);
    }
    return line;
}

void WordsPanel::selectPart(std::size_t part) {
    const Place place{card_.value_or(0), part};
    if (card_ && session().selection.place() != place) session().selection.select(place);
}

void WordsPanel::editPart(std::size_t part, const QString& name,
                          const std::function<void(project::TextPart&)>& change) {
    if (!card_) return;
    const std::size_t card = *card_;
    context().edit(
        name,
        [&](project::Project& project) {
            if (card >= project.row().cards.size() || part >= project.row().cards[card].parts.size()) return;
            if (auto* text = std::get_if<project::TextPart>(&project.row().cards[card].parts[part]))
                change(*text);
        },
        QString("words/%1/%2/%3").arg(card).arg(part).arg(name));
}

void WordsPanel::addPart(const std::string& role) {
    if (!card_) return;
    context().edit(QObject::tr("Add part"), [&](project::Project& project) {
        project.row().cards[*card_].parts.emplace_back(newTextPart(role));
    });
}

void WordsPanel::removePart(std::size_t part) {
    if (!card_) return;
    context().edit(QObject::tr("Remove part"), [card = *card_, part](project::Project& project) {
        auto& parts = project.row().cards[card].parts;
        parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(part));
    });
}

void WordsPanel::movePart(std::size_t part, int by) {
    if (!card_) return;
    context().edit(QObject::tr("Move part"), [card = *card_, part, by](project::Project& project) {
        auto& parts = project.row().cards[card].parts;
        std::swap(parts[part], parts[part + static_cast<std::size_t>(by)]);
    });
}

}  // namespace tenter::desktop::panels
