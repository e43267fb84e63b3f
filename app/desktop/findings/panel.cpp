#include "findings/panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "controls/expander.h"
#include "controls/glyphs.h"
#include "controls/separator.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "findings/caution.h"
#include "findings/silencing.h"
#include "findings/wording.h"
#include "session/changes.h"

namespace tenter::desktop::findings {

namespace {

constexpr int scrollStep = 20;  // px, a third of a turn of the wheel
constexpr int drawerHeadHeight = 40;
constexpr int leastBody = 160;
constexpr int usualBody = 340;

// In the order of the filter's segments 1 to 3; segment 0 shows all findings.
constexpr checks::Severity severities[] = {checks::Severity::Error, checks::Severity::Warning,
                                           checks::Severity::Note};

QString counted(const Model& model, checks::Severity severity) {
    const int count = model.count(severity);
    switch (severity) {
        case checks::Severity::Error:
            return QObject::tr("%n error(s)", nullptr, count);
        case checks::Severity::Warning:
            return QObject::tr("%n warning(s)", nullptr, count);
        case checks::Severity::Note:
            break;
    }
    return QObject::tr("%n note(s)", nullptr, count);
}

/// `No warnings at any width from 320 to 1920 px.`
QString noneTitle(checks::Severity severity, const QString& range) {
    switch (severity) {
        case checks::Severity::Error:
            return QObject::tr("No errors at any width %1.").arg(range);
        case checks::Severity::Warning:
            return QObject::tr("No warnings at any width %1.").arg(range);
        case checks::Severity::Note:
            break;
    }
    return QObject::tr("No notes at any width %1.").arg(range);
}

}  // namespace

Panel::Panel(Session& session, QWidget* parent)
    : QWidget(parent),
      checks_(session.checks),
      document_(session.document),
      model_(new Model(session.checks, this)),
      head_(new QToolButton(this)),
      bar_(new QWidget(this)),
      counts_(new QLabel(this)),
      body_(new QWidget(this)),
      filter_(new controls::Segments(body_)),
      list_(new List(body_)),
      delegate_(new Delegate(*model_, list_)),
      remedies_(new RowRemedies(session, *model_, *list_, *delegate_, this)),
      empty_(new QLabel(body_)),
      stack_(new QStackedWidget(body_)),
      menu_(new QMenu(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(controls::separator(this));
    bar_->setFixedHeight(controls::scaled(drawerHeadHeight));
    bar_->installEventFilter(this);
    auto* head = new QHBoxLayout(bar_);
    head->setContentsMargins(8, 0, 24, 0);
    controls::markAsExpander(*head_);
    head_->setText(QObject::tr("Findings"));
    head_->setAutoRaise(true);
    head_->setIconSize({12, 12});
    head_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    head_->setFocusPolicy(Qt::StrongFocus);
    head_->setToolTip(QObject::tr("Show or hide the findings (Alt+7)"));
    QFont strong = head_->font();
    strong.setWeight(QFont::DemiBold);
    head_->setFont(strong);
    counts_->setForegroundRole(QPalette::PlaceholderText);
    head->addWidget(head_);
    head->addStretch(1);
    head->addWidget(counts_);
    box->addWidget(bar_);
    buildBody();
    box->addWidget(body_, 1);
    connect(head_, &QToolButton::clicked, this, [this] { setOpen(!isOpen()); });
    onChange(checks_, CheckRunner::Change::Findings, this, &Panel::onFindings);
    onChange(checks_, CheckRunner::Change::Chosen, this, [this] {
        openForChosen();
        onChosen();
    });
    onFindings();
    setOpen(false);
}

// The whole head opens and closes the drawer.
bool Panel::eventFilter(QObject* watched, QEvent* event) {
    if (watched != bar_ || event->type() != QEvent::MouseButtonRelease) return false;
    head_->click();
    return true;
}

void Panel::buildBody() {
    auto* box = new QVBoxLayout(body_);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    filter_->setFilling(true);
    filter_->setAccessibleName(QObject::tr("Filter findings by severity"));
    auto* filter = new QVBoxLayout;
    filter->setContentsMargins(24, 0, 24, 8);
    filter->addWidget(filter_);
    box->addLayout(filter);
    box->addWidget(controls::separator(body_));

    list_->setModel(model_);
    list_->setItemDelegate(delegate_);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setAccessibleName(QObject::tr("Findings"));
    setFocusProxy(list_);
    list_->setResizeMode(QListView::Adjust);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    // Otherwise one turn of the wheel goes on by the height of the open finding, past its remedies.
    list_->verticalScrollBar()->setSingleStep(scrollStep);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Always visible, so that lines do not break again when the scroll bar appears or disappears.
    list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->viewport()->setBackgroundRole(QPalette::Window);
    empty_->setForegroundRole(QPalette::PlaceholderText);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setWordWrap(true);
    empty_->setMargin(24);
    stack_->addWidget(list_);
    stack_->addWidget(empty_);
    box->addWidget(stack_, 1);
    box->addWidget(controls::separator(body_));
    box->addWidget(new Caution(body_));

    connect(filter_, &controls::Segments::chosen, this, [this](int index) {
        model_->setSeverity(index == 0 ? std::nullopt : std::optional(severities[index - 1]));
        onFindings();
    });
    const auto choose = [this](const QModelIndex& index) {
        if (index.isValid()) checks_.choose(model_->indexOf(index.row()));
    };
    connect(list_, &QListView::clicked, this, choose);
    connect(list_, &QListView::activated, this, choose);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { showDetails(current.row()); });
    for (QWidget* widget : {static_cast<QWidget*>(list_), static_cast<QWidget*>(empty_)}) {
        widget->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(widget, &QWidget::customContextMenuRequested, this, [this, widget](const QPoint& at) {
            fillSilenceMenu(*menu_, document_, widget == list_ ? currentCheck() : "");
            if (!menu_->isEmpty()) menu_->popup(widget->mapToGlobal(at));
        });
    }
}

void Panel::setOpen(bool open) {
    const bool was = isOpen();
    head_->setIcon(controls::expanderIcon(*head_, open));
    head_->setChecked(open);
    body_->setVisible(open);
    // A closed drawer takes the height of its head only.
    setMaximumHeight(open ? QWIDGETSIZE_MAX : controls::scaled(drawerHeadHeight) + 1);
    updateGeometry();
    if (open != was) Q_EMIT opened(open);
}

QSize Panel::sizeHint() const {
    return {controls::scaled(328), controls::scaled(drawerHeadHeight) + 1 + (isOpen() ? usualBody : 0)};
}

QSize Panel::minimumSizeHint() const {
    return {controls::scaled(304), controls::scaled(drawerHeadHeight) + 1 + (isOpen() ? leastBody : 0)};
}

std::string Panel::currentCheck() const {
    const QModelIndex current = list_->currentIndex();
    if (!current.isValid()) return {};
    return checks_.findings()[model_->indexOf(current.row())].check;
}

void Panel::showDetails(int row) {
    const int before = delegate_->open();
    if (row >= 0) lastRow_ = row;
    if (row == before) return;
    delegate_->setOpen(row);
    remedies_->follow();
    for (const int changed : {before, row})
        if (changed >= 0 && changed < model_->rowCount())
            Q_EMIT delegate_->sizeHintChanged(model_->index(changed));
    // Scroll after the row has its new height. A row taller than the list is shown from its top.
    if (row >= 0)
        QTimer::singleShot(0, list_, [this] {
            const QModelIndex at = list_->currentIndex();
            const bool tall = list_->visualRect(at).height() > list_->viewport()->height();
            list_->scrollTo(at, tall ? QAbstractItemView::PositionAtTop : QAbstractItemView::EnsureVisible);
        });
}

// The counts of all severities that have findings.
void Panel::showHead() {
    QStringList counts;
    for (const checks::Severity severity : severities)
        if (model_->count(severity) > 0) counts << counted(*model_, severity);
    const bool checking = counts.isEmpty() && !checks_.isFresh();
    counts_->setText(checking           ? QObject::tr("Checking…")
                     : counts.isEmpty() ? QObject::tr("None")
                                        : counts.join(", "));
    head_->setAccessibleName(QObject::tr("Findings: %1").arg(counts_->text()));
}

void Panel::showFilter() {
    QStringList texts{QObject::tr("All")};
    for (const checks::Severity severity : severities)
        texts << counted(*model_, severity);
    filter_->setTexts(texts, {QObject::tr("All findings"), texts[1], texts[2], texts[3]});
    int current = 0;
    for (int i = 0; i < 3; ++i) {
        const bool is = model_->severity() == severities[i];
        if (is) current = i + 1;
        // The current filter stays enabled even if it lists nothing, so that it can be changed.
        filter_->button(i + 1)->setEnabled(is || model_->count(severities[i]) > 0);
    }
    filter_->setCurrent(current);
}

void Panel::onFindings() {
    showHead();
    showFilter();
    const bool none = model_->rowCount() == 0;
    const QString range = widthsInSentence(checks_.project().leastWidth, checks_.project().mostWidth);
    if (none && !checks_.isFresh())
        empty_->setText(QObject::tr("Checking every width %1…").arg(range));
    else if (none && model_->severity())
        empty_->setText(noneTitle(*model_->severity(), range));
    else if (none)
        empty_->setText(QObject::tr("No findings at any width %1.").arg(range) + silencedTitle());
    stack_->setCurrentWidget(none ? static_cast<QWidget*>(empty_) : list_);
    onChosen();
    // When the current finding has gone, the keyboard goes on from its neighbour.
    if (!none && list_->hasFocus() && !list_->currentIndex().isValid())
        list_->setCurrentIndex(model_->index(std::min(lastRow_, model_->rowCount() - 1)));
}

QString Panel::silencedTitle() const {
    const std::size_t count = checks_.project().checking.silenced.size();
    if (count == 0) return {};
    return ' ' + (count == 1 ? QObject::tr("One check is silenced.")
                             : QObject::tr("%n check(s) are silenced.", nullptr, static_cast<int>(count)));
}

// The chosen finding becomes the current row of the list, also if it was chosen on the axis.
void Panel::onChosen() {
    const auto chosen = checks_.chosen();
    const int row = chosen ? model_->rowOf(*chosen) : -1;
    if (row >= 0 && row != list_->currentIndex().row()) list_->setCurrentIndex(model_->index(row));
    if (!list_->currentIndex().isValid()) showDetails(-1);
    remedies_->follow();
    list_->viewport()->update();
}

// An edit can report the same choice again: a drawer that was closed since then stays closed.
void Panel::openForChosen() {
    const auto chosen = checks_.chosen();
    if (!chosen) return;
    const checks::Finding& finding = checks_.findings()[*chosen];
    const std::pair now{finding.check, finding.place};
    if (now == openedFor_) return;
    openedFor_ = now;
    setOpen(true);
}

bool Panel::go(int direction) {
    const auto chosen = checks_.chosen();
    const int now = chosen ? model_->rowOf(*chosen) : -1;
    const int next = now >= 0 ? now + direction : direction > 0 ? 0 : model_->rowCount() - 1;
    if (next < 0 || next >= model_->rowCount()) return false;
    checks_.choose(model_->indexOf(next));
    setOpen(true);
    return true;
}

}  // namespace tenter::desktop::findings
