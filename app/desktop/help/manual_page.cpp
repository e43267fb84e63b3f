#include "help/manual_page.h"

#include <QAbstractTextDocumentLayout>
#include <QImage>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextTable>
#include <algorithm>

#include "help/manual.h"

namespace tenter::desktop::help {

namespace {

constexpr int widestPicture = 520;  // px
constexpr double leading = 130;     // % of the usual distance of lines

}  // namespace

ManualPage::ManualPage(QWidget* parent) : QTextBrowser(parent) {
    setAccessibleName(QObject::tr("Manual"));
    setOpenLinks(false);
    document()->setDocumentMargin(24);
}

void ManualPage::setText(const QString& markdown) {
    document()->setMarkdown(markdown);
    spaceOut();
    moveCursor(QTextCursor::Start);
}

// Markdown has no measures of its own.
void ManualPage::spaceOut() {
    const double line = fontMetrics().height();
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        QTextBlockFormat format = block.blockFormat();
        // The line of a picture is as high as the picture.
        if (!block.text().contains(QChar::ObjectReplacementCharacter))
            format.setLineHeight(leading, QTextBlockFormat::ProportionalHeight);
        if (format.headingLevel() > 0) {
            format.setTopMargin(line);
            format.setBottomMargin(line * 0.4);
        }
        QTextCursor(block).setBlockFormat(format);
    }
    for (QTextFrame* frame : document()->rootFrame()->childFrames())
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            QTextTableFormat format = table->format();
            format.setBorder(0);
            format.setCellPadding(4);
            format.setCellSpacing(0);
            table->setFormat(format);
        }
}

std::vector<ManualPage::Heading> ManualPage::headings() const {
    std::vector<Heading> headings;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next())
        if (const int level = block.blockFormat().headingLevel(); level > 0)
            headings.push_back({level, block.text(), block.position()});
    return headings;
}

void ManualPage::show(int position) {
    const QTextBlock block = document()->findBlock(position);
    QTextCursor cursor(block);
    setTextCursor(cursor);
    verticalScrollBar()->setValue(
        static_cast<int>(document()->documentLayout()->blockBoundingRect(block).top()) - 8);
}

bool ManualPage::findNext(const QString& words) {
    if (words.isEmpty()) return false;
    if (find(words)) return true;
    const QTextCursor before = textCursor();
    moveCursor(QTextCursor::Start);
    if (find(words)) return true;
    setTextCursor(before);
    return false;
}

QVariant ManualPage::loadResource(int type, const QUrl& name) {
    if (type != QTextDocument::ImageResource) return QTextBrowser::loadResource(type, name);
    // Scaled in full colour: a picture with a palette would be dithered.
    const QImage image = QImage(pictureFile(name.path())).convertToFormat(QImage::Format_RGB32);
    const double ratio = devicePixelRatioF();
    const int width = static_cast<int>(std::min(widestPicture * ratio, 1.0 * image.width()));
    QImage fitting = image.scaledToWidth(std::max(1, width), Qt::SmoothTransformation);
    fitting.setDevicePixelRatio(ratio);
    return fitting;
}

}  // namespace tenter::desktop::help
