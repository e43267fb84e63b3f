// Takes the row that a page prints already: paste it, see what is what, mend that, take it.
#pragma once

#include <QDialog>
#include <QPushButton>

#include "given/no_row_side.h"
#include "given/page_side.h"
#include "given/row_reader.h"
#include "given/row_side.h"

namespace tenter::desktop::given {

class GivenDialog : public QDialog {
    Q_OBJECT

public:
    GivenDialog(Document& document, QWidget* parent);
    [[nodiscard]] RowReader& reader() { return *reader_; }
    [[nodiscard]] RowSide& row() { return *row_; }

signals:
    void taken(int cards);

protected:
    void showEvent(QShowEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* buildFound();
    QWidget* buildEmpty();
    QLayout* buildFoot();
    void showRow();
    void showReport();
    /// Shows how far it has come.
    void follow();
    void take();

    Document& document_;
    RowReader* reader_;
    PageSide* page_;
    NoRowSide* noRow_;
    RowSide* row_;
    QStackedWidget* stack_;
    QWidget* empty_ = nullptr;
    QPlainTextEdit* report_ = nullptr;
    QPushButton* guess_ = nullptr;
    QLabel* foot_ = nullptr;
    QPushButton* take_ = nullptr;
    QString failed_;  // why a file could not be read
};

}  // namespace tenter::desktop::given
