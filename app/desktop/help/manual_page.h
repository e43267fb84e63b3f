// The page of the manual: its text with pictures that fit the width.
#pragma once

#include <QTextBrowser>

namespace tenter::desktop::help {

class ManualPage : public QTextBrowser {
    Q_OBJECT

public:
    explicit ManualPage(QWidget* parent);
    void setText(const QString& markdown);
    /// A heading: its level, from 1, its words, and the place of its first character in the document.
    struct Heading {
        int level;
        QString words;
        int position;
    };
    [[nodiscard]] std::vector<Heading> headings() const;
    /// Scrolls a place of the document to the top.
    void show(int position);
    /// Selects and shows the next place of `words` after the current one, from the start again after the
    /// last. False if there is none.
    bool findNext(const QString& words);

protected:
    QVariant loadResource(int type, const QUrl& name) override;

private:
    void spaceOut();
};

}  // namespace tenter::desktop::help
