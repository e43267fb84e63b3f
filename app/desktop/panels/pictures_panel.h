// The Pictures panel: the picture of the selected card, and how it fills its slot.
#pragma once

#include <QPushButton>

#include "controls/text_editor.h"
#include "panels/card_bar.h"
#include "panels/focus_picker.h"
#include "panels/panel.h"
#include "panels/upload_box.h"

namespace tenter::desktop::panels {

class PicturesPanel : public Panel {
    Q_OBJECT

public:
    explicit PicturesPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override;
    [[nodiscard]] QWidget* head() const override { return bar_; }

private:
    /// The picture that is shown: the selected one, or the first of the card; empty if the card has none.
    [[nodiscard]] std::optional<project::PartRef> place() const;
    /// That picture, or null.
    [[nodiscard]] const project::PicturePart* picture() const;
    /// Its slot at the current width; empty if it is not laid out.
    [[nodiscard]] std::optional<layout::Box> slot() const;
    void editPicture(const QString& name, const std::function<void(project::PicturePart&)>& change,
                     const QString& gesture = {});
    void chooseFile();
    void showSlot();
    /// Shows what to upload, as of the last finished computation.
    void showUploads();

    CardBar* bar_;
    FocusPicker* focus_;
    QLabel* file_;
    QLabel* slot_;
    QPushButton* choose_;
    controls::TextEditor* alt_;
    controls::TextEditor* ratio_;
    QWidget* own_;
    UploadLine* upload_;
    QLabel* summary_;  ///< how many are too small
    UploadTable* uploads_;
    UploadJob* job_;
};

/// Parses `3/2`, `1.5` or `own` to the JSON value of a ratio; null if `text` is none.
project::Json readRatio(const QString& text);

}  // namespace tenter::desktop::panels
