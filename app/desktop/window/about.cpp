#include "window/about.h"

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>
#include <utility>

#include "controls/selectable_label.h"

namespace tenter::desktop::window {

namespace {

void runWithCloseButton(QDialog& dialog, QVBoxLayout* box) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    box->addWidget(buttons);
    buttons->button(QDialogButtonBox::Close)->setFocus();
    dialog.exec();
}

}  // namespace

void showShortcuts(QWidget* parent) {
    constexpr std::array shortcuts{
        std::pair{"Left, Right", "Narrower, wider by 1\u00A0px"},
        std::pair{"Shift+Left, Shift+Right", "Narrower, wider by 10\u00A0px"},
        std::pair{"Ctrl+Left, Ctrl+Right", "Previous, next band end"},
        std::pair{"Shift+F7, F7", "Previous, next wrap point"},
        std::pair{"Shift+F8, F8", "Previous, next finding in the list"},
        std::pair{"Enter in the findings", "Go to the width where the finding is worst, and mark its part"},
        std::pair{"Ctrl+Shift+E, Ctrl+E", "Previous, next Chromium/Firefox difference"},
        std::pair{"Ctrl+1 to Ctrl+4", "Overlays: boxes, measure, tight fits, Chromium/Firefox differences"},
        std::pair{"Ctrl+Shift+B", "Compare with browser"},
        std::pair{"F3", "Show all variants at this width, or one"},
        std::pair{"Ctrl+0, Ctrl+9", "Actual size, fit whole cards to the window"},
        std::pair{"F6, Shift+F6", "Open or close the plot of font size, of measure"},
        std::pair{"Hold F2", "Show saved version"},
        std::pair{"F9", "Solve sizes"},
        std::pair{"F4", "Show the preview of solved sizes, or the current sizes"},
        std::pair{"Ctrl+Shift+V", "Import row from page"},
        std::pair{"Ctrl+Shift+C", "Copy stylesheet"},
        std::pair{"Ctrl+Shift+M", "Copy markup"},
        std::pair{"Ctrl+Alt+Shift+C", "Copy stylesheets of all variants"},
        std::pair{"Ctrl+Alt+C", "Copy font size of selected text"},
        std::pair{"Ctrl+F", "Find setting"},
        std::pair{"Alt+1 to Alt+6", "Panels: Row, Text, Spacing, Colour, Words, Pictures"},
        std::pair{"Alt+7", "Findings"},
        std::pair{"Ctrl+N", "New row"},
        std::pair{"Ctrl+Z, Ctrl+Shift+Z", "Undo, redo"},
        std::pair{"Ctrl+Alt+Z", "Undo list"},
        std::pair{"Up, Down in a number", "One step; with Shift 10 steps, with Alt a tenth"},
        std::pair{"Escape in a field", "Restore the value from before typing"},
        std::pair{"Empty a field", "Reset to inherited value"},
        std::pair{"Enter on a text of the row", "Edit it there, as a double click does"},
        std::pair{"Tab, Ctrl+Enter, Escape in it", "Next text; done; restore the text"},
        std::pair{"Alt+Left, Alt+Right in the row", "Move the selected card"},
        std::pair{"Ctrl+D, Delete in the row", "Duplicate the card; remove the selected part or card"},
        std::pair{"Ctrl+click, Shift+click in the row", "Select several parts"},
        std::pair{"Menu key in the row", "What can be done with the selected part"},
        std::pair{"Escape during a drag", "Restore what it changed"},
        std::pair{"Ctrl+B, Ctrl+I, Ctrl+K in a text", "Strong, emphasis, link"},
        std::pair{"Alt+Up, Alt+Down in a text or the row", "Move its part up, down"},
        std::pair{"Ctrl+Shift+Delete in a text", "Remove its part"},
    };
    QDialog dialog(parent);
    dialog.setWindowTitle("Keyboard shortcuts");
    auto* box = new QVBoxLayout(&dialog);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    // Two columns, so that all keys are seen at once on a small screen.
    auto* columns = new QHBoxLayout;
    columns->setSpacing(48);
    QFormLayout* form = nullptr;
    for (std::size_t i = 0; i < shortcuts.size(); ++i) {
        if (i % ((shortcuts.size() + 1) / 2) == 0) {
            form = new QFormLayout;
            form->setHorizontalSpacing(32);
            form->setVerticalSpacing(8);
            columns->addLayout(form);
        }
        const auto& [key, action] = shortcuts[i];
        auto* label = new QLabel(key, &dialog);
        label->setForegroundRole(QPalette::PlaceholderText);
        form->addRow(label, new QLabel(action, &dialog));
    }
    box->addLayout(columns);
    runWithCloseButton(dialog, box);
}

void showAbout(QWidget* parent) {
    QDialog dialog(parent);
    dialog.setWindowTitle("About Tenter");
    dialog.setMinimumWidth(480);
    auto* box = new QVBoxLayout(&dialog);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* title = new QLabel("Tenter " + QApplication::applicationVersion(), &dialog);
    QFont font = title->font();
    font.setPointSizeF(font.pointSizeF() * 1.6);
    title->setFont(font);
    box->addWidget(title);
    box->addWidget(controls::selectableLabel(
        "A tenter is a frame that stretches cloth to an even width. Tenter does the same with a row of "
        "cards: "
        "it computes the row at every viewport width and writes the stylesheet for it.",
        &dialog));
    box->addWidget(controls::selectableLabel(
        "Zoom: text that grows with the viewport grows less than the browser zoom. Such text can fail WCAG "
        "2.2 SC 1.4.4, which requires that text can be enlarged to 200\u00A0%. Keep the largest size of a "
        "ramp at most 2.5 times the smallest. Test the published page at 200\u00A0% and 400\u00A0% zoom, "
        "with the keyboard and with a screen reader.",
        &dialog));
    box->addWidget(controls::selectableLabel(
        "Tenter is free software under the GNU General Public License, version 3 or later. It has no "
        "warranty.",
        &dialog));
    runWithCloseButton(dialog, box);
}

}  // namespace tenter::desktop::window
