#include "findings/panel.h"

#include <QFrame>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "document/wording.h"
#include "findings/silencing.h"
#include "findings/wording.h"
#include "session/changes.h"

namespace tenter::desktop::findings {

namespace {

constexpr int scrollStep = 20;  // px, a third of a turn of the wheel

// In the order of the filter's segments 1 to 3; segment 0 shows all findings.
constexpr checks::Severity severities[] = {checks::Severity::Error, checks::Severity::Warning,
                                           checks::Severity::Note};

QFrame* hairline(QWidget* parent) {
    auto* line = new QFrame(parent);
    line->setFixedHeight(1);
    line->setAutoFillBackground(true);
    line->setBackgroundRole(QPalette::Midlight);
    return line;
}

}  // namespace

Panel::Panel(Session& session, QWidget* parent)
    : QWidget(parent),
      checks_(session.checks),
      document_(session.document),
      model_(new Model(session.checks, this)),
      filter_(new controls::Segments(this)),
      list_(new QListView(this)),
      delegate_(new Delegate(*model_, list_)),
      remedies_(new RowRemedies(session, *model_, *list_, *delegate_, this)),
      empty_(new QLabel(this)),
      stack_(new QStackedWidget(this)),
      menu_(new QMenu(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    filter_->setFilling(true);
    filter_->setAccessibleName("Filter findings by severity");
    auto* head = new QVBoxLayout;
    head->setContentsMargins(24, 8, 24, 8);
    head->addWidget(filter_);
    box->addLayout(head);
    box->addWidget(hairline(this));

    list_->setModel(model_);
    list_->setItemDelegate(delegate_);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setAccessibleName("Findings");
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

    box->addWidget(hairline(this));
    auto* caution = new QLabel(QString::fromUtf8(checks::caution.data(), checks::caution.size()), this);
    caution->setWordWrap(true);
    caution->setForegroundRole(QPalette::PlaceholderText);
    caution->setContentsMargins(24, 8, 16, 8);
    QFont small = caution->font();
    small.setPixelSize(11);
    caution->setFont(small);
    box->addWidget(caution);

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
            [this](const QModelIndex& current) { setOpen(current.row()); });
    for (QWidget* widget : {static_cast<QWidget*>(list_), static_cast<QWidget*>(empty_)}) {
        widget->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(widget, &QWidget::customContextMenuRequested, this, [this, widget](const QPoint& at) {
            fillSilenceMenu(*menu_, document_, widget == list_ ? currentCheck() : "");
            if (!menu_->isEmpty()) menu_->popup(widget->mapToGlobal(at));
        });
    }
    onChange(checks_, CheckRunner::Change::Findings, this, &Panel::onFindings);
    onChange(checks_, CheckRunner::Change::Chosen, this, &Panel::onChosen);
    onFindings();
}

std::string Panel::currentCheck() const {
    const QModelIndex current = list_->currentIndex();
    if (!current.isValid()) return {};
    return checks_.findings()[model_->indexOf(current.row())].check;
}

void Panel::setOpen(int row) {
    const int before = delegate_->open();
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

void Panel::showFilter() {
    const auto titled = [](int count, const QString& one) {
        return QStringLiteral("%1 %2").arg(count).arg(count == 1 ? one : one + 's');
    };
    QStringList texts{"All"};
    for (const checks::Severity severity : severities)
        texts << titled(model_->count(severity), severityTitle(severity).toLower());
    filter_->setTexts(texts, {"All findings", texts[1], texts[2], texts[3]});
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
    showFilter();
    const bool none = model_->rowCount() == 0;
    const QString range = widthsInSentence(checks_.project().leastWidth, checks_.project().mostWidth);
    if (none && !checks_.isFresh())
        empty_->setText("Checking every width " + range + "…");
    else if (none && model_->severity())
        empty_->setText("No " + severityTitle(*model_->severity()).toLower() + "s at any width " + range +
                        ".");
    else if (none)
        empty_->setText("No findings at any width " + range + "." + silencedTitle());
    stack_->setCurrentWidget(none ? static_cast<QWidget*>(empty_) : list_);
    onChosen();
}

QString Panel::silencedTitle() const {
    const std::size_t count = checks_.project().checking.silenced.size();
    if (count == 0) return {};
    return count == 1 ? " One check is silenced." : QString(" %1 checks are silenced.").arg(count);
}

// The chosen finding becomes the current row of the list, also if it was chosen on the axis.
void Panel::onChosen() {
    const auto chosen = checks_.chosen();
    const int row = chosen ? model_->rowOf(*chosen) : -1;
    if (row >= 0 && row != list_->currentIndex().row()) list_->setCurrentIndex(model_->index(row));
    if (!list_->currentIndex().isValid()) setOpen(-1);
    remedies_->follow();
    list_->viewport()->update();
}

bool Panel::go(int direction) {
    const auto chosen = checks_.chosen();
    const int now = chosen ? model_->rowOf(*chosen) : -1;
    const int next = now >= 0 ? now + direction : direction > 0 ? 0 : model_->rowCount() - 1;
    if (next < 0 || next >= model_->rowCount()) return false;
    checks_.choose(model_->indexOf(next));
    return true;
}

}  // namespace tenter::desktop::findings
