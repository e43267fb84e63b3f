// Where a page comes in: a box to paste it into, or a saved page that was opened or dropped.
#pragma once

#include <QLabel>
#include <QPlainTextEdit>
#include <QStackedWidget>
#include <filesystem>

namespace tenter::desktop::given {

/// A box for HTML. Files, and text too large to be edited, are handed on.
class PageBox : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit PageBox(QWidget* parent = nullptr);

signals:
    void fileGiven(const QString& file);
    void largeGiven(const QByteArray& bytes);

protected:
    bool canInsertFromMimeData(const QMimeData* source) const override;
    void insertFromMimeData(const QMimeData* source) override;
};

class PageSide : public QWidget {
    Q_OBJECT

public:
    explicit PageSide(QWidget* parent = nullptr);
    void openAsked();
    void open(const QString& file);
    void focusBox();

signals:
    /// `file` is empty for what was pasted; `atOnce`: it was not typed.
    void given(const QByteArray& bytes, const QString& file, bool atOnce);
    void failed(const QString& why);

private:
    void hold(const QByteArray& bytes, const QString& name, const QString& file);
    void backToBox();

    QStackedWidget* stack_;
    PageBox* box_;
    QWidget* held_;
    QLabel* heldTitle_;
    QString folder_;  // that a page was opened from last
};

}  // namespace tenter::desktop::given
