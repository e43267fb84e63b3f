#include "help/about_dialog.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "controls/selectable_label.h"
#include "controls/text_scale.h"
#include "help/libraries.h"

namespace tenter::desktop::help {

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(QObject::tr("About Tenter"));
    resize(controls::scaled(600), controls::scaled(620));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* title = new QLabel("Tenter " + QApplication::applicationVersion(), this);
    QFont font = title->font();
    font.setPointSizeF(font.pointSizeF() * 1.6);
    title->setFont(font);
    box->addWidget(title);
    for (const QString& text :
         {QObject::tr(
              "A tenter is a frame that stretches cloth to an even width. Tenter does the same with a row of "
              "cards: it computes the row at every viewport width and writes the stylesheet for it."),
          QObject::tr("Zoom: text that grows with the viewport grows less than the browser zoom. Such text "
                      "can fail WCAG "
                      "2.2 SC 1.4.4, which requires that text can be enlarged to 200\u00A0%. Keep the "
                      "largest size of a "
                      "ramp at most 2.5 times the smallest. Test the published page at 200\u00A0% and "
                      "400\u00A0% zoom, "
                      "with the keyboard and with a screen reader."),
          QObject::tr("Tenter is free software under the GNU General Public License, version 3 or later "
                      "(GPL-3.0-or-later). It has no warranty. It uses these libraries:")})
        box->addWidget(controls::selectableLabel(text, this));
    auto* list = new QTreeWidget(this);
    list->setAccessibleName(QObject::tr("Libraries"));
    list->setHeaderLabels(
        {QObject::tr("Library"), QObject::tr("Version"), QObject::tr("Used for"), QObject::tr("Licence")});
    list->setRootIsDecorated(false);
    for (const Library& library : libraries())
        new QTreeWidgetItem(list, {library.name, library.version, library.use, library.licence});
    for (int column = 0; column < list->columnCount(); ++column)
        list->resizeColumnToContents(column);
    box->addWidget(list, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    box->addWidget(buttons);
    buttons->button(QDialogButtonBox::Close)->setFocus();
}

}  // namespace tenter::desktop::help
