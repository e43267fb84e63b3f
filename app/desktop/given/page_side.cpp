#include "given/page_side.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontDatabase>
#include <QHBoxLayout>
#include <QMimeData>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardPaths>

#include "given/row_reader.h"
#include "given/wording.h"

namespace tenter::desktop::given {

PageBox::PageBox(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setLineWrapMode(QPlainTextEdit::NoWrap);
    QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    fixed.setPointSizeF(font().pointSizeF());
    setFont(fixed);
    setPlaceholderText("Paste a page’s HTML here,\nor that of its row alone");
    setAccessibleName("HTML of the page, or of its row");
}

bool PageBox::canInsertFromMimeData(const QMimeData* source) const {
    return source->hasUrls() || source->hasHtml() || QPlainTextEdit::canInsertFromMimeData(source);
}

void PageBox::insertFromMimeData(const QMimeData* source) {
    for (const QUrl& url : source->urls()) {
        if (!url.isLocalFile()) continue;
        emit fileGiven(url.toLocalFile());
        return;
    }
    // What is copied from a page as it shows has its HTML beside its words.
    const QString text = source->hasHtml() && !source->text().contains('<') ? source->html() : source->text();
    if (text.size() > largePage)
        emit largeGiven(text.toUtf8());
    else
        insertPlainText(text);
}

PageSide::PageSide(QWidget* parent)
    : QWidget(parent),
      stack_(new QStackedWidget(this)),
      box_(new PageBox(stack_)),
      held_(new QWidget(stack_)),
      heldTitle_(new QLabel(held_)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel("&Page", this);
    QFont bold = title->font();
    bold.setWeight(QFont::DemiBold);
    title->setFont(bold);
    title->setBuddy(box_);
    auto* open = new QPushButton("&Open a saved page…", this);
    open->setAutoDefault(false);
    head->addWidget(title, 1);
    head->addWidget(open);
    box->addLayout(head);
    box->addWidget(stack_, 1);
    stack_->addWidget(box_);
    stack_->addWidget(held_);

    auto* heldBox = new QVBoxLayout(held_);
    heldBox->setContentsMargins(0, 8, 0, 0);
    heldBox->setSpacing(8);
    heldTitle_->setWordWrap(true);
    heldTitle_->setTextFormat(Qt::PlainText);
    heldTitle_->setAccessibleName("The page that is read");
    auto* instead = new QPushButton("Paste another &instead", held_);
    instead->setAutoDefault(false);
    heldBox->addWidget(heldTitle_);
    heldBox->addWidget(instead, 0, Qt::AlignLeft);
    heldBox->addStretch(1);

    connect(open, &QPushButton::clicked, this, &PageSide::openAsked);
    connect(instead, &QPushButton::clicked, this, &PageSide::backToBox);
    connect(box_, &PageBox::fileGiven, this, &PageSide::open);
    connect(box_, &PageBox::largeGiven, this,
            [this](const QByteArray& bytes) { hold(bytes, "What was pasted", {}); });
    connect(box_, &QPlainTextEdit::textChanged, this,
            [this] { emit given(box_->toPlainText().toUtf8(), {}, false); });
}

void PageSide::openAsked() {
    const QString start =
        folder_.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DownloadLocation) : folder_;
    const QString file = QFileDialog::getOpenFileName(this, "Open a saved page", start,
                                                      "Pages (*.html *.htm *.xhtml);;All files (*)");
    if (!file.isEmpty()) open(file);
}

void PageSide::open(const QString& file) {
    QFile page(file);
    const QString name = QFileInfo(file).fileName();
    if (!QFileInfo(file).isFile() || !page.open(QIODevice::ReadOnly)) {
        emit failed(name + " cannot be read; check that it is a file and that you may read it.");
        return;
    }
    folder_ = QFileInfo(file).path();
    // One byte more than the largest says that it is too large, and no more is needed.
    hold(page.read(static_cast<qint64>(markup::largestPage) + 1), name, file);
}

void PageSide::hold(const QByteArray& bytes, const QString& name, const QString& file) {
    const QSignalBlocker quiet(box_);
    box_->clear();
    heldTitle_->setText(name + ", " + sizeTitle(bytes.size()));
    stack_->setCurrentWidget(held_);
    emit given(bytes, file, true);
}

void PageSide::backToBox() {
    stack_->setCurrentWidget(box_);
    focusBox();
    emit given({}, {}, true);
}

void PageSide::focusBox() {
    if (stack_->currentWidget() == box_) box_->setFocus();
}

}  // namespace tenter::desktop::given
