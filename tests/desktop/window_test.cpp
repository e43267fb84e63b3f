// The main window, operated by mouse and keyboard. Copied stylesheets are compared with those of the command
// line, which other tests compare with browsers.
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QHash>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QProcess>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QtTest>

#include "axis/axis_pane.h"
#include "axis/cursor.h"
#include "axis/handle.h"
#include "axis/size_plot.h"
#include "controls/number_field.h"
#include "controls/segments.h"
#include "panels/side_panel.h"
#include "row/ink.h"
#include "row/row_view.h"
#include "showing.h"
#include "window/main_window.h"
#include "window/setting_search.h"

namespace tenter::desktop {

class WindowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(sample("shore-walks"));
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        axis_ = window_->findChild<axis::AxisPane*>();
        row_ = window_->findChild<row::RowView*>();
        QVERIFY(axis_ != nullptr && row_ != nullptr);
    }
    void cleanup() { window_.reset(); }

    void opensAProjectAtActualSize() {
        QVERIFY(window_->windowTitle().contains("shore-walks"));
        QCOMPARE(row_->zoom(), 1.0);
        QVERIFY(!row_->fit());
    }

    void dragsTheWidthAcrossTheAxis() {
        const double from = session().view.width();
        const int y = axis_->height() - 40;
        const auto point = [&](double width) { return QPoint(qRound(axis_->scale().x(width)), y); };
        QTest::mousePress(axis_, Qt::LeftButton, {}, point(from));
        for (const double width : {900.0, 640.0, 420.0})
            QTest::mouseMove(axis_, point(width));
        QTest::mouseRelease(axis_, Qt::LeftButton, {}, point(420));
        const double pixel = axis_->scale().width(200) - axis_->scale().width(199);
        QVERIFY(qAbs(session().view.width() - 420) <= pixel + 0.5);
        QVERIFY(axis_->findChild<axis::Cursor*>()->text().contains("1 column"));
        // In one column the row is as high as all its cards: the range of the scroll bar shows it.
        QCOMPARE(row_->verticalScrollBar()->maximum(),
                 qCeil(session().layouts.layout().pageHeight) - row_->viewport()->height());
        QVERIFY(!document().isModified());
    }

    void dragsTheWidthByThePagesEdge() {
        session().view.setWidth(600);
        const QPointF origin = row_->pageAt(QPointF(0, 0));
        const QPoint edge(qRound(600 - origin.x()), 100);
        QTest::mousePress(row_->viewport(), Qt::LeftButton, {}, edge);
        QTest::mouseMove(row_->viewport(), edge + QPoint(-90, 0));
        QTest::mouseRelease(row_->viewport(), Qt::LeftButton, {}, edge + QPoint(-90, 0));
        QCOMPARE(session().view.width(), 510.0);
    }

    void drawsThePlotsAnewInAWiderWindow() {
        window_->resize(1720, 900);
        QTest::qWait(200);
        auto* plot = window_->findChild<axis::SizePlot*>();
        QVERIFY(plot != nullptr);
        const QImage image = plot->grab().toImage();
        const row::Ink ink = row::Ink::of(axis_->palette());
        const int left = qRound(axis_->scale().left()) + 2;
        const int right = qRound(axis_->scale().right()) - 2;
        int lines = 0;
        for (int y = 0; y < image.height(); ++y) {
            // A grid line is faint and may lie between two rows of pixels. Hatching is not horizontal, and
            // the edge of a curve has its colour.
            const auto isFaint = [&](int x) {
                const QColor pixel = image.pixelColor(x, y);
                const double contrast = row::contrast(pixel, ink.ground);
                return contrast >= 1.02 && contrast <= 1.4 && std::abs(pixel.red() - pixel.blue()) <= 8;
            };
            if (!isFaint(left) || !isFaint(left + 3) || !isFaint(left + 6)) continue;
            ++lines;
            QVERIFY(image.pixelColor(right, y) != ink.ground);
        }
        QVERIFY(lines > 1);
    }

    void stepsTheWidthByKeys() {
        axis_->setFocus();
        const double from = session().view.width();
        QTest::keyClick(axis_, Qt::Key_Right);
        QCOMPARE(session().view.width(), from + 1);
        QTest::keyClick(axis_, Qt::Key_Left, Qt::ShiftModifier);
        QCOMPARE(session().view.width(), from - 9);
    }

    void usesKeysThatTheFocusedWidgetDoesNot() {
        // Left and Right change the width, but not while a field or the tabs use them.
        row_->setFocus();
        const double from = session().view.width();
        QTest::keyClick(row_, Qt::Key_Right, Qt::ShiftModifier);
        QCOMPARE(session().view.width(), from + 10);
        QTest::keyClick(row_, Qt::Key_Left);
        QCOMPARE(session().view.width(), from + 9);
        for (QWidget* user : {static_cast<QWidget*>(window_->findChild<window::SettingSearch*>()),
                              static_cast<QWidget*>(window_->findChild<QTabBar*>())}) {
            QVERIFY(user != nullptr);
            user->setFocus();
            QTest::keyClick(user, Qt::Key_Right);
            QTest::keyClick(user, Qt::Key_Left, Qt::ShiftModifier);
            QVERIFY2(session().view.width() == from + 9, user->metaObject()->className());
        }
        // Enter clicks the button that has the focus, and only that.
        QAbstractButton* const firefox = named<QAbstractButton>("Line breaks as in Firefox");
        QVERIFY(firefox != nullptr && &session().view.profile() != &text::gecko());
        firefox->setFocus();
        QTest::keyClick(firefox, Qt::Key_Return);
        QCOMPARE(&session().view.profile(), &text::gecko());
        QAbstractButton* const chromium = named<QAbstractButton>("Line breaks as in Chromium");
        row_->setFocus();
        QTest::keyClick(row_, Qt::Key_Return);
        QCOMPARE(&session().view.profile(), &text::gecko());
        chromium->setFocus();
        QTest::keyClick(chromium, Qt::Key_Enter, Qt::KeypadModifier);
        QCOMPARE(&session().view.profile(), &text::blink());
        // F2 reaches the window from a field, too.
        document().edit("Size", [](project::Project& project) { project.row().headingLevel = 5; });
        auto* const search = window_->findChild<window::SettingSearch*>();
        search->setFocus();
        QTest::keyPress(search, Qt::Key_F2);
        QVERIFY(session().shown.showsSaved());
        QTest::keyRelease(search, Qt::Key_F2);
        QVERIFY(session().shown.showsDocument());
        QTest::keyPress(search, Qt::Key_F2);
        row_->setFocus();
        QTest::keyRelease(row_, Qt::Key_F2);
        QVERIFY(session().shown.showsDocument());
    }

    void typesASizeAndTakesItBack() {
        const QByteArray before = stylesheet();
        controls::NumberField* size = field("Heading font size at the smaller width");
        QVERIFY(size != nullptr);
        const double least = session().layouts.row().fontSize(heading(), 330);
        size->setFocus();
        size->selectAll();
        QTest::keyClicks(size, "23.5");
        QTest::keyClick(size, Qt::Key_Return);
        QVERIFY(document().isModified());
        QVERIFY(qAbs(session().layouts.row().fontSize(heading(), 330) - least) > 0.5);
        QVERIFY(document().undoStack().undoText().contains("size", Qt::CaseInsensitive));
        QVERIFY(stylesheet() != before);
        document().undoStack().undo();
        QCOMPARE(session().layouts.row().fontSize(heading(), 330), least);
        QCOMPARE(stylesheet(), before);
        document().undoStack().redo();
        QVERIFY(stylesheet() != before);
    }

    void waitsWithAValueOnItsWay() {
        controls::NumberField* size = field("Heading font size at the smaller width");
        QVERIFY(size != nullptr);
        const double before = session().layouts.row().fontSize(heading(), 330);
        size->setFocus();
        size->selectAll();
        QTest::keyClicks(size, "2");
        QCOMPARE(session().layouts.row().fontSize(heading(), 330), before);
        QTest::keyClick(size, Qt::Key_Escape);
        QCOMPARE(session().layouts.row().fontSize(heading(), 330), before);
        QVERIFY(!document().isModified());
    }

    void dragsARampsEndAsOneStep() {
        axis::Handle* end = upperEnd();
        QVERIFY(end != nullptr);
        const double before = session().layouts.row().fontSize(heading(), 1880);
        const int steps = document().undoStack().count();
        QTest::mousePress(end, Qt::LeftButton, {}, end->rect().center());
        for (int y = -1; y >= -6; --y)
            QTest::mouseMove(end, end->rect().center() + QPoint(0, y));
        QTest::mouseRelease(end, Qt::LeftButton, {}, end->rect().center());
        const double after = session().layouts.row().fontSize(heading(), 1880);
        QVERIFY2(after > before, qPrintable(QString("%1 then %2").arg(before).arg(after)));
        QCOMPARE(document().undoStack().count(), steps + 1);
        document().undoStack().undo();
        QCOMPARE(session().layouts.row().fontSize(heading(), 1880), before);
    }

    // A pixel is more than a px of the viewport: the round number that it covers is meant.
    void dragsARampsEndToRoundNumbers() {
        axis::Handle* end = upperEnd();
        const double pixel = axis_->scale().width(301) - axis_->scale().width(300);
        QVERIFY(pixel > 1);
        const QPoint centre = end->mapTo(axis_, end->rect().center());
        const int toRight = qRound(axis_->scale().x(1500)) - centre.x();
        QTest::mousePress(end, Qt::LeftButton, {}, end->rect().center());
        QTest::mouseMove(end, end->rect().center() + QPoint(toRight / 2, 0));
        QTest::mouseMove(
            end, end->rect().center() +
                     QPoint(qRound(axis_->scale().x(1500)) - end->mapTo(axis_, end->rect().center()).x(), 0));
        QTest::mouseRelease(end, Qt::LeftButton, {}, end->rect().center());
        const units::Ramp ramp = *session()
                                      .layouts.row()
                                      .settings(session().layouts.row().bandAt(1880))
                                      .text.find("heading")
                                      ->size;
        const double width = ramp.to().width;
        QVERIFY2(qAbs(width - 1500) < 4 * pixel, qPrintable(QString::number(width)));
        QVERIFY2(std::fmod(width, 5) == 0 || std::fmod(width, 2) == 0, qPrintable(QString::number(width)));
        // Half px: as round as a pixel of the plot allows.
        QCOMPARE(ramp.to().size * 10, std::round(ramp.to().size * 10));
    }

    void movesARampsEndByKeys() {
        axis::Handle* end = upperEnd();
        const double before = session().layouts.row().fontSize(heading(), 1880);
        end->setFocus();
        QTest::keyClick(end, Qt::Key_Up, Qt::ShiftModifier);
        QVERIFY(qAbs(session().layouts.row().fontSize(heading(), 1880) - before - 1) < 0.02);
    }

    void switchesTheVariant() {
        auto* variants = window_->findChild<controls::Segments*>();
        QVERIFY(variants != nullptr);
        const std::size_t cards = session().layouts.layout().cards.size();
        session().view.setWidth(1400);
        variants->button(2)->click();
        QCOMPARE(session().view.variant(), std::size_t{2});
        QVERIFY(axis_->findChild<axis::Cursor*>()->text().contains("4 columns"));
        QCOMPARE(session().layouts.layout().cards.size(), cards);
    }

    void copiesWhatTheCommandLinePrints() {
        for (const std::size_t variant : {std::size_t{0}, std::size_t{1}}) {
            session().view.setVariant(variant);
            QGuiApplication::clipboard()->clear();
            QTest::keyClick(window_.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
            const QByteArray copied = QGuiApplication::clipboard()->text().toUtf8();
            QVERIFY(!copied.isEmpty());
            QCOMPARE(copied, commandLine(sample("shore-walks"), variant));
        }
    }

    void copiesTheSelectedTextsSizeAlone() {
        session().selection.selectRole("heading");
        QTest::keyClick(window_.get(), Qt::Key_C, Qt::ControlModifier | Qt::AltModifier);
        const QString size = QGuiApplication::clipboard()->text();
        QVERIFY2(size.startsWith("clamp("), qPrintable(size));
        QVERIFY(QString::fromUtf8(stylesheet()).contains(size));
    }

    void showsTheRowAsItWasSavedWhileAKeyIsHeld() {
        const double before = session().layouts.row().fontSize(heading(), 1880);
        document().edit("Size", [](project::Project& project) {
            project.row().style.text.of("heading").size = units::Ramp::flat(60);
            for (project::Variant& variant : project.row().variants)
                for (project::Band& band : variant.bands)
                    band.set.text.of("heading").size.reset();
        });
        QCOMPARE(session().layouts.row().fontSize(heading(), 1880), 60.0);
        QTest::keyPress(window_.get(), Qt::Key_F2);
        QCOMPARE(session().layouts.row().fontSize(heading(), 1880), before);
        QTest::keyRelease(window_.get(), Qt::Key_F2);
        QCOMPARE(session().layouts.row().fontSize(heading(), 1880), 60.0);
    }

    void savesWholeAndOpensAgain() {
        QTemporaryDir folder;
        const std::string file = folder.filePath("mine.tenter.json").toStdString();
        document().edit("Columns",
                        [](project::Project& project) { project.row().variants[0].set.row.columns = 2; });
        project::Problems problems;
        QVERIFY(document().saveAs(file, problems));
        QVERIFY(!document().isModified());
        const project::Project saved = document().project();
        window_->openFile(sample("night-sky"));
        window_->openFile(QString::fromStdString(file));
        QCOMPARE(project::write(document().project()), project::write(saved));
    }

    void reportsTheProblemsOfAFileAndKeepsTheOpenProject() {
        QTemporaryDir folder;
        QFile file(folder.filePath("broken.tenter.json"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(R"({"format": "tenter-project", "version": 1, "name": "x", "colums": 3})");
        file.close();
        const project::Project before = document().project();
        window_->openFile(file.fileName());
        QVERIFY(document().project() == before);
        auto* problems = window_->findChild<window::ProblemPanel*>();
        QVERIFY(problems != nullptr && problems->isVisible());
        QStringList texts;
        for (const auto* label : problems->findChildren<QLabel*>())
            texts << label->text();
        QVERIFY(texts.contains("broken.tenter.json could not be opened. The current project stays open."));
    }

    void takesAPictureDroppedOntoAnother() {
        const QString picture =
            QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/pictures/") +
            QDir(TENTER_SOURCE_DIR "/sample-projects/pictures").entryList({"*.jpg", "*.png"}).last();
        session().view.setWidth(1280);
        const std::string before = fileOf(1);
        const std::string first = fileOf(0);
        drop(picture, onPictureOf(1));
        QVERIFY(fileOf(1) != before);
        QCOMPARE(fileOf(0), first);
        QCOMPARE(document().undoStack().count(), 1);
        document().undoStack().undo();
        QCOMPARE(fileOf(1), before);
    }

    void makesACardOfEveryPictureDroppedOnARowWithoutCards() {
        document().edit("Remove cards", [](project::Project& project) { project.row().cards.clear(); });
        const int steps = document().undoStack().count();
        const QStringList files = pictures(3);
        drop(files, middleOfTheRow());
        const project::Project& project = document().project();
        QCOMPARE(project.row().cards.size(), std::size_t{3});
        for (std::size_t card = 0; card < 3; ++card) {
            const std::vector<project::Part>& parts = project.row().cards[card].parts;
            QCOMPARE(parts.size(), std::size_t{4});
            QCOMPARE(fileOf(card), files[static_cast<qsizetype>(card)].toStdString());
            const auto& picture = std::get<project::PicturePart>(parts[0]);
            QVERIFY(picture.width > 0 && picture.height > 0);
            for (const auto& [part, role] : {std::pair{1, "heading"}, {2, "body"}, {3, "button"}}) {
                const auto& text = std::get<project::TextPart>(parts[static_cast<std::size_t>(part)]);
                QCOMPARE(text.role, std::string(role));
                QVERIFY(!text.copy.empty() && !text.copy.front().text.empty());
            }
        }
        // The new cards are a valid project: it can be saved and read again.
        project::Problems problems;
        QTemporaryDir folder;
        const std::string saved = folder.filePath("dropped.tenter.json").toStdString();
        QVERIFY(document().saveAs(saved, problems) && project::read(saved, problems).has_value());
        document().undoStack().setIndex(steps + 1);
        document().undoStack().undo();
        QVERIFY(document().project().row().cards.empty());
    }

    void putsDroppedPicturesIntoTheCardUnderThemAndThoseThatFollow() {
        session().view.setWidth(1280);
        const QStringList files = pictures(2);
        const std::size_t cards = document().project().row().cards.size();
        const std::string first = fileOf(0);
        const std::string last = fileOf(3);
        drop(files, onPictureOf(1));
        QCOMPARE(document().project().row().cards.size(), cards);
        QCOMPARE(fileOf(0), first);
        QCOMPARE(fileOf(1), files[0].toStdString());
        QCOMPARE(fileOf(2), files[1].toStdString());
        QCOMPARE(fileOf(3), last);
        QCOMPARE(document().undoStack().count(), 1);
    }

    void saysWhichPicturesFoundNoCard() {
        session().view.setWidth(1280);
        const std::size_t cards = document().project().row().cards.size();
        const QStringList files = pictures(3);
        drop(files, onPictureOf(cards - 2));
        QCOMPARE(document().project().row().cards.size(), cards);
        QCOMPARE(fileOf(cards - 2), files[0].toStdString());
        QCOMPARE(fileOf(cards - 1), files[1].toStdString());
        QVERIFY(status("1 picture was not used"));
    }

    void changesNothingWhereOneOfSeveralFilesIsNoPicture() {
        document().edit("Remove cards", [](project::Project& project) { project.row().cards.clear(); });
        QTemporaryDir folder;
        QFile file(folder.filePath("notes.txt"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("no picture");
        file.close();
        drop(pictures(1) << file.fileName(), middleOfTheRow());
        QVERIFY(document().project().row().cards.empty());
        QVERIFY(status("notes.txt"));
    }

    void opensAProjectThatIsDropped() {
        drop(sample("night-sky"), window_->rect().center());
        QVERIFY(window_->windowTitle().contains("night-sky"));
    }

    void takesAFontThatIsDropped() {
        const auto faces = document().store().fonts().find({"Lato"}, 400, false);
        QVERIFY(!faces.empty());
        session().selection.selectRole("body");
        drop(QString::fromStdString(faces[0]->file().string()), window_->rect().center());
        QCOMPARE(document().project().fonts.size(), std::size_t{1});
        QCOMPARE(session().layouts.row().settings(0).text.find("body")->family->front(), std::string("Lato"));
        document().undoStack().undo();
        QVERIFY(document().project().fonts.empty());
    }

    void asksBeforeChangesAreLostAndSaysWhichOnes() {
        document().edit("Move breakpoint",
                        [](project::Project& project) { project.row().variants[0].bands[0].upTo = 555; });
        document().edit("Change columns",
                        [](project::Project& project) { project.row().variants[0].set.row.columns = 2; });
        const auto answer = [this](const QString& choice) {
            QStringList texts;
            QTimer::singleShot(0, this, [&texts, choice] {
                auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
                if (box == nullptr) return;
                texts = {box->text(), box->informativeText()};
                for (QAbstractButton* button : box->buttons())
                    if (button->text().remove('&') == choice) button->click();
            });
            window_->openFile(sample("night-sky"));
            return texts;
        };
        const QStringList asked{"Save the changes to “shore-walks.tenter.json”?",
                                "If you discard them, you lose 2 changes. The last one is “Change columns”."};
        QCOMPARE(answer("Cancel"), asked);
        QVERIFY(window_->windowTitle().contains("shore-walks") && document().isModified());
        document().undoStack().undo();
        QCOMPARE(answer("Discard changes").last(),
                 QString("If you discard them, you lose 1 change: “Move breakpoint”."));
        QVERIFY(window_->windowTitle().contains("night-sky") && !document().isModified());
    }

    void opensAgainWhatWasOpenLately() {
        window_->openFile(sample("night-sky"));
        for (QMenu* menu : window_->menuBar()->findChildren<QMenu*>()) {
            if (menu->title() != "Open &recent") continue;
            Q_EMIT menu->aboutToShow();
            QVERIFY(menu->actions().size() >= 2);
            QVERIFY(menu->actions()[0]->text().contains("night-sky"));
            menu->actions()[1]->trigger();
            QVERIFY(window_->windowTitle().contains("shore-walks"));
            return;
        }
        QFAIL("there is no such menu");
    }

    // A letter that two entries share only moves between them.
    void givesEveryEntryOfAMenuItsOwnLetter() {
        int seen = 0;
        QList<QMenu*> menus = window_->menuBar()->findChildren<QMenu*>();
        for (const QMenu* menu : menus) {
            QHash<QChar, QString> taken;
            for (const QAction* action : menu->actions()) {
                static const QRegularExpression mark("&([^&])");
                const auto match = mark.match(QString(action->text()).remove("&&"));
                if (!match.hasMatch()) continue;
                const QChar letter = match.captured(1).at(0).toLower();
                QVERIFY2(!taken.contains(letter),
                         qPrintable(menu->title() + ": " + taken.value(letter) + " / " + action->text()));
                taken[letter] = action->text();
                ++seen;
            }
        }
        QVERIFY2(seen > 40, qPrintable(QString::number(seen)));
    }

    // Only links have hover and focus; headings and paragraphs without links have neither.
    void offersHoverAndFocusOnlyWhereThereAreLinks() {
        auto* side = window_->findChild<panels::SidePanel*>();
        const auto shown = [&](const QString& title) {
            QCoreApplication::processEvents();
            for (const QLabel* label : side->findChildren<QLabel*>())
                if (label->text() == title && label->isVisible()) return true;
            return false;
        };
        side->openPanel(panels::PanelKind::Colour);
        session().selection.selectRole("heading");
        QVERIFY(!shown("Focus ring") && !shown("Hover"));
        session().selection.selectRole("button");
        QVERIFY(shown("Focus ring") && shown("Hover"));
    }

    void undoesEveryEditOfALongSession() {
        const project::Project before = document().project();
        for (int i = 0; i < 40; ++i) {
            session().scope.setLayer(static_cast<project::CascadeLayer>(i % 3));
            session().scope.setSetting("Gap", "row/columnGap", std::to_string(10 + i) + "px");
            session().scope.setSetting("Margin", "text/body/margin/top", std::to_string(i % 5) + "em");
        }
        QVERIFY(!(document().project() == before));
        while (document().undoStack().canUndo())
            document().undoStack().undo();
        QVERIFY(document().project() == before);
        QVERIFY(!document().isModified());
    }

private:
    /// Makes `count` picture files outside the project, of different sizes.
    QStringList pictures(int count) {
        QStringList files;
        for (int i = 0; i < count; ++i) {
            files << pictureFolder_.filePath(QString("dropped-%1.png").arg(i));
            QImage image(640 + i, 480, QImage::Format_RGB32);
            image.fill(Qt::darkCyan);
            image.save(files.last());
        }
        return files;
    }
    /// The file of a card's first picture.
    std::string fileOf(std::size_t card) {
        for (const project::Part& part : document().project().row().cards[card].parts)
            if (const auto* one = std::get_if<project::PicturePart>(&part)) return one->file;
        return {};
    }
    QPoint middleOfTheRow() {
        return row_->viewport()->mapTo(window_.get(), row_->viewport()->rect().center());
    }
    /// A point on the picture at the top of a card.
    QPoint onPictureOf(std::size_t card) {
        const std::size_t part = session().layouts.layout().cards[card].firstPart;
        row_->ensureVisible(part);
        const layout::LaidPart& laid = session().layouts.layout().parts[part];
        if (!laid.picture) return {};
        const QPointF origin = row_->pageAt(QPointF(0, 0));
        return row_->viewport()->mapTo(window_.get(),
                                       QPoint(qRound(laid.box.x + laid.box.width / 2 - origin.x()),
                                              qRound(laid.box.y + 20 - origin.y())));
    }
    /// True if the status bar shows `text`.
    bool status(const QString& text) {
        for (const auto* label : window_->findChildren<window::StatusNote*>())
            if (label->text().contains(text)) return true;
        return false;
    }
    void drop(const QString& file, const QPoint& at) { drop(QStringList{file}, at); }
    void drop(const QStringList& files, const QPoint& at) {
        QMimeData data;
        QList<QUrl> urls;
        for (const QString& file : files)
            urls << QUrl::fromLocalFile(file);
        data.setUrls(urls);
        QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window_.get(), &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent event(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window_.get(), &event);
        QVERIFY(event.isAccepted());
    }
    template <class T>
    T* named(const QString& accessibleName) {
        for (T* one : window_->findChildren<T*>())
            if (one->accessibleName() == accessibleName) return one;
        return nullptr;
    }
    Session& session() { return window_->session; }
    Document& document() { return session().document; }
    static QString sample(const QString& name) {
        return QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/") + name + ".tenter.json";
    }
    std::uint32_t heading() {
        const auto& roles = session().layouts.row().roles();
        return static_cast<std::uint32_t>(std::find(roles.begin(), roles.end(), "heading") - roles.begin());
    }
    QByteArray stylesheet() {
        QTest::keyClick(window_.get(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
        return QGuiApplication::clipboard()->text().toUtf8();
    }
    QByteArray commandLine(const QString& file, std::size_t variant) {
        QProcess process;
        const std::string name = document().project().row().variants[variant].className;
        process.start(TENTER_CLI, {"stylesheet", file, "--variant", QString::fromStdString(name)});
        process.waitForFinished();
        return process.readAllStandardOutput();
    }
    /// A number field of the Text panel by its accessible name, with the band at 330 px as edit scope.
    controls::NumberField* field(const QString& name) {
        session().view.setWidth(330);
        session().scope.setLayer(project::CascadeLayer::Band);
        session().selection.selectRole("heading");
        window_->findChild<panels::SidePanel*>()->openPanel(panels::PanelKind::Text);
        QCoreApplication::processEvents();
        QTest::qWait(50);
        for (auto* one : window_->findChildren<controls::NumberField*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }
    /// The handle of the heading's ramp at the largest visible width.
    axis::Handle* upperEnd() {
        session().selection.selectRole("heading");
        QCoreApplication::processEvents();
        axis::Handle* best = nullptr;
        for (auto* one : window_->findChildren<axis::Handle*>())
            if (one->isVisible() && one->accessibleName().startsWith("Heading") &&
                (best == nullptr || one->x() > best->x()))
                best = one;
        return best;
    }

    QTemporaryDir pictureFolder_;
    std::unique_ptr<TestWindow> window_;
    axis::AxisPane* axis_ = nullptr;
    row::RowView* row_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::WindowTest)
#include "window_test.moc"
