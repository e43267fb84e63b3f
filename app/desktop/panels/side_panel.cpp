#include "panels/side_panel.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QScrollBar>
#include <algorithm>

#include "controls/glossary.h"
#include "controls/reading_order.h"
#include "controls/segments.h"
#include "controls/separator.h"
#include "document/wording.h"
#include "panels/colour_panel.h"
#include "panels/into_view.h"
#include "panels/pictures_panel.h"
#include "panels/row_panel.h"
#include "panels/setting_help.h"
#include "panels/solve_box.h"
#include "panels/spacing_panel.h"
#include "panels/tabs.h"
#include "panels/text_panel.h"
#include "panels/words_panel.h"
#include "session/changes.h"

namespace tenter::desktop::panels {

namespace {

constexpr int leastFoot = 40;

QLabel* quietLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    return label;
}

}  // namespace

SidePanel::SidePanel(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      target_(session.document, session.selection),
      context_{session, target_, [this](const QString& text) { showMessage(text); },
               [this](QWidget* widget) { pinned_->addWidget(widget); }},
      tabs_(new Tabs(this)),
      header_(new QWidget(this)),
      subject_(new controls::CalmCombo(header_)),
      scope_(new controls::Segments(header_)),
      scopeNote_(quietLabel(header_)),
      stack_(new QStackedWidget(this)),
      pinned_(new QVBoxLayout),
      foot_(quietLabel(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(tabs_);
    box->addWidget(header_);
    box->addWidget(stack_, 1);
    box->addLayout(pinned_);
    box->addWidget(foot_);
    foot_->setContentsMargins(24, 8, 24, 8);
    foot_->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    foot_->hide();

    auto* head = new QVBoxLayout(header_);
    head->setContentsMargins(24, 12, 24, 8);
    head->setSpacing(8);
    subject_->setAccessibleName(QObject::tr("Part or role to edit"));
    scope_->setFilling(true);
    scope_->setAccessibleName(QObject::tr("Edit scope"));
    head->addWidget(subject_);
    head->addWidget(scope_);
    head->addWidget(scopeNote_);
    box->insertWidget(2, controls::separator(this));

    auto* row = new RowPanel(context_);
    connect(row, &RowPanel::copied, this, &SidePanel::copied);
    addPanel(PanelKind::Row, QObject::tr("Row"), row);
    addPanel(PanelKind::Text, QObject::tr("Text"), new TextPanel(context_));
    addPanel(PanelKind::Spacing, QObject::tr("Spacing"), new SpacingPanel(context_));
    addPanel(PanelKind::Colour, QObject::tr("Colour"), new ColourPanel(context_));
    auto* words = new WordsPanel(context_);
    connect(words, &WordsPanel::importRowRequested, this, &SidePanel::importRowRequested);
    connect(words, &WordsPanel::ownMarkupRequested, this, &SidePanel::ownMarkupRequested);
    addPanel(PanelKind::Words, QObject::tr("Words"), words);
    addPanel(PanelKind::Pictures, QObject::tr("Pictures"), new PicturesPanel(context_));

    soon_.setSingleShot(true);
    soon_.setInterval(0);
    connect(&soon_, &QTimer::timeout, this, &SidePanel::refreshNow);
    connect(tabs_, &QTabBar::currentChanged, this, [this] {
        stack_->setCurrentWidget(currentPage().page);
        showMessage({});
        refreshNow();
    });
    connect(subject_, &QComboBox::activated, this,
            [this](int index) { target_.set(subjects_[static_cast<std::size_t>(index)]); });
    connect(scope_, &controls::Segments::chosen, this,
            [this](int index) { session_.scope.setLayer(static_cast<project::CascadeLayer>(index)); });
    connect(&session_.document, &Document::changed, this, [this] { showMessage({}); });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget* left, QWidget*) {
        if (left != nullptr && left == messageFor_) showMessage({});
    });
    connect(&target_, &Target::changed, this, &SidePanel::refreshSoon);
    onChange(session_.layouts, LayoutCache::Change::Row, this, &SidePanel::refreshSoon);
    onChange(session_.selection, SelectionModel::Change::Place | SelectionModel::Change::Role, this,
             &SidePanel::refreshSoon);
    connect(&session_.scope, &EditScope::changed, this, &SidePanel::refreshSoon);
    onChange(session_.view, ViewState::Change::Width, this, &SidePanel::onWidth);
    openPanel(PanelKind::Text);
}

