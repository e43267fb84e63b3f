// The input of the import dialog: a text box for HTML, or the name and size of a saved page that was opened.
#pragma once

#include <QLabel>
#include <QPlainTextEdit>
#include <QStackedWidget>
#include <filesystem>

namespace tenter::desktop::page_import {

/// A text box for HTML. Files, and text too large to edit, are not inserted: a signal passes them on.
class PageBox : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit PageBox(QWidget* parent = nullptr);

Q_SIGNALS:
    void fileInserted(const QString& file);
    void largeTextInserted(const QByteArray& bytes);

protected:
    bool canInsertFromMimeData(const QMimeData* source) const override;
    void insertFromMimeData(const QMimeData* source) override;
};

class PageInput : public QWidget {
    Q_OBJECT

public:
    explicit PageInput(QWidget* parent = nullptr);
    void chooseFile();
    void open(const QString& file);
    void focusBox();

Q_SIGNALS:
    /// `file` is empty for pasted or typed HTML. `atOnce`: the page was not typed, so it can be read without
    /// waiting for more input.
    void pageChanged(const QByteArray& bytes, const QString& file, bool atOnce);
    void failed(const QString& why);

private:
    void setPage(const QByteArray& bytes, const QString& name, const QString& file);
    void showBox();
    void turnTo(QWidget* shown);

    QStackedWidget* stack_;
    PageBox* box_;
    QWidget* summary_;
    QLabel* summaryTitle_;
    QString folder_;  // of the page that was opened last
};

}  // namespace tenter::desktop::page_import
