// The dialog “New row”: columns, look, language, text and pictures, with previews of the row.
#pragma once

#include <QButtonGroup>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <map>

#include "controls/segments.h"
#include "new_row/look_tile.h"
#include "new_row/picture_list.h"
#include "new_row/row_maker.h"
#include "new_row/text_box.h"
#include "new_row/understood_view.h"

namespace tenter::desktop::new_row {

class NewRowDialog : public QDialog {
    Q_OBJECT

public:
    explicit NewRowDialog(QWidget* parent);
    /// Adds pictures; other files are read as text.
    void addFiles(const QStringList& files);
    /// Empties text, pictures and name. Columns and look stay.
    void reset();
    [[nodiscard]] RowMaker& maker() { return maker_; }

Q_SIGNALS:
    /// The person created the row. `folder`: where its pictures are.
    void created(const tenter::project::Project& project, const std::filesystem::path& folder,
                 const QString& message);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QWidget* buildChoices();
    QWidget* buildText();
    QWidget* buildPreview();
    QLayout* buildFoot();
    void refresh();
    void showResult(const RowResult& result);
    void create();
    [[nodiscard]] QString lookName() const;

    RowMaker maker_{this};
    controls::Segments* columns_ = nullptr;
    QButtonGroup* looks_ = nullptr;
    QComboBox* language_ = nullptr;
    QComboBox* direction_ = nullptr;
    QComboBox* format_ = nullptr;
    QLineEdit* name_ = nullptr;
    TextBox* text_ = nullptr;
    PictureList* pictures_ = nullptr;
    controls::Segments* widths_ = nullptr;
    QLabel* image_ = nullptr;
    QLabel* notes_ = nullptr;
    UnderstoodView* understood_ = nullptr;
    QPushButton* create_ = nullptr;
};

}  // namespace tenter::desktop::new_row
