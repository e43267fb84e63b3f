#include "window/about.h"

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>
#include <utility>

namespace tenter::desktop::window {

namespace {

QLabel* text(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

void run(QDialog& dialog, QVBoxLayout* box) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    box->addWidget(buttons);
    buttons->button(QDialogButtonBox::Close)->setFocus();
    dialog.exec();
}

}  // namespace

void showKeys(QWidget* parent) {
    constexpr std::array keys{
        std::pair{"Left, Right", "Narrower, wider by 1 px"},
        std::pair{"Shift+Left, Shift+Right", "By 10 px"},
        std::pair{"Ctrl+Left, Ctrl+Right", "To the previous, the next band edge"},
        std::pair{"F7, Shift+F7", "To the next, the previous wrap point"},
        std::pair{"F8, Shift+F8", "To the next, the previous finding of the list"},
        std::pair{"Enter in the findings", "To the width where it is worst, with its part marked"},
        std::pair{"Ctrl+E, Ctrl+Shift+E", "To the next, the previous width where engines differ"},
        std::pair{"Ctrl+1 to Ctrl+4", "Boxes, measure, tight fits, engines over the row"},
        std::pair{"Ctrl+Shift+B", "Compare with a browser"},
        std::pair{"F3", "All variants at this width, or the one"},
        std::pair{"F2, held", "The row as it was saved"},
        std::pair{"Ctrl+Shift+V", "Take a page’s row"},
        std::pair{"Ctrl+Shift+C", "Copy the stylesheet"},
        std::pair{"Ctrl+Alt+C", "Copy the selected text’s size"},
        std::pair{"Ctrl+F", "Find a setting"},
        std::pair{"Alt+1 to Alt+6", "Row, Text, Spacing, Colour, Words, Pictures"},
        std::pair{"Alt+7", "The findings"},
        std::pair{"Ctrl+Z, Ctrl+Shift+Z", "Undo, redo"},
        std::pair{"Up, Down in a number", "A step; with Shift ten, with Alt a tenth"},
        std::pair{"Escape in a field", "Take back what was typed"},
        std::pair{"A field emptied", "Inherit the value again"},
        std::pair{"Ctrl+B, Ctrl+I, Ctrl+K in copy", "Strong, emphasis, link"},
    };
    QDialog dialog(parent);
    dialog.setWindowTitle("Keys");
    auto* box = new QVBoxLayout(&dialog);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(32);
    form->setVerticalSpacing(8);
    for (const auto& [key, does] : keys) {
        auto* label = new QLabel(key, &dialog);
        label->setForegroundRole(QPalette::PlaceholderText);
        form->addRow(label, new QLabel(does, &dialog));
    }
    box->addLayout(form);
    run(dialog, box);
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
    box->addWidget(text(
        "A tenter is the frame on which cloth is stretched to an even width. This one does that to a row "
        "of cards: it computes the row at every width of the page and hands over the stylesheet.",
        &dialog));
    box->addWidget(text(
        "What it does not promise: type that grows with the page grows less when a reader zooms, and can "
        "fail WCAG 2.2 SC 1.4.4, which asks for text at twice its size. Keep the largest size of a "
        "ramp within 2.5 times the smallest, and try the page that is published: zoomed to 200 % and "
        "to 400 %, with the keyboard, and with a screen reader.",
        &dialog));
    box->addWidget(
        text("Free software under the GNU General Public License, version 3 or later. It comes without any "
             "warranty.",
             &dialog));
    run(dialog, box);
}

}  // namespace tenter::desktop::window
