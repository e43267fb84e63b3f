// The text box of a new row: rich text that is pasted becomes Markdown.
#pragma once

#include <QPlainTextEdit>
#include <QStringList>

namespace tenter::desktop::new_row {

class TextBox : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit TextBox(QWidget* parent = nullptr);

Q_SIGNALS:
    void filesInserted(const QStringList& files);

protected:
    bool canInsertFromMimeData(const QMimeData* source) const override;
    void insertFromMimeData(const QMimeData* source) override;
};

/// The text of pasted content: tab separated rows and plain text stay; rich text with headings, lists, links
/// or strong text becomes Markdown.
QString textOfPaste(const QMimeData& source);

}  // namespace tenter::desktop::new_row