void SidePanel::showMessage(const QString& text) {
    foot_->setText(text);
    fitFoot();
    messageFor_ = text.isEmpty() ? nullptr : QApplication::focusWidget();
    if (text.isEmpty() || messageFor_ == nullptr || !stack_->isAncestorOf(messageFor_)) return;
    // The message takes room from the panel: its field stays in view.
    layout()->activate();
    currentPage().area->ensureWidgetVisible(messageFor_, 0, 8);
}

void SidePanel::fitFoot() {
    foot_->setVisible(!foot_->text().isEmpty());
    if (!foot_->text().isEmpty()) foot_->setFixedHeight(std::max(leastFoot, foot_->heightForWidth(width())));
}

void SidePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitFoot();
}

bool SidePanel::focusNextPrevChild(bool next) {
    return controls::moveFocusAsRead(*this, next);
}

void SidePanel::addPanel(PanelKind kind, const QString& title, Panel* panel) {
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // It always takes its width, so that nothing moves when it appears.
    scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(panel);
    auto* page = new QWidget;
    auto* box = new QVBoxLayout(page);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    if (QWidget* head = panel->head()) {
        auto* pinned = new QHBoxLayout;
        pinned->setContentsMargins(12, 8, 24, 4);
        pinned->addWidget(head);
        box->addLayout(pinned);
    }
    box->addWidget(scroll, 1);
    stack_->addWidget(page);
    pages_.push_back({kind, panel, page, scroll});
    tabs_->addTab(title);
}

const SidePanel::Page& SidePanel::currentPage() const {
    return pages_[static_cast<std::size_t>(tabs_->currentIndex())];
}

void SidePanel::openPanel(PanelKind kind) {
    const auto page = std::ranges::find(pages_, kind, &Page::kind);
    tabs_->setCurrentIndex(static_cast<int>(page - pages_.begin()));
}

void SidePanel::goToPanel(PanelKind kind) {
    openPanel(kind);
    currentPage().area->verticalScrollBar()->setValue(0);
    tabs_->setFocus(Qt::ShortcutFocusReason);
}

void SidePanel::goToVariantName() {
    const auto all = places();
    const auto name = std::ranges::find(all, QObject::tr("Variant name"), &Place::also);
    if (name != all.end()) go(*name);
}

void SidePanel::solveSizes() {
    Q_EMIT roomNeeded();
    openPanel(PanelKind::Text);
    findChild<SolveBox*>()->button()->click();
}

void SidePanel::fillSubjects() {
    std::vector<std::string> subjects;
    if (current()->takesRoles()) subjects = project::roles(session_.shown.project());
    for (const std::string& subject : current()->subjects())
        subjects.push_back(subject);
    subject_->setVisible(!subjects.empty());
    if (subjects.empty()) return;
    if (subjects != subjects_ || subject_->count() != static_cast<int>(subjects.size())) {
        subjects_ = subjects;
        subject_->clear();
        for (const std::string& subject : subjects_)
            subject_->addItem(roleTitle(subject));
    }
    const auto at = std::find(subjects_.begin(), subjects_.end(), target_.subject());
    // The Text panel does not edit cards or pictures: it stays at the last role.
    if (at == subjects_.end()) {
        const auto role = std::find(subjects_.begin(), subjects_.end(), session_.selection.role());
        const bool found = role != subjects_.end();
        target_.set(found ? *role : subjects_.front());
        subject_->setCurrentIndex(found ? static_cast<int>(role - subjects_.begin()) : 0);
        return;
    }
    subject_->setCurrentIndex(static_cast<int>(at - subjects_.begin()));
}

