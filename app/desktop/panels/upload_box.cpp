#include "panels/upload_box.h"

#include <QFileInfo>
#include <QVBoxLayout>
#include <algorithm>

#include "controls/inks.h"
#include "document/wording.h"
#include "panels/plain_header.h"

namespace tenter::desktop::panels {

namespace {

constexpr int mostRows = 24;  // of the table, without scrolling
constexpr int lineHeight = 40;
constexpr int cellMargin = 4;
constexpr int firstWait = 150;  // ms, with fonts to load
constexpr int laterWait = 20;   // ms

QString sizeText(const pictures::PixelSize& size) {
    return QString::fromStdString(pictures::sizeLabel(size));
}

/// `900 × 600`: the column has the unit.
QString bareSize(const pictures::PixelSize& size) {
    return size.width > 0 ? QString("%1 × %2").arg(size.width).arg(size.height) : QObject::tr("not known");
}

const project::PicturePart* pictureAt(const project::Project& project, const project::PartRef& at) {
    if (at.card >= project.row().cards.size() || at.part >= project.row().cards[at.card].parts.size())
        return nullptr;
    return std::get_if<project::PicturePart>(&project.row().cards[at.card].parts[at.part]);
}

}  // namespace

UploadJob::UploadJob(Session& session, QObject* parent) : QObject(parent), session_(session) {}

void UploadJob::refresh() {
    RowKey now = session_.layouts.key();
    // Uploads serve every variant.
    now.variant = 0;
    if (now == started_) return;
    started_ = now;
    auto project = std::make_shared<const project::Project>(session_.shown.untried());
    job_.start(
        [project, fonts = fonts_, folder = session_.document.folder(),
         profile = now.profile](const std::stop_token&) {
            return pictures::uploadsOf(*project, fonts->use(*project, folder), *profile);
        },
        [this, project](std::vector<pictures::PictureUpload> uploads) {
            project_ = project;
            uploads_ = std::move(uploads);
            Q_EMIT finished();
        });
    // What is there at once moves nothing in the panel later.
    if (session_.shown.hasFewParts()) job_.waitFor(uploads_.empty() ? firstWait : laterWait);
}

const pictures::PictureUpload* UploadJob::find(const std::optional<project::PartRef>& place) const {
    if (!place) return nullptr;
    const auto found = std::ranges::find(uploads_, *place, &pictures::PictureUpload::place);
    return found == uploads_.end() ? nullptr : &*found;
}

UploadLine::UploadLine(QWidget* parent)
    : QWidget(parent), size_(new QLabel(this)), why_(new QLabel(this)), verdict_(new QLabel(this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 4, 0, 4);
    box->setSpacing(4);
    QFont bold = size_->font();
    bold.setWeight(QFont::DemiBold);
    size_->setFont(bold);
    why_->setForegroundRole(QPalette::PlaceholderText);
    for (QLabel* label : {size_, why_, verdict_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        box->addWidget(label);
    }
    size_->setAccessibleName(QObject::tr("File to upload"));
    why_->setAccessibleName(QObject::tr("Reason"));
    verdict_->setAccessibleName(QObject::tr("Present file"));
    hide();
}

void UploadLine::showUpload(const project::Project& project, const pictures::PictureUpload* upload) {
    setVisible(upload != nullptr && upload->size.width > 0);
    if (upload == nullptr || upload->size.width <= 0) return;
    size_->setText(QObject::tr("Upload %1", "size of a file").arg(sizeText(upload->size)));
    QStringList why{
        QString::fromStdString(pictures::largestSlotSentence(project, *upload)),
        QObject::tr("High-density screens need %1 image pixels per CSS px.").arg(figure(upload->pixelRatio))};
    if (const std::string others = pictures::otherSlotsSentence(*upload); !others.empty())
        why << QString::fromStdString(others);
    why_->setText(why.join(' '));
    const bool known = upload->file.width > 0;
    verdict_->setVisible(known);
    if (!known) return;
    verdict_->setText(
        (upload->isTooSmall
             ? QObject::tr("This picture is too small: %1. It looks soft on high-density screens.")
             : QObject::tr("This picture is large enough: %1."))
            .arg(sizeText(upload->file)));
    QPalette ink = palette();
    if (upload->isTooSmall) ink.setColor(QPalette::WindowText, controls::caution(palette()));
    verdict_->setPalette(ink);
}

UploadTable::UploadTable(QWidget* parent) : QTreeWidget(parent) {
    setHeader(new PlainHeader(cellMargin, this));
    setColumnCount(2);
    setHeaderLabels({QObject::tr("Picture and its size"), QObject::tr("Upload, px")});
    setAccessibleName(QObject::tr("Files to upload"));
    setRootIsDecorated(false);
    setItemsExpandable(false);
    setUniformRowHeights(true);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTextElideMode(Qt::ElideMiddle);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    const auto choose = [this](QTreeWidgetItem* item) {
        const int row = indexOfTopLevelItem(item);
        if (row >= 0) Q_EMIT placeChosen(uploads_[static_cast<std::size_t>(row)].place);
    };
    connect(this, &QTreeWidget::itemClicked, this, choose);
    connect(this, &QTreeWidget::itemActivated, this, choose);
    // The arrow keys show each picture in the row.
    connect(this, &QTreeWidget::currentItemChanged, this, [this, choose](QTreeWidgetItem* item) {
        if (hasFocus() && !isFilling_) choose(item);
    });
}

void UploadTable::showUploads(const project::Project& project,
                              const std::vector<pictures::PictureUpload>& uploads,
                              const std::optional<project::PartRef>& current) {
    uploads_ = uploads;
    isFilling_ = true;
    const auto count = static_cast<int>(uploads.size());
    while (topLevelItemCount() > count)
        delete takeTopLevelItem(count);
    while (topLevelItemCount() < count)
        addTopLevelItem(new QTreeWidgetItem);
    for (int i = 0; i < count; ++i) {
        const pictures::PictureUpload& one = uploads_[static_cast<std::size_t>(i)];
        const project::PicturePart* picture = pictureAt(project, one.place);
        const QString name =
            picture == nullptr ? QString() : QFileInfo(QString::fromStdString(picture->file)).fileName();
        QTreeWidgetItem* item = topLevelItem(i);
        const QString now = one.isTooSmall
                                ? QObject::tr("%1, too small", "size of a picture").arg(bareSize(one.file))
                                : bareSize(one.file);
        item->setText(0, QString("%1. %2\n%3").arg(one.place.card + 1).arg(name, now));
        item->setText(1, one.size.width > 0 ? bareSize(one.size) : QObject::tr("no slot"));
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setData(
            0, Qt::AccessibleTextRole,
            QObject::tr("Card %1, %2, %3, upload %4").arg(one.place.card + 1).arg(name, now, item->text(1)));
        item->setToolTip(0, name);
        item->setSizeHint(0, {0, lineHeight});
        if (current && one.place == *current) setCurrentItem(item);
    }
    isFilling_ = false;
    setVisible(count > 0);
    setFixedHeight(header()->sizeHint().height() + std::min(count, mostRows) * lineHeight + 2 * frameWidth());
}

}  // namespace tenter::desktop::panels
