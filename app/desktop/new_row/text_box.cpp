#include "new_row/text_box.h"

#include <QMimeData>
#include <QRegularExpression>
#include <QUrl>

#include "start/pasted_text.h"

namespace tenter::desktop::new_row {

namespace {

QStringList localFiles(const QMimeData& source) {
    QStringList files;
    for (const QUrl& url : source.urls())
        if (url.isLocalFile()) files << url.toLocalFile();
    return files;
}

}  // namespace

QString textOfPaste(const QMimeData& source) {
    const QString plain = source.text();
    static const QRegularExpression structure("<(h[1-6]|li|strong|b|em|i|a)[\\s>]",
                                              QRegularExpression::CaseInsensitiveOption);
    // A spreadsheet gives its rows as text with tabs, too.
    if (!source.hasHtml() || plain.contains('\t') || !source.html().contains(structure)) return plain;
    const auto read = tenter::start::readPasted(source.html().toStdString(), tenter::start::TextFormat::Html);
    return read.cards.empty() ? plain : QString::fromStdString(tenter::start::markdownOf(read));
}

TextBox::TextBox(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setAccessibleName(QObject::tr("Text of the cards"));
    setPlaceholderText(QObject::tr(
        "Paste the text of your cards here: plain lines, Markdown, HTML, or rows of a spreadsheet.\n\n"
        "Heading of the first card\nIts text, one or more lines\nLabel of its button\n\n"
        "Heading of the second card\n…\n\nWithout text, the row has example text."));
}

bool TextBox::canInsertFromMimeData(const QMimeData* source) const {
    return source->hasUrls() || source->hasHtml() || QPlainTextEdit::canInsertFromMimeData(source);
}

void TextBox::insertFromMimeData(const QMimeData* source) {
    if (const QStringList files = localFiles(*source); !files.isEmpty()) {
        Q_EMIT filesInserted(files);
        return;
    }
    // More than that is not read.
    insertPlainText(textOfPaste(*source).left(static_cast<qsizetype>(tenter::start::longestPaste)));
}

}  // namespace tenter::desktop::new_row