void SidePanel::fillScopes() {
    scope_->setVisible(current()->takesScope());
    scopeNote_->setVisible(current()->takesScope());
    if (!current()->takesScope()) return;
    using project::CascadeLayer;
    const auto note = [this](CascadeLayer scope) {
        return QObject::tr("Edits apply to %1.").arg(scopeTitle(session_.layouts, scope));
    };
    scope_->setTexts({QObject::tr("All variants"), QObject::tr("This variant"), QObject::tr("This band")},
                     {note(CascadeLayer::Style), note(CascadeLayer::Variant), note(CascadeLayer::Band)});
    scope_->button(1)->setToolTip(note(CascadeLayer::Variant) + '\n' + QObject::tr(glossary::variant));
    scope_->button(2)->setToolTip(note(CascadeLayer::Band) + '\n' + QObject::tr(glossary::band));
    scope_->setCurrent(static_cast<int>(session_.scope.layer()));
    scopeNote_->setText(note(session_.scope.layer()));
}

void SidePanel::showHeader() {
    fillSubjects();
    fillScopes();
    header_->setVisible(current()->takesScope() || current()->takesRoles());
}

void SidePanel::refreshSoon() {
    if (!soon_.isActive()) soon_.start();
}

void SidePanel::refreshNow() {
    soon_.stop();
    band_ = session_.layouts.band();
    showHeader();
    current()->refresh();
    fitContent();
}

// What is hidden now may be wider, so the panel grows, but never shrinks.
void SidePanel::fitContent() {
    const Page& page = currentPage();
    const int content =
        page.panel->minimumSizeHint().width() + page.area->verticalScrollBar()->sizeHint().width();
    const int width =
        std::max({widest_, content, tabs_->minimumSizeHint().width(), header_->minimumSizeHint().width()});
    if (width == widest_) return;
    widest_ = width;
    updateGeometry();
}

void SidePanel::onWidth() {
    if (session_.layouts.band() != band_)
        refreshSoon();
    else
        current()->refreshPixels();
}

std::vector<SidePanel::Place> SidePanel::places() const {
    std::vector<Place> places;
    for (const Page& page : pages_) {
        const QString tab = tabs_->tabText(static_cast<int>(&page - pages_.data()));
        const auto& findables = page.panel->findables();
        for (std::size_t i = 0; i < findables.size(); ++i) {
            const QString& section = findables[i].section;
            // Roles, cards and pictures have sections of the same title.
            const QString subject = roleTitle(findables[i].subject);
            const bool isNamed =
                section.contains(subject, Qt::CaseInsensitive) || findables[i].subject == "button";
            QString where = tab;
            if (!isNamed) where += " › " + subject;
            if (!section.isEmpty()) where += " › " + section;
            places.push_back({findables[i].words + "  ·  " + where, findables[i].also, page.kind, i});
        }
    }
    return places;
}

const Findable& SidePanel::findableOf(const Place& place) const {
    return std::ranges::find(pages_, place.panel, &Page::kind)->panel->findables()[place.findable];
}

std::vector<SidePanel::Topic> SidePanel::topics() const {
    std::vector<Topic> topics;
    for (const Place& place : places())
        topics.push_back({place.words, helpOf(findableOf(place).field)});
    return topics;
}

QString SidePanel::topicOf(const QWidget* widget) const {
    for (const Place& place : places()) {
        const QWidget* field = findableOf(place).field;
        if (field == widget || field->isAncestorOf(widget) || field->focusProxy() == widget)
            return place.words;
    }
    return {};
}

void SidePanel::go(const Place& place) {
    Q_EMIT roomNeeded();
    openPanel(place.panel);
    const Findable& findable = current()->findables()[place.findable];
    if (!findable.subject.empty() && current()->takesRoles())
        target_.set(findable.subject);
    else if (findable.subject.empty() && current()->takesRoles() && !target_.isText() &&
             place.panel == PanelKind::Colour)
        target_.set(session_.selection.role());
    refreshNow();
    QWidget* field = findable.field;
    controls::unfold(field);
    if (!field->isVisible() && findable.instead != nullptr) {
        field = findable.instead;
        controls::unfold(field);
    }
    if (!field->isVisible()) {
        context_.showMessage(QObject::tr("%1: nothing in this row has this setting.").arg(findable.words));
        return;
    }
    bringIntoView(field->parentWidget(), field);
    field->setFocus(Qt::ShortcutFocusReason);
}

}  // namespace tenter::desktop::panels
