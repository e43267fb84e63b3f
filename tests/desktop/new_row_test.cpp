// From nothing to a row: the start page and the dialog New row, by mouse and keyboard.
#include <QClipboard>
#include <QComboBox>
#include <QDropEvent>
#include <QListWidget>
#include <QMessageBox>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTextBlock>
#include <QtTest>

#include "checks/checks.h"
#include "document/wording.h"
#include "new_row/new_row_dialog.h"
#include "page_import/import_dialog.h"
#include "showing.h"
#include "start_page/start_page.h"
#include "window/main_window.h"

namespace tenter::desktop {

class NewRowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        forgetSettings();
        QDir(QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + "/thumbnails")
            .removeRecursively();
        window_ = activeWindow();
    }
    void cleanup() {
        if (window_) waitForJobs(*window_);
        window_.reset();
    }

    void makesARowOfPastedText() {
        new_row::NewRowDialog* dialog = openByKey();
        QVERIFY(dialog != nullptr);
        paste(dialog,
              "Low tide walk\nTwo slow miles across the sand.\nBook a walk\n\n"
              "Winter geese\nAt first light, with a flask.\nJoin a count\n");
        auto* cards = dialog->findChild<new_row::UnderstoodView*>();
        QCOMPARE(cards->topLevelItemCount(), 2);
        QCOMPARE(cards->topLevelItem(1)->child(0)->text(1), QString("Winter geese"));
        QCOMPARE(cards->topLevelItem(1)->child(2)->text(0), roleTitle("button"));
        QVERIFY(!picture(dialog).isNull());
        // Two columns, by the arrow keys.
        auto* columns = button(dialog, "3 columns");
        columns->setFocus();
        QTest::keyClick(columns, Qt::Key_Left);
        QTest::mouseClick(button(dialog, "Look: Lantern"), Qt::LeftButton);
        waitForJobs(*dialog);
        QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
        QVERIFY(!dialog->isVisible());
        const project::Project& project = document().project();
        QVERIFY(document().hasProject());
        QCOMPARE(project.name, std::string("Low tide walk"));
        QCOMPARE(project.row().cards.size(), std::size_t{2});
        QCOMPARE(project.row().variants[0].className, std::string("low-tide-walk-pair"));
        QVERIFY(document().isModified());
        QVERIFY(window_->windowTitle().contains("Low tide walk (not saved yet)"));
        QVERIFY(window_->isWindowModified());
        for (const checks::Finding& finding : checks::check(project, 0, document().store()))
            QVERIFY2(finding.severity != checks::Severity::Error, finding.says.c_str());
    }

    void asksBeforeANewRowIsLost() {
        new_row::NewRowDialog* dialog = openByKey();
        QTest::mouseClick(button(dialog, "Create &row"), Qt::LeftButton);
        QVERIFY(document().isModified());
        QString question;
        QTimer::singleShot(100, this, [&] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (box == nullptr) return;
            question = box->informativeText();
            box->reject();
        });
        window_->close();
        QVERIFY2(question.contains("never been saved"), qPrintable(question));
        QVERIFY(window_->isVisible());
        // Undo does not turn it into nothing.
        QVERIFY(!document().undoStack().canUndo());
        QTemporaryDir folder;
        project::Problems problems;
        QVERIFY(document().saveAs(folder.filePath("row.tenter.json").toStdString(), problems));
        QVERIFY(!document().isModified());
    }

    void turnsRichTextIntoMarkdown() {
        new_row::NewRowDialog* dialog = openByKey();
        auto* mime = new QMimeData;
        mime->setText("Low\nTwo miles\nGeese\nFirst");
        mime->setHtml("<h2>Low</h2><p>Two <b>miles</b></p><h2>Geese</h2><p>First</p>");
        QGuiApplication::clipboard()->setMimeData(mime);
        auto* text = dialog->findChild<new_row::TextBox*>();
        text->setFocus();
        QTest::keyClick(text, Qt::Key_V, Qt::ControlModifier);
        QCOMPARE(text->toPlainText().simplified(), QString("## Low Two **miles** ## Geese First"));
        // A spreadsheet offers both, too, and its rows are better.
        mime = new QMimeData;
        mime->setText("Low\tTwo\nGeese\tFirst\n");
        mime->setHtml("<table><tr><td><b>Low</b></td><td>Two</td></tr></table>");
        QCOMPARE(new_row::textOfPaste(*mime), QString("Low\tTwo\nGeese\tFirst\n"));
        delete mime;
    }

    void readsAnotherFormatAndLanguageIfAsked() {
        new_row::NewRowDialog* dialog = openByKey();
        paste(dialog, "# Low\n\nTwo\n\n# Geese\n\nFirst\n");
        QCOMPARE(dialog->findChild<new_row::UnderstoodView*>()->topLevelItemCount(), 2);
        choose(dialog, "Format of the text", "Plain lines");
        choose(dialog, "Language", "Hebrew");
        QCOMPARE(dialog->maker().result().text.format, tenter::start::TextFormat::Plain);
        QVERIFY(dialog->maker().result().made.project.rightToLeft);
        choose(dialog, "Direction", "Left to right");
        QVERIFY(!dialog->maker().result().made.project.rightToLeft);
        QCOMPARE(dialog->maker().result().made.project.language, std::string("he"));
    }

    void showsEachLookInTheRow() {
        new_row::NewRowDialog* dialog = openByKey();
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->maker().isBusy(), 20000);
        waitForJobs(*dialog);
        const auto tiles = dialog->findChildren<new_row::LookTile*>();
        QVERIFY(tiles.size() >= 3);
        for (const new_row::LookTile* tile : tiles)
            QVERIFY2(tile->hasImage(), qPrintable(tile->text()));
        const QImage first = picture(dialog);
        QTest::mouseClick(tiles[1], Qt::LeftButton);
        QTRY_VERIFY_WITH_TIMEOUT(picture(dialog) != first, 20000);
    }

    void putsDroppedPicturesIntoTheCards() {
        new_row::NewRowDialog* dialog = openByKey();
        paste(dialog, "Low\nTwo miles of sand.\nBook\n\nGeese\nFirst light.\nJoin\n");
        const QString folder = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/pictures/");
        drop(dialog, {folder + "dunes.jpg", folder + "creek.jpg", folder + "../visits.csv"});
        auto* list = named<QLabel>(dialog, "Pictures");
        QVERIFY2(list->text().contains("1. dunes.jpg\n2. creek.jpg"), qPrintable(list->text()));
        // The table was read as the text.
        QVERIFY(dialog->findChild<new_row::TextBox*>()->toPlainText().contains(','));
        drop(dialog, {folder + "../draw/none.xyz"});
        QVERIFY2(list->text().contains("cannot be read as a picture"), qPrintable(list->text()));
        QTest::mouseClick(button(dialog, "Create &row"), Qt::LeftButton);
        const auto& part = document().project().row().cards[1].parts[0];
        const auto* second = std::get_if<project::PicturePart>(&part);
        QVERIFY(second != nullptr);
        QCOMPARE(second->file, std::string("creek.jpg"));
        QVERIFY(second->width > 0 && second->height > 0);
        QCOMPARE(QString::fromStdString(document().folder().string()), QDir(folder).absolutePath());
    }

    void startPageOffersEverythingByKeyboard() {
        auto* page = window_->findChild<start_page::StartPage*>();
        QVERIFY(page->isVisible());
        QVERIFY(label(page, "Projects that you save or open will be here.")->isVisible());
        QTRY_VERIFY(!page->findChildren<start_page::ProjectTile*>().isEmpty());
        waitForJobs(*window_);
        for (const auto* tile : page->findChildren<start_page::ProjectTile*>()) {
            QVERIFY2(tile->hasImage(), qPrintable(tile->text()));
            QVERIFY(!tile->accessibleName().isEmpty());
        }
        // New row is the first stop.
        auto* first = button(page, "&New row…");
        first->setFocus();
        QTest::keyClick(first, Qt::Key_Return);
        auto* dialog = window_->findChild<new_row::NewRowDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        QTest::keyClick(dialog, Qt::Key_Escape);
        // Arrow keys move between tiles, and Enter opens one.
        const auto tiles = page->findChildren<start_page::ProjectTile*>();
        window_->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window_.get()));
        tiles[0]->setFocus();
        QTest::keyClick(tiles[0], Qt::Key_Right);
        QVERIFY(!tiles[0]->hasFocus());
        auto* next = qobject_cast<start_page::ProjectTile*>(QApplication::focusWidget());
        QVERIFY(next != nullptr);
        QTest::keyClick(next, Qt::Key_Return);
        QVERIFY(document().hasProject());
        QCOMPARE(QString::fromStdString(document().project().name), next->text());
        QVERIFY(document().file().empty() && !document().isModified());
    }

    void startPageShowsRecentProjectsWithTheirFolder() {
        QTemporaryDir folder;
        const QString file = bareSample("night-sky", folder);
        window_->openFile(file);
        window_ = std::make_unique<TestWindow>();
        window_->show();
        auto* page = window_->findChild<start_page::StartPage*>();
        const auto recent = [&]() -> start_page::ProjectTile* {
            for (auto* tile : page->findChildren<start_page::ProjectTile*>())
                if (tile->text() == "night-sky.tenter.json") return tile;
            return nullptr;
        };
        QTRY_VERIFY(recent() != nullptr);
        waitForJobs(*window_);
        QVERIFY(recent()->hasImage());
        QCOMPARE(recent()->accessibleDescription(), folder.path());
        QTest::mouseClick(recent(), Qt::LeftButton);
        QCOMPARE(QString::fromStdString(document().file().string()), file);
    }

    void startPageTakesDroppedFiles() {
        const QString pictures = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/pictures/");
        drop(window_.get(), {pictures + "dunes.jpg"});
        auto* dialog = window_->findChild<new_row::NewRowDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        QCOMPARE(dialog->findChild<new_row::PictureList*>()->files().size(), 1);
        QTest::keyClick(dialog, Qt::Key_Escape);
        drop(window_.get(), {QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/almanac.html")});
        auto* import = window_->findChild<page_import::ImportDialog*>();
        QVERIFY(import != nullptr && import->isVisible());
        QTRY_VERIFY_WITH_TIMEOUT(!import->reader().isReading(), 5000);
        QVERIFY(import->reader().result().row.has_value());
        QTest::keyClick(import, Qt::Key_Escape);
        drop(window_.get(), {QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/night-sky.tenter.json")});
        QVERIFY(document().hasProject());
    }

    void importFromTheStartPageMakesANewProject() {
        auto* page = window_->findChild<start_page::StartPage*>();
        QTest::mouseClick(button(page, "&Import row from page…"), Qt::LeftButton);
        auto* dialog = window_->findChild<page_import::ImportDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        for (const auto* choice : dialog->findChildren<QRadioButton*>())
            QVERIFY(!choice->isVisible());
        dialog->openPage(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/almanac.html"));
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
        // What to check comes first in the report.
        const auto* report = named<QListWidget>(dialog, "Import report");
        QVERIFY(report->count() > 3);
        bool found = false;
        for (int i = 0; i < report->count(); ++i) {
            const bool isWarning = report->item(i)->text().startsWith("Warning: ");
            QVERIFY2(!isWarning || !found, qPrintable(report->item(i)->text()));
            found = found || !isWarning;
            QVERIFY(!report->item(i)->text().contains("does not have the class"));
        }
        // Shortcuts belong to the active window, and a dialog is activated by a later event.
        QTRY_COMPARE(QApplication::activeWindow(), dialog);
        QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
        QVERIFY(!dialog->isVisible());
        QVERIFY(document().hasProject());
        const project::Project& project = document().project();
        QCOMPARE(project.name, std::string("The Shore Almanac"));
        QVERIFY(project.row().given.has_value());
        QVERIFY(
            project.row().given->markup.str().find("class=\"months " + project.row().variants[0].className) !=
                std::string::npos ||
            project.row().given->markup.str().find(project.row().variants[0].className) != std::string::npos);
        QVERIFY(document().file().empty() && document().isModified());
        QVERIFY(project.row().style.text.find("heading")->colour.has_value());
    }

    void importIntoAnOpenProjectAsksWhere() {
        window_->openFile(QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/night-sky.tenter.json"));
        const project::Project before = document().project();
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
        auto* dialog = window_->findChild<page_import::ImportDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        QRadioButton* intoNew = nullptr;
        for (auto* choice : dialog->findChildren<QRadioButton*>()) {
            QVERIFY(choice->isVisible());
            if (choice->text().contains("new project")) intoNew = choice;
        }
        QVERIFY(intoNew != nullptr && !intoNew->isChecked());
        dialog->openPage(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/almanac.html"));
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
        QCOMPARE(dialog->reader().result().adopted->project.name, before.name);
        QTest::mouseClick(intoNew, Qt::LeftButton, {}, {8, intoNew->height() / 2});
        QVERIFY(intoNew->isChecked());
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
        for (auto* one : dialog->findChildren<QPushButton*>())
            if (one->text().remove('&') == "Import row") QTest::mouseClick(one, Qt::LeftButton);
        QCOMPARE(document().project().name, std::string("The Shore Almanac"));
        QVERIFY(document().project().row().variants[0].className != before.row().variants[0].className);
        QCOMPARE(document().undoStack().count(), 0);
    }

    void showsPastedHtmlWrappedFromItsStart() {
        auto* page = window_->findChild<start_page::StartPage*>();
        QTest::mouseClick(button(page, "&Import row from page…"), Qt::LeftButton);
        auto* dialog = window_->findChild<page_import::ImportDialog*>();
        QString html = "<ul>";
        for (int i = 0; i < 20; ++i)
            html += QString("<li><h3>Walk %1</h3><p>%2</p></li>")
                        .arg(i)
                        .arg(QString("sand and weed ").repeated(9));
        QGuiApplication::clipboard()->setText(html + "</ul>");
        auto* box = dialog->findChild<page_import::PageBox*>();
        box->setFocus();
        QTest::keyClick(box, Qt::Key_V, Qt::ControlModifier);
        QCOMPARE(box->textCursor().position(), 0);
        QCOMPARE(box->verticalScrollBar()->value(), 0);
        QCOMPARE(box->horizontalScrollBar()->maximum(), 0);
        QVERIFY(box->document()->firstBlock().layout()->lineCount() > 20);
    }

private:
    Document& document() { return window_->session.document; }

    new_row::NewRowDialog* openByKey() {
        QTest::keyClick(window_.get(), Qt::Key_N, Qt::ControlModifier);
        auto* dialog = window_->findChild<new_row::NewRowDialog*>();
        if (dialog == nullptr || !QTest::qWaitFor([dialog] { return dialog->isVisible(); })) return nullptr;
        QTest::qWait(20);
        waitForRow(dialog);
        return dialog;
    }
    static void waitForRow(new_row::NewRowDialog* dialog) {
        QVERIFY(QTest::qWaitFor([dialog] { return !dialog->maker().isBusy(); }, 30000));
    }
    static void paste(new_row::NewRowDialog* dialog, const QString& text) {
        QGuiApplication::clipboard()->setText(text);
        auto* box = dialog->findChild<new_row::TextBox*>();
        box->setFocus();
        QTest::keyClick(box, Qt::Key_V, Qt::ControlModifier);
        QCOMPARE(box->toPlainText(), text);
        waitForRow(dialog);
    }
    static QImage picture(QWidget* dialog) {
        return named<QLabel>(dialog, "Preview of the row")->pixmap(Qt::ReturnByValue).toImage();
    }
    template <class Widget>
    static Widget* named(QWidget* in, const QString& name) {
        for (auto* one : in->findChildren<Widget*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }
    static QAbstractButton* button(QWidget* in, const QString& name) {
        for (auto* one : in->findChildren<QAbstractButton*>())
            if (one->text() == name || one->accessibleName() == name) return one;
        return nullptr;
    }
    static QLabel* label(QWidget* in, const QString& text) {
        for (auto* one : in->findChildren<QLabel*>())
            if (one->text() == text) return one;
        return nullptr;
    }
    static void choose(new_row::NewRowDialog* dialog, const QString& name, const QString& title) {
        auto* list = named<QComboBox>(dialog, name);
        QVERIFY2(list != nullptr && list->findText(title) >= 0, qPrintable(name + ": " + title));
        list->setCurrentIndex(list->findText(title));
        Q_EMIT list->activated(list->currentIndex());
        waitForRow(dialog);
    }
    static void drop(QWidget* on, const QStringList& files) {
        QMimeData mime;
        QList<QUrl> urls;
        for (const QString& file : files)
            urls << QUrl::fromLocalFile(file);
        mime.setUrls(urls);
        const QPoint middle = on->rect().center();
        QDragEnterEvent enter(middle, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent event(QPointF(middle), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &event);
        QTest::qWait(0);
    }

    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::NewRowTest)
#include "new_row_test.moc"
