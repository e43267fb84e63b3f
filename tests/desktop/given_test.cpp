// Importing a row from a page, and pasting a font size, by mouse and keyboard. Copied stylesheets are
// compared with the command line, which the engine tests compare with browsers. The pages are the invented
// themes of those tests.
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QToolButton>
#include <QtTest>
#include <algorithm>

#include "axis/size_plot.h"
#include "compare/check_offer.h"
#include "document/wording.h"
#include "page_import/import_dialog.h"
#include "panels/side_panel.h"
#include "panels/size_paste.h"
#include "project/cascade.h"
#include "project/file.h"
#include "sheet_compare/sheet_dialog.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

class GivenTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/base.tenter.json"));
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    }
    void cleanup() { window_.reset(); }

    void importsTheRowOfAPastedPageAsOneStep() {
        const project::Project before = document().project();
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr && !importButton(dialog)->isEnabled());
        paste(dialog, theme("almanac"));
        QVERIFY(dialog->reader().result().row.has_value());
        QCOMPARE(dialog->reader().result().row->cards.size(), std::size_t{3});
        QVERIFY(document().project() == before);
        QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
        QVERIFY(!dialog->isVisible());
        QVERIFY(document().project().row().given.has_value());
        QCOMPARE(document().project().row().cards.size(), std::size_t{3});
        QCOMPARE(project::plainText(heading(0)), std::string("December: long nights, short walks"));
        QCOMPARE(document().undoStack().count(), 1);
        document().undoStack().undo();
        QVERIFY(document().project() == before);
    }

    // themes.json has the root size and container of each theme, read by hand.
    void importsTheRootSizeAndContainerOfThePage() {
        importRow("almanac");
        const project::Page& page = document().project().page;
        QCOMPARE(page.rootSize, units::RootSize(10));
        QCOMPARE(page.container.maxWidth.css(), std::string("1280px"));
        QVERIFY(page.container.padding.left && page.container.padding.left->css() == "50px");
        document().undoStack().undo();
        QCOMPARE(document().project().page.rootSize, units::RootSize(16));
    }

    void importsTypedThemeCss() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog,
              "<ul><li><h3>Low water</h3><p>At noon, on the steps.</p></li>"
              "<li><h3>High water</h3><p>At six, by the wall.</p></li></ul>");
        auto* fold = dialog->findChild<QToolButton*>("theme");
        QVERIFY(fold != nullptr && fold->text().contains("Paste or write"));
        QTest::mouseClick(fold, Qt::LeftButton);
        auto* css = named<QPlainTextEdit>(dialog, "Theme CSS that applies to the row");
        QVERIFY(css->isVisible());
        css->setFocus();
        const QString typed = "html { font-size: 62.5% } li { float: left }";
        QTest::keyClicks(css, typed);
        QTRY_VERIFY(!dialog->reader().isReading());
        QCOMPARE(css->toPlainText(), typed);
        QCOMPARE(dialog->reader().result().adopted->project.page.rootSize, units::RootSize(10));
        importButton(dialog)->click();
        QVERIFY(document().project().row().given->theme.str().find("float: left") != std::string::npos);
        QCOMPARE(document().project().page.rootSize, units::RootSize(10));
    }

    // Rules of pasted CSS have no file, so the box names their line and column.
    void showsThePlacesOfPastedRulesInWords() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog,
              "<style>html { font-size: 62.5% } li { float: left }</style>"
              "<ul><li><h3>Low water</h3><p>At noon, on the steps.</p></li>"
              "<li><h3>High water</h3><p>At six, by the wall.</p></li></ul>");
        QTest::mouseClick(dialog->findChild<QToolButton*>("theme"), Qt::LeftButton);
        const QString css = named<QPlainTextEdit>(dialog, "Theme CSS that applies to the row")->toPlainText();
        QVERIFY2(css.contains("li { float: left; } /* line 1, column 34 of the pasted text */"),
                 qPrintable(css));
        QVERIFY(!css.contains("/* :"));
    }

    void changesNothingWhenCancelled() {
        const project::Project before = document().project();
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, theme("almanac"));
        QTest::keyClick(dialog, Qt::Key_Escape);
        QVERIFY(!dialog->isVisible());
        QVERIFY(document().project() == before && !document().isModified());
        // The pasted page is still in the dialog.
        dialog = openDialog();
        QVERIFY(dialog != nullptr && dialog->isVisible() && dialog->reader().result().row.has_value());
    }

    void listsTheDeclarationsOfAPageForANewProject() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, theme("almanac"));
        newProject(dialog);
        auto* table = dialog->findChild<page_import::FoundTable*>();
        QVERIFY(table != nullptr && table->topLevelItemCount() > 3);
        const QTreeWidgetItem* row = table->topLevelItem(0);
        QCOMPARE(row->text(page_import::FoundTable::Property), QString("Row"));
        QVERIFY(row->childCount() > 0);
        for (int i = 0; i < row->childCount(); ++i)
            QVERIFY(!row->child(i)->text(page_import::FoundTable::Rule).isEmpty());
    }

    void importsAStylesheetAsANewProject() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, QString::fromUtf8(deck));
        // A stylesheet has no cards for the open project, and none to select.
        QVERIFY(!importButton(dialog)->isEnabled());
        QVERIFY(!named<QLineEdit>(dialog, "Selector of the cards")->isVisible());
        newProject(dialog);
        QVERIFY(importButton(dialog)->isEnabled());
        QVERIFY(dialog->findChild<page_import::FoundTable*>()->isVisible());
        const project::Project& made = dialog->reader().result().adopted->project;
        QCOMPARE(made.row().cards.size(), std::size_t{3});
        QCOMPARE(made.row().style.card.background->css(), std::string("#abc"));
        QVERIFY(!made.row().given.has_value());
    }

    void appliesChosenSettingsOfAPastedStylesheetAsOneStep() {
        const project::Project before = document().project();
        window_->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window_.get()));
        QGuiApplication::clipboard()->setText(QString::fromUtf8(deck));
        window_->setFocus();
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier);
        auto* dialog = window_->findChild<sheet_compare::SheetDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        QTreeWidget& table = dialog->table();
        QVERIFY(table.topLevelItemCount() > 2);
        QTreeWidgetItem* gap = nullptr;
        for (int i = 0; i < table.topLevelItemCount(); ++i) {
            QCOMPARE(table.topLevelItem(i)->checkState(0), Qt::Checked);
            if (table.topLevelItem(i)->text(0).startsWith("Row › Column gap")) gap = table.topLevelItem(i);
        }
        QVERIFY(gap != nullptr);
        QCOMPARE(gap->text(2), QString("24\u00A0px"));
        QVERIFY(document().project() == before);
        pressed(dialog, "Select &none")->click();
        QVERIFY(!pressed(dialog, "A&pply")->isEnabled());
        gap->setCheckState(0, Qt::Checked);
        pressed(dialog, "A&pply")->click();
        QVERIFY(!dialog->isVisible());
        QCOMPARE(document().undoStack().count(), 1);
        QCOMPARE(document().undoStack().undoText(), QString("Apply settings of stylesheet"));
        const project::Variant& variant = document().project().row().variants.front();
        const project::Settings wide =
            project::resolve(document().project(), variant, variant.bands.size() - 1);
        QCOMPARE(wide.row.columnGap->css(), std::string("24px"));
        QVERIFY(wide.card.background->css() != "#abc");
        document().undoStack().undo();
        QVERIFY(document().project() == before);
    }

    void changesNothingIfTheComparisonIsCancelled() {
        const project::Project before = document().project();
        window_->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window_.get()));
        QGuiApplication::clipboard()->setText(QString::fromUtf8(deck));
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier);
        auto* dialog = window_->findChild<sheet_compare::SheetDialog*>();
        QVERIFY(dialog != nullptr && dialog->isVisible());
        QTest::keyClick(dialog, Qt::Key_Escape);
        QVERIFY(!dialog->isVisible());
        QVERIFY(document().project() == before && !document().isModified());
        // Other text is no stylesheet.
        QGuiApplication::clipboard()->setText("Low water at noon");
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier);
        QVERIFY(!dialog->isVisible());
    }

    void changesTheRoleOfAnElement() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, theme("almanac"));
        const auto& row = [dialog]() -> const markup::GivenRow& { return *dialog->reader().result().row; };
        const markup::GivenCard& card = row().cards[0];
        const auto body = std::ranges::find(card.parts, "body", &markup::GivenPart::role);
        QVERIFY(body != card.parts.end());
        // Select the element in the drawing, then choose its role.
        QAbstractButton* box = dialog->findChild<page_import::CardDrawing*>()->boxOf(body->node);
        QVERIFY(box != nullptr);
        QTest::mouseClick(box, Qt::LeftButton);
        const QModelIndex chosen = named<QTreeView>(dialog, "Elements of the row")->currentIndex();
        QCOMPARE(page_import::ElementModel::nodeOf(chosen), body->node);
        chooseRole(dialog, "Heading");
        for (const markup::GivenCard& one : row().cards)
            QCOMPARE(row().tree[std::ranges::find(one.parts, "heading", &markup::GivenPart::role)->node].name,
                     std::string("p"));
        importButton(dialog)->click();
        QVERIFY(project::plainText(heading(0)).starts_with("Low water falls at noon"));
    }

    void appliesATypedSelectorAndReportsAWrongOne() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, theme("almanac"));
        const markup::GivenCard card = dialog->reader().result().row->cards[0];
        dialog->row().select(std::ranges::find(card.parts, "heading", &markup::GivenPart::role)->node);
        auto* selector = named<QLineEdit>(dialog, "Selector of all elements with this role");
        auto* problem = named<QLabel>(dialog, "Problem with the last change");
        type(selector, ".month h3 > [");
        QVERIFY2(problem->isVisible() && problem->text().startsWith("Column "), qPrintable(problem->text()));
        type(selector, ".nowhere");
        QVERIFY2(problem->text().contains("selects nothing"), qPrintable(problem->text()));
        QVERIFY(importButton(dialog)->isEnabled());
        type(selector, ".month h3 a");
        QVERIFY2(!problem->isVisible(), qPrintable(problem->text()));
        QCOMPARE(*dialog->reader().result().adopted->project.row().given->find("heading"),
                 std::string(".month h3 a"));
    }

    void reportsWhyNoRowWasFound() {
        page_import::ImportDialog* dialog = openDialog();
        paste(dialog, "nothing of the kind");
        auto* why = named<QLabel>(dialog, "Why no row was found");
        QVERIFY2(why->isVisible() && why->text().contains("row of cards"), qPrintable(why->text()));
        QVERIFY(!importButton(dialog)->isEnabled());
        // A page above the size limit is read on a background thread and refused.
        dialog->reader().setPage(QByteArray(21 << 20, '<'), {}, true);
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
        QVERIFY2(why->text().contains("large"), qPrintable(why->text()));
    }

    void readsALargePageOnABackgroundThread() {
        page_import::ImportDialog* dialog = openDialog();
        const QByteArray page = theme("almanac").toUtf8();
        const QByteArray large = page + "<!-- " + QByteArray(300 * 1000, 'x') + " -->";
        dialog->reader().setPage(large, {}, true);
        QVERIFY(dialog->reader().isReading() && !importButton(dialog)->isEnabled());
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
        QCOMPARE(dialog->reader().result().row->cards.size(), std::size_t{3});
    }

    // The height of the page is not known from its CSS; the browser measures in a frame 900 px high.
    void importsWhatABrowserMeasures() {
        const QString chromium = QStandardPaths::findExecutable("chromium");
        if (chromium.isEmpty()) QSKIP("Chromium is not installed");
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr);
        dialog->measuring().setBrowsers({{compare::Browser::Kind::Chromium, "Chromium", chromium}});
        paste(dialog, pageOfHeight());
        QVERIFY(reportHas(dialog, "max-width: 60vh (line 1 of the pasted text), which is not supported"));
        QVERIFY(!dialog->reader().result().adopted->project.row().given->unread.empty());
        measureBox(dialog)->click();
        QVERIFY(dialog->reader().isMeasuring() && !importButton(dialog)->isEnabled());
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 120000);
        QVERIFY(reportHas(dialog, "width of the container differs"));
        QVERIFY(!reportHas(dialog, "not supported"));
        importButton(dialog)->click();
        QCOMPARE(document().project().page.container.width, units::Length::px(540));
        QVERIFY(document().project().row().given->unread.empty());
    }

    void stopsTheBrowserThatMeasures() {
        QTemporaryDir folder;
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr);
        dialog->measuring().setBrowsers({script(folder, "sleep 300")});
        paste(dialog, pageOfHeight());
        measureBox(dialog)->click();
        QVERIFY(dialog->reader().isMeasuring());
        for (auto* button : dialog->measuring().findChildren<QPushButton*>())
            button->click();
        QVERIFY(!dialog->reader().isMeasuring() && !measureBox(dialog)->isChecked());
        QVERIFY(importButton(dialog)->isEnabled());
        QVERIFY(reportHas(dialog, "not supported"));
    }

    void reportsWhyTheBrowserDidNotMeasure() {
        QTemporaryDir folder;
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr);
        dialog->measuring().setBrowsers({script(folder, "echo 'no display of any kind' >&2; exit 3")});
        paste(dialog, pageOfHeight());
        measureBox(dialog)->click();
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isMeasuring(), 60000);
        const auto* state = named<QLabel>(dialog, "State of the measuring");
        QVERIFY2(state->text().contains("no display of any kind"), qPrintable(state->text()));
        QVERIFY(importButton(dialog)->isEnabled());
        dialog->measuring().setBrowsers({});
        QVERIFY(!measureBox(dialog)->isEnabled());
    }

    void offersToCheckTheRowOfASavedPage() {
        auto* offer = window_->findChild<compare::CheckOffer*>();
        importRow("almanac");
        QVERIFY(!offer->isVisible());  // pasted: there is no page to check in
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr);
        dialog->openPage(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/almanac.html"));
        QTRY_VERIFY_WITH_TIMEOUT(importButton(dialog)->isEnabled(), 5000);
        importButton(dialog)->click();
        const std::vector<compare::Browser> browsers = compare::installedBrowsers();
        if (browsers.empty()) QSKIP("no browser is installed");
        QVERIFY(offer->isVisible());
        const auto* text = named<QLabel>(offer, "Check of the imported row");
        QVERIFY2(text->text().contains("almanac.html"), qPrintable(text->text()));
        const QList<QPushButton*> buttons = offer->findChildren<QPushButton*>();
        buttons.first()->click();
        QTRY_VERIFY_WITH_TIMEOUT(text->text().contains("agrees with Tenter at all"), 240000);
        QVERIFY2(text->text().contains("100\u00A0% of the parts agree"), qPrintable(text->text()));
        document().startNew(document().project(), {});
        QVERIFY(!offer->isVisible());
    }

    void copiesTheStylesheetThatTheCommandLinePrints() {
        importRow("almanac");
        QTemporaryDir folder;
        const QString file = folder.filePath("taken.tenter.json");
        // The command line reads the project from a file.
        QFile out(file);
        QVERIFY(out.open(QIODevice::WriteOnly));
        out.write(QByteArray::fromStdString(project::write(document().project())));
        out.close();
        QTest::keyClick(window_.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
        const QByteArray copied = QGuiApplication::clipboard()->text().toUtf8();
        QVERIFY(copied.contains(".month"));
        QProcess process;
        const std::string variant = document().project().row().variants[session().view.variant()].className;
        process.start(TENTER_CLI, {"stylesheet", file, "--variant", QString::fromStdString(variant)});
        QVERIFY(process.waitForFinished());
        QCOMPARE(copied, process.readAllStandardOutput());
    }

    void cardsOfAnImportedRowCannotBeAddedOrRemoved() {
        const auto buttonIsThere = [&](const QString& name) {
            const auto buttons = window_->findChildren<QAbstractButton*>();
            return std::ranges::any_of(buttons, [&](const QAbstractButton* button) {
                return button->accessibleName() == name && button->isVisible();
            });
        };
        auto* side = window_->findChild<panels::SidePanel*>();
        side->openPanel(panels::PanelKind::Words);
        QVERIFY(buttonIsThere("Add card after this one"));
        importRow("almanac");
        QCoreApplication::processEvents();
        QTRY_VERIFY(!buttonIsThere("Add card after this one") && !buttonIsThere("Remove heading"));
        auto* whose = named<QLabel>(window_.get(), "Markup of the row");
        QVERIFY(whose->isVisible());
        // There is no markup of Tenter’s own to copy, and that is said.
        QGuiApplication::clipboard()->setText("before");
        action("Copy markup")->trigger();
        QCOMPARE(QGuiApplication::clipboard()->text(), QString("before"));
        QVERIFY(
            named<QLabel>(window_.get(), "Last message")->text().contains("keeps the markup of its page"));
        QAction* own = action("Use Tenter’s markup");
        QVERIFY(own != nullptr && own->isEnabled());
        own->trigger();
        QCoreApplication::processEvents();
        QVERIFY(!document().project().row().given && !own->isEnabled() && !whose->isVisible());
        QCOMPARE(document().project().row().cards.size(), std::size_t{3});
        QTRY_VERIFY(buttonIsThere("Add card after this one") && buttonIsThere("Remove heading"));
        document().undoStack().undo();
        QVERIFY(document().project().row().given && own->isEnabled());
    }

    // CSS Values 4 § 10.2: 1rem + 1vw is 25.6 px at 960 px, and reaches 2rem at 1600 px.
    void appliesAPastedClampAsOneStep() {
        auto* paste = openPaste();
        QVERIFY(paste != nullptr);
        auto* text = paste->findChild<QPlainTextEdit*>();
        const project::Project before = document().project();
        const QImage plain = plot()->grab().toImage();
        text->setPlainText("h3 { font-size: clamp(1.2rem, 1rem + 1vw, 2rem) }");
        QVERIFY(session().plot.sizePreview().has_value());
        QVERIFY(plot()->grab().toImage() != plain);
        const auto* says = named<QLabel>(paste, "What the pasted size means");
        // From the narrow end of the band, whose size it replaces.
        const double from = panels::scopeWidths(session(), "heading", project::Follow::Viewport).from;
        QVERIFY(from > 320 && from < 1600);
        QVERIFY2(says->text().startsWith("Exact: " + pixels(16 + from / 100) + " where the viewport is " +
                                         pixels(from) + " wide"),
                 qPrintable(says->text()));
        QVERIFY(document().project() == before);
        QTest::keyClick(text, Qt::Key_Return);
        QCOMPARE(document().undoStack().count(), 1);
        QVERIFY(!session().plot.sizePreview().has_value() && !paste->isVisible());
        // The band sets the size itself, so it is changed there.
        const project::Variant& variant = document().project().row().variants[session().view.variant()];
        const auto size = project::resolve(document().project(), variant, session().layouts.band())
                              .text.find("heading")
                              ->size;
        QVERIFY(size && qAbs(size->sizeAt(from) - 16 - from / 100) < 0.01 &&
                qAbs(size->sizeAt(1600) - 32) < 0.01);
        document().undoStack().undo();
        QVERIFY(document().project() == before);
    }

    void reportsWhereAPastedSizeIsWrong() {
        auto* paste = openPaste();
        auto* text = paste->findChild<QPlainTextEdit*>();
        text->setPlainText("font-size:\n  clamp(1rem, 2vw)");
        const auto* says = named<QLabel>(paste, "What the pasted size means");
        QVERIFY2(says->text().startsWith("Line 2, column "), qPrintable(says->text()));
        QVERIFY(!session().plot.sizePreview().has_value());
        QTest::keyClick(text, Qt::Key_Escape);
        QVERIFY(!paste->isVisible() && !document().isModified());
    }

private:
    Document& document() { return session().document; }
    Session& session() { return window_->session; }
    /// The text of a card's heading.
    project::Copy heading(std::size_t card) {
        for (const project::Part& part : document().project().row().cards[card].parts)
            if (const auto* text = std::get_if<project::TextPart>(&part);
                text != nullptr && text->role == "heading")
                return text->copy;
        return {};
    }
    axis::SizePlot* plot() { return window_->findChild<axis::SizePlot*>(); }

    static QString theme(const QString& name) {
        QFile file(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/") + name + ".html");
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
    }

    template <class Widget>
    static Widget* named(QWidget* in, const QString& name) {
        for (auto* one : in->findChildren<Widget*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }

    QAction* action(const QString& text) {
        for (const QMenu* menu : window_->menuBar()->findChildren<QMenu*>())
            for (QAction* one : menu->actions())
                if (one->text().remove(QLatin1Char('&')) == text) return one;
        return nullptr;
    }

    page_import::ImportDialog* openDialog() {
        window_->activateWindow();
        if (!QTest::qWaitForWindowActive(window_.get())) return nullptr;
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
        auto* dialog = window_->findChild<page_import::ImportDialog*>();
        return dialog != nullptr && QTest::qWaitFor([dialog] { return dialog->isVisible(); }) ? dialog
                                                                                              : nullptr;
    }

    static constexpr const char* deck =
        ".deck { display: grid; grid-template-columns: repeat(3, 1fr); gap: 24px }\n"
        ".deck article { padding: 18px; background: #abc } .deck h3 { font-size: 21px }\n";

    static void newProject(page_import::ImportDialog* dialog) {
        for (auto* choice : dialog->findChildren<QRadioButton*>())
            if (choice->text() == "A &new project") choice->setChecked(true);
        QVERIFY(dialog->reader().isIntoNew());
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
    }

    static QPushButton* pressed(QDialog* dialog, const QString& text) {
        for (auto* button : dialog->findChildren<QPushButton*>())
            if (button->text() == text) return button;
        return nullptr;
    }

    static QPushButton* importButton(QDialog* dialog) {
        for (auto* button : dialog->findChildren<QPushButton*>())
            if (button->text() == "&Import row") return button;
        return nullptr;
    }

    static QString pageOfHeight() {
        return QStringLiteral(
            "<!doctype html><html><head><style>body { margin: 0 } .site { max-width: 60vh; margin: 0 auto }"
            "</style></head><body><main class=\"site\"><div class=\"walks-3\">"
            "<div><h3>Low tide</h3><p>Bring boots.</p><a href=\"#a\">Walk</a></div>"
            "<div><h3>High tide</h3><p>Stay away.</p><a href=\"#b\">Wait</a></div>"
            "</div></main></body></html>");
    }
    /// A browser that runs `commands` of the shell instead.
    static compare::Browser script(const QTemporaryDir& folder, const QByteArray& commands) {
        QFile file(folder.filePath("browser"));
        if (!file.open(QIODevice::WriteOnly)) return {};
        file.write("#!/bin/sh\n" + commands + "\n");
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        return {compare::Browser::Kind::Chromium, "Chromium", file.fileName()};
    }
    static QCheckBox* measureBox(page_import::ImportDialog* dialog) {
        return dialog->measuring().findChild<QCheckBox*>();
    }
    static bool reportHas(QDialog* dialog, const QString& words) {
        const auto* report = named<QListWidget>(dialog, "Import report");
        return !report->findItems(words, Qt::MatchContains).isEmpty();
    }

    static void paste(page_import::ImportDialog* dialog, const QString& html) {
        QGuiApplication::clipboard()->setText(html);
        auto* box = dialog->findChild<page_import::PageBox*>();
        box->setFocus();
        QTest::keyClick(box, Qt::Key_V, Qt::ControlModifier);
        QVERIFY(!box->toPlainText().isEmpty());
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 5000);
    }

    static void chooseRole(QDialog* dialog, const QString& title) {
        auto* roles = named<QComboBox>(dialog, "Role of the selected element, in every card");
        const int index = roles->findText(title);
        QVERIFY(index >= 0);
        roles->setCurrentIndex(index);
        Q_EMIT roles->activated(index);
    }

    static void type(QLineEdit* field, const QString& text) {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

    void importRow(const QString& name) {
        page_import::ImportDialog* dialog = openDialog();
        QVERIFY(dialog != nullptr);
        paste(dialog, theme(name));
        importButton(dialog)->click();
        QVERIFY(document().project().row().given.has_value());
        window_->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(window_.get()));
    }

    panels::SizePaste* openPaste() {
        session().scope.setLayer(project::CascadeLayer::Style);
        session().selection.selectRole("heading");
        window_->findChild<panels::SidePanel*>()->openPanel(panels::PanelKind::Text);
        QCoreApplication::processEvents();
        for (auto* button : window_->findChildren<QPushButton*>())
            if (button->text() == "Paste size…") button->click();
        auto* paste = window_->findChild<panels::SizePaste*>();
        return paste != nullptr && paste->isVisible() ? paste : nullptr;
    }

    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::GivenTest)
#include "given_test.moc"
