#include "window/export_dialogs.h"

#include "controls/text_scale.h"
#include "export/page_folder_dialog.h"
#include "export/picture_dialog.h"
#include "export/pictures_dialog.h"
#include "export/spec_sheet_dialog.h"
#include "export/stylesheet_dialog.h"
#include "export/tokens_dialog.h"

namespace tenter::desktop::window {

namespace {

template <class Dialog>
void addDialog(Exports& exports, const QString& text, Session& session, QWidget& window) {
    exports.addDialog(text, [&session, &window, dialog = static_cast<Dialog*>(nullptr)]() mutable {
        if (dialog == nullptr) {
            dialog = new Dialog(session, &window);
            dialog->resize(controls::scaled(dialog->width()), controls::scaled(dialog->height()));
        }
        dialog->show();
        dialog->raise();
    });
}

}  // namespace

void addExportDialogs(Exports& exports, Session& session, QWidget& window) {
    addDialog<exporting::StylesheetDialog>(exports, QObject::tr("St&ylesheet…"), session, window);
    addDialog<exporting::PageFolderDialog>(exports, QObject::tr("&Page folder…"), session, window);
    addDialog<exporting::PicturesDialog>(exports, QObject::tr("P&ictures…"), session, window);
    addDialog<exporting::SpecSheetDialog>(exports, QObject::tr("Spec s&heet…"), session, window);
    addDialog<exporting::TokensDialog>(exports, QObject::tr("&Design tokens…"), session, window);
    addDialog<exporting::PictureDialog>(exports, QObject::tr("Picture of this &view…"), session, window);
}

}  // namespace tenter::desktop::window
