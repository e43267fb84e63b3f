#include "page_import/page_input.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontDatabase>
#include <QHBoxLayout>
#include <QMimeData>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardPaths>

#include "page_import/row_reader.h"
#include "page_import/wording.h"

namespace tenter::desktop::page_import {

PageBox::PageBox(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setWordWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    fixed.setPointSizeF(font().pointSizeF());
    setFont(fixed);
    setPlaceholderText(
        QObject::tr("Paste the HTML of a page here,\nor only of its row of cards,\nor a stylesheet"));
    setAccessibleName(QObject::tr("HTML of the page, or only of its row"));
}

bool PageBox::canInsertFromMimeData(const QMimeData* source) const {
    return source->hasUrls() || source->hasHtml() || QPlainTextEdit::canInsertFromMimeData(source);
}

void PageBox::insertFromMimeData(const QMimeData* source) {
    for (const QUrl& url : source->urls()) {
        if (!url.isLocalFile()) continue;
        Q_EMIT fileInserted(url.toLocalFile());
        return;
    }
    // Content copied from a browser window has its HTML beside the plain text.
    const QString text = source->hasHtml() && !source->text().contains('<') ? source->html() : source->text();
    if (text.size() > largePage)
        Q_EMIT largeTextInserted(text.toUtf8());
    else
        insertPlainText(text);
    // A page is read from its start.
    moveCursor(QTextCursor::Start);
}

PageInput::PageInput(QWidget* parent)
    : QWidget(parent),
      stack_(new QStackedWidget(this)),
      box_(new PageBox(stack_)),
      summary_(new QWidget(stack_)),
      summaryTitle_(new QLabel(summary_)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel(QObject::tr("&Page"), this);
    QFont bold = title->font();
    bold.setWeight(QFont::DemiBold);
    title->setFont(bold);
    title->setBuddy(box_);
    auto* open = new QPushButton(QObject::tr("&Open saved page…"), this);
    open->setAutoDefault(false);
    head->addWidget(title, 1);
    head->addWidget(open);
    box->addLayout(head);
    box->addWidget(stack_, 1);
    stack_->addWidget(box_);
    stack_->addWidget(summary_);

    auto* summaryBox = new QVBoxLayout(summary_);
    summaryBox->setContentsMargins(0, 8, 0, 0);
    summaryBox->setSpacing(8);
    summaryTitle_->setWordWrap(true);
    summaryTitle_->setTextFormat(Qt::PlainText);
    summaryTitle_->setAccessibleName(QObject::tr("Page that was read"));
    auto* instead = new QPushButton(QObject::tr("&Paste HTML instead"), summary_);
    instead->setAutoDefault(false);
    summaryBox->addWidget(summaryTitle_);
    summaryBox->addWidget(instead, 0, Qt::AlignLeft);
    summaryBox->addStretch(1);

    connect(open, &QPushButton::clicked, this, &PageInput::chooseFile);
    connect(instead, &QPushButton::clicked, this, &PageInput::showBox);
    connect(box_, &PageBox::fileInserted, this, &PageInput::open);
    connect(box_, &PageBox::largeTextInserted, this,
            [this](const QByteArray& bytes) { setPage(bytes, QObject::tr("Pasted text"), {}); });
    connect(box_, &QPlainTextEdit::textChanged, this,
            [this] { Q_EMIT pageChanged(box_->toPlainText().toUtf8(), {}, false); });
}

void PageInput::chooseFile() {
    const QString start =
        folder_.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DownloadLocation) : folder_;
    const QString file = QFileDialog::getOpenFileName(
        this, QObject::tr("Open saved page"), start,
        QObject::tr("Pages and stylesheets (*.html *.htm *.xhtml *.css);;All files (*)"));
    if (!file.isEmpty()) open(file);
}

void PageInput::open(const QString& file) {
    QFile page(file);
    const QString name = QFileInfo(file).fileName();
    if (!QFileInfo(file).isFile() || !page.open(QIODevice::ReadOnly)) {
        Q_EMIT failed(
            QObject::tr("%1: this file cannot be read. Check that it exists and that you may read it.")
                .arg(name));
        return;
    }
    folder_ = QFileInfo(file).path();
    // One byte more than the limit is enough to detect that the page is too large.
    setPage(page.read(static_cast<qint64>(markup::largestPage) + 1), name, file);
}

void PageInput::setPage(const QByteArray& bytes, const QString& name, const QString& file) {
    const QSignalBlocker quiet(box_);
    box_->clear();
    summaryTitle_->setText(name + ", " + sizeTitle(bytes.size()));
    turnTo(summary_);
    Q_EMIT pageChanged(bytes, file, true);
}

void PageInput::showBox() {
    turnTo(box_);
    focusBox();
    Q_EMIT pageChanged({}, {}, true);
}

/// Shows the box for HTML, which fills the room, or the summary, which leaves it to the report.
void PageInput::turnTo(QWidget* shown) {
    const bool isBox = shown == box_;
    box_->setSizePolicy(isBox ? QSizePolicy::Expanding : QSizePolicy::Ignored,
                        isBox ? QSizePolicy::Expanding : QSizePolicy::Ignored);
    for (QWidget* around : {static_cast<QWidget*>(stack_), static_cast<QWidget*>(this)})
        around->setSizePolicy(QSizePolicy::Preferred, isBox ? QSizePolicy::Expanding : QSizePolicy::Maximum);
    stack_->setCurrentWidget(shown);
}

void PageInput::focusBox() {
    if (stack_->currentWidget() == box_) box_->setFocus();
}

}  // namespace tenter::desktop::page_import
