#include "window/setting_list.h"

#include <QApplication>
#include <QEvent>
#include <QScrollBar>
#include <algorithm>

namespace tenter::desktop::window {

namespace {

constexpr int wordsRole = Qt::UserRole;
constexpr int placeRole = Qt::UserRole + 1;
constexpr int mostRows = 12;

}  // namespace

SettingList::SettingList(QWidget* field) : QListView(field), field_(field) {
    hide();
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(QObject::tr("Settings found"));
    setEditTriggers(NoEditTriggers);
    setUniformItemSizes(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAutoFillBackground(true);
    found_.setSourceModel(&all_);
    found_.setFilterRole(wordsRole);
    found_.setFilterCaseSensitivity(Qt::CaseInsensitive);
    setModel(&found_);
    connect(this, &QListView::clicked, this,
            [this](const QModelIndex& index) { Q_EMIT chosen(index.data(placeRole).toInt()); });
    field_->installEventFilter(this);
}

void SettingList::add(const QString& title, const QString& words, int place) {
    auto* item = new QStandardItem(title);
    item->setData(words, wordsRole);
    item->setData(place, placeRole);
    all_.appendRow(item);
}

void SettingList::find(const QString& words) {
    if (!words.isEmpty()) found_.setFilterFixedString(words);
    const bool any = !words.isEmpty() && found_.rowCount() > 0;
    if (any) {
        setCurrentIndex(found_.index(0, 0));
        scrollToTop();
        if (parentWidget() != field_->window()) setParent(field_->window());
        place();
        raise();
    }
    setVisible(any);
    // A press on anything else closes the list; not everything that is pressed takes the focus.
    if (any) qApp->installEventFilter(this);
}

int SettingList::lit() const {
    return isVisible() && currentIndex().isValid() ? currentIndex().data(placeRole).toInt() : -1;
}

void SettingList::step(int by) {
    const int row = std::clamp(currentIndex().row() + by, 0, found_.rowCount() - 1);
    setCurrentIndex(found_.index(row, 0));
}

void SettingList::place() {
    ensurePolished();
    const QRect window = field_->window()->rect();
    const QPoint below = field_->mapTo(field_->window(), QPoint(0, field_->height()));
    const int rows = std::min(found_.rowCount(), mostRows);
    const int bar = found_.rowCount() > mostRows ? verticalScrollBar()->sizeHint().width() : 0;
    const int wide =
        std::clamp(sizeHintForColumn(0) + bar + 2 * frameWidth() + 8, field_->width(), window.width());
    const int high = std::min(rows * sizeHintForRow(0) + 2 * frameWidth(), window.height() - below.y());
    setGeometry(std::clamp(below.x(), 0, window.width() - wide), below.y(), wide, high);
}

void SettingList::hideEvent(QHideEvent* event) {
    qApp->removeEventFilter(this);
    QListView::hideEvent(event);
}

bool SettingList::eventFilter(QObject* watched, QEvent* event) {
    if (!isVisible()) return QListView::eventFilter(watched, event);
    if (auto* pressed = qobject_cast<QWidget*>(watched);
        event->type() == QEvent::MouseButtonPress && pressed != nullptr && pressed != this &&
        !isAncestorOf(pressed) && pressed != field_ && !field_->isAncestorOf(pressed))
        hide();
    if (watched == field_) {
        if (event->type() == QEvent::FocusOut || event->type() == QEvent::Hide) hide();
        if (event->type() == QEvent::Move || event->type() == QEvent::Resize) place();
    }
    return QListView::eventFilter(watched, event);
}

}  // namespace tenter::desktop::window
