// The dialog “Import row from page”: paste a page or open a saved one, review the row that was found, correct
// the roles, import it.
#pragma once

#include <QDialog>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTabWidget>
#include <filesystem>

#include "page_import/found_table.h"
#include "page_import/measure_switch.h"
#include "page_import/no_row_notice.h"
#include "page_import/page_input.h"
#include "page_import/row_reader.h"
#include "page_import/row_review.h"

namespace tenter::desktop::page_import {

class ImportDialog : public QDialog {
    Q_OBJECT

public:
    ImportDialog(Document& document, QWidget* parent);
    /// Opens a saved page.
    void openPage(const QString& file);
    [[nodiscard]] RowReader& reader() { return *reader_; }
    [[nodiscard]] RowReview& row() { return *row_; }
    [[nodiscard]] MeasureSwitch& measuring() { return *measure_; }

Q_SIGNALS:
    void imported(int cards);
    /// The row is to be in a new project; `folder`: where its pictures are.
    void importedAsNew(const tenter::project::Project& project, const std::filesystem::path& folder,
                       const QString& message);

protected:
    void showEvent(QShowEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* buildRoot();
    QWidget* buildFound();
    QWidget* buildEmpty();
    QLayout* buildFoot();
    void showRow();
    void showReport();
    /// Shows the page on the right that fits the state of the import, and enables the buttons.
    void updateState();
    /// Closes the dialog with the row in a new project, or in place of the cards of the open one, as one
    /// undoable step. Shows why if the open project cannot have that row.
    void importRow();

    Document& document_;
    RowReader* reader_;
    PageInput* page_;
    NoRowNotice* notice_;
    RowReview* row_;
    FoundTable* found_;
    MeasureSwitch* measure_;
    QWidget* root_ = nullptr;  ///< the root font size, for a stylesheet alone
    QTabWidget* read_;         ///< the row and the table
    QStackedWidget* stack_;
    QWidget* empty_ = nullptr;
    QListWidget* report_ = nullptr;
    QPushButton* guess_ = nullptr;
    QWidget* destination_ = nullptr;
    QRadioButton* intoNew_ = nullptr;
    QRadioButton* intoThis_ = nullptr;
    QLabel* consequence_ = nullptr;
    QPushButton* import_ = nullptr;
    QString failed_;  // error message if a file could not be read; otherwise empty
};

}  // namespace tenter::desktop::page_import
