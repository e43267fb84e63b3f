// Findings, wrap points and plots in the window, operated by mouse and keyboard. Results are compared with
// the command line, whose results the engine tests compare with browsers.
#include <QInputDialog>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QListView>
#include <QMenuBar>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>
#include <set>

#include "axis/audience_lane.h"
#include "axis/axis_pane.h"
#include "axis/disclosure.h"
#include "axis/findings_lane.h"
#include "axis/sweep_plot.h"
#include "axis/thumbnails_lane.h"
#include "axis/wraps_lane.h"
#include "controls/segments.h"
#include "findings/caution.h"
#include "findings/panel.h"
#include "findings/silencing.h"
#include "findings/wording.h"
#include "row/row_view.h"
#include "session/changes.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

class FindingsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(sample("shore-walks"));
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        axis_ = window_->findChild<axis::AxisPane*>();
        panel_ = window_->findChild<findings::Panel*>();
        list_ = panel_->findChild<QListView*>();
        QTRY_VERIFY(checks().isFresh());
    }
    void cleanup() { window_.reset(); }

    void listsTheFindingsOfTheCommandLine() {
        const QJsonArray expected = commandLine({"check", sample("shore-walks"), "--json"});
        QVERIFY(expected.size() > 1);
        QCOMPARE(list_->model()->rowCount(), expected.size());
        for (int i = 0; i < expected.size(); ++i) {
            const QString says = list_->model()->index(i, 0).data().toString();
            const QString severity = expected[i].toObject()["severity"].toString();
            QVERIFY2(says.contains(expected[i].toObject()["says"].toString()), qPrintable(says));
            QVERIFY2(says.startsWith(severity, Qt::CaseInsensitive), qPrintable(says));
        }
    }

    void namesAWidthRangeOnce() {
        static const QRegularExpression pattern("(\\d+)(?: to |–)(\\d+)");
        int single = 0;
        for (std::size_t i = 0; i < checks().findings().size(); ++i) {
            const QString says = list_->model()->index(static_cast<int>(i), 0).data().toString();
            if (checks().findings()[i].widths.size() > 1) {
                QVERIFY2(says.contains("\nAll affected widths: "), qPrintable(says));
                continue;
            }
            QSet<QString> ranges;
            for (const QRegularExpressionMatch& range : pattern.globalMatch(says)) {
                const QString ends = range.captured(1) + ' ' + range.captured(2);
                QVERIFY2(!ranges.contains(ends), qPrintable(says));
                ranges.insert(ends);
            }
            single += ranges.isEmpty() ? 0 : 1;
        }
        QVERIFY(single > 0);
    }

    // Real keys: Tab goes to the link, Enter opens the whole text, and again closes it.
    void theLimitsOpenToTheirFullText() {
        auto* caution = panel_->findChild<findings::Caution*>();
        const int line = caution->height();
        caution->setFocus(Qt::TabFocusReason);
        QTest::keyClick(caution, Qt::Key_Tab);
        QTest::keyClick(caution, Qt::Key_Return);
        QVERIFY2(caution->text().contains("do not prove conformance"), qPrintable(caution->text()));
        QTRY_VERIFY(caution->height() > line);
    }

    void alwaysShowsTheLimitsOfAutomatedChecks() {
        const auto hasCaution = [&] {
            const auto* caution = panel_->findChild<findings::Caution*>();
            return caution->isVisible() && caution->text().contains("Checks cover part of WCAG 2.2 only") &&
                   caution->accessibleName().contains("do not prove conformance");
        };
        QVERIFY(hasCaution());
        emptyCards();
        QTRY_VERIFY(checks().isFresh() && checks().findings().empty());
        QVERIFY(hasCaution());
        bool saysNone = false;
        for (const QLabel* label : panel_->findChildren<QLabel*>())
            saysNone =
                saysNone || (label->isVisible() && label->text().startsWith("No findings at any width"));
        QVERIFY(saysNone);
    }

    void clickShowsTheWidthAndMarksThePart() {
        session().view.setWidth(1000);
        const QImage before = row()->viewport()->grab().toImage();
        const int line = 2;
        list_->scrollTo(index(line));
        QTest::mouseClick(list_->viewport(), Qt::LeftButton, {}, list_->visualRect(index(line)).center());
        const checks::Finding finding = checks().findings()[line];
        QCOMPARE(checks().chosen(), std::optional<std::size_t>(line));
        QCOMPARE(session().view.width(), finding.at);
        QVERIFY(within(finding, session().view.width()));
        QVERIFY(session().view.width() < session().shown.project().mostWidth);
        QCOMPARE(session().view.width(), std::round(session().view.width()));
        QCOMPARE(session().selection.part(), finding.place);
        // Selecting another part removes the choice, and with it the mark.
        const QImage marked = row()->viewport()->grab().toImage();
        QVERIFY(marked != before);
        session().selection.select({});
        QVERIFY(!checks().chosen());
        session().selection.select(Place::of(*finding.place));
        QVERIFY(row()->viewport()->grab().toImage() != marked);
        QVERIFY(!document().isModified());
    }

    void enterShowsTheFinding() {
        QTest::keyClick(window_.get(), Qt::Key_7, Qt::AltModifier);
        QVERIFY(list_->hasFocus());
        QTest::keyClick(list_, Qt::Key_Home);
        QTest::keyClick(list_, Qt::Key_Down);
        QVERIFY(!checks().chosen());
        QTest::keyClick(list_, Qt::Key_Return);
        QCOMPARE(checks().chosen(), std::optional<std::size_t>(1));
        QCOMPARE(session().view.width(), checks().findings()[1].at);
    }

    void showsTheWholeTextOfTheCurrentFinding() {
        const int closed = list_->visualRect(index(1)).height();
        list_->setCurrentIndex(index(1));
        QTRY_VERIFY(list_->visualRect(index(1)).height() > closed);
        list_->setCurrentIndex(index(0));
        QTRY_COMPARE(list_->visualRect(index(1)).height(), closed);
    }

    void filtersBySeverity() {
        auto* filter = panel_->findChild<controls::Segments*>();
        const auto notes =
            std::ranges::count(checks().findings(), checks::Severity::Note, &checks::Finding::severity);
        QVERIFY(notes > 0);
        QTest::mouseClick(filter->button(3), Qt::LeftButton);
        QCOMPARE(list_->model()->rowCount(), static_cast<int>(notes));
        QVERIFY(index(0).data().toString().startsWith("Note"));
        // F8 chooses only findings that are listed.
        QTest::keyClick(window_.get(), Qt::Key_F8);
        QCOMPARE(checks().findings()[*checks().chosen()].severity, checks::Severity::Note);
        QTest::mouseClick(filter->button(0), Qt::LeftButton);
        QCOMPARE(list_->model()->rowCount(), static_cast<int>(checks().findings().size()));
    }

    void keysChooseTheNextAndPreviousFinding() {
        const std::size_t count = checks().findings().size();
        for (std::size_t i = 0; i < count; ++i) {
            QTest::keyClick(window_.get(), Qt::Key_F8);
            QCOMPARE(checks().chosen(), std::optional(i));
            QCOMPARE(session().view.width(), checks().findings()[i].at);
            QCOMPARE(list_->currentIndex().row(), static_cast<int>(i));
        }
        QTest::keyClick(window_.get(), Qt::Key_F8);
        QCOMPARE(checks().chosen(), std::optional(count - 1));
        QTest::keyClick(window_.get(), Qt::Key_F8, Qt::ShiftModifier);
        QCOMPARE(checks().chosen(), std::optional(count - 2));
    }

    void keysGoToTheWrapPointsOfTheCommandLine() {
        std::set<double> past;
        const QJsonArray wraps = commandLine({"wraps", sample("shore-walks"), "--json"});
        for (const QJsonValue& wrap : wraps) {
            const double width = std::floor(wrap.toObject()["width"].toDouble()) + 1;
            if (width <= session().shown.project().mostWidth) past.insert(width);
        }
        QVERIFY(past.size() > 5);
        session().view.setWidth(session().shown.project().leastWidth);
        for (const double width : past) {
            if (width <= session().shown.project().leastWidth) continue;
            QTest::keyClick(window_.get(), Qt::Key_F7);
            QCOMPARE(session().view.width(), width);
        }
        QTest::keyClick(window_.get(), Qt::Key_F7);
        QCOMPARE(session().view.width(), *past.rbegin());
        QTest::keyClick(window_.get(), Qt::Key_F7, Qt::ShiftModifier);
        QVERIFY(session().view.width() < *past.rbegin());
    }

    void tooltipOfAWrapPointShowsTheChange() {
        const sweep::WrapPoint wrap = checks().sweep().wraps.front();
        auto* lane = window_->findChild<axis::WrapsLane*>();
        QVERIFY(lane->isVisible());
        const QString says = lane->toolTipAt(axis_->scale().x(wrap.width));
        QVERIFY2(says.contains("card " + QString::number(wrap.place.card + 1)), qPrintable(says));
        QCOMPARE(lane->toolTipAt(-1000), QString());
        QCOMPARE(lane->accessibleDescription(), QString("%1 wrap points").arg(checks().sweep().wraps.size()));
        // Ticks of the selected part are longer.
        const QImage plain = lane->grab().toImage();
        session().selection.select(Place::of(wrap.place));
        QVERIFY(lane->grab().toImage() != plain);
    }

    void clickOnTheAxisChoosesAFinding() {
        auto* lane = window_->findChild<axis::FindingsLane*>();
        QVERIFY(lane->isVisible());
        const QRectF run = lane->place(0, 0);
        QVERIFY(run.width() > 3 && lane->rect().contains(run.toRect()));
        QTest::mouseClick(lane, Qt::LeftButton, {}, run.center().toPoint());
        QCOMPARE(checks().chosen(), std::optional<std::size_t>(0));
        QCOMPARE(session().view.width(), checks().findings()[0].at);
        QCOMPARE(list_->currentIndex().row(), 0);
    }

    // Where there is no finding, a drag in the lane changes the width, as elsewhere on the axis.
    void dragInTheFindingsLaneChangesTheWidth() {
        auto* lane = window_->findChild<axis::FindingsLane*>();
        const int x = [&] {
            for (int at = qRound(axis_->scale().left()) + 1; at < axis_->scale().right(); ++at)
                if (lane->at(QPointF(at, lane->height() - 2)).empty()) return at;
            return -1;
        }();
        QVERIFY(x > 0);
        QTest::mousePress(lane, Qt::LeftButton, {}, QPoint(x, lane->height() - 2));
        QTest::mouseRelease(lane, Qt::LeftButton, {}, QPoint(x, lane->height() - 2));
        QCOMPARE(session().view.width(), std::round(axis_->scale().width(x)));
        QVERIFY(!checks().chosen());
    }

    void updatesFindingsWithinAFrameAfterAnEdit() {
        const std::size_t before = checks().findings().size();
        document().edit("Colour", [](project::Project& project) {
            project.row().style.text.of("body").colour = units::Colour{210, 210, 205, 255};
        });
        QVERIFY(!checks().isFresh());
        QCoreApplication::processEvents();
        QVERIFY(checks().isFresh());
        QCOMPARE(checks().findings().size(), before + 1);
        QCOMPARE(checks().findings()[0].check, std::string("contrast"));
        QVERIFY(index(0).data().toString().startsWith("Error"));
        document().undoStack().undo();
        QCoreApplication::processEvents();
        QCOMPARE(checks().findings().size(), before);
    }

    void keepsTheChosenFindingAfterAnEdit() {
        checks().choose(2);
        const std::string check = checks().findings()[2].check;
        document().edit("Colour", [](project::Project& project) {
            project.row().style.text.of("body").colour = units::Colour{210, 210, 205, 255};
        });
        QCoreApplication::processEvents();
        QCOMPARE(checks().chosen(), std::optional<std::size_t>(3));
        QCOMPARE(checks().findings()[3].check, check);
        QCOMPARE(list_->currentIndex().row(), 3);
    }

    void choosingAFindingOfOneProfileChangesToThatProfile() {
        const auto only = [&](const text::BreakProfile* profile) {
            const auto found = std::ranges::find(
                checks().findings(), profile == nullptr ? checks::Profiles() : checks::Profiles{profile},
                &checks::Finding::profiles);
            return static_cast<std::size_t>(found - checks().findings().begin());
        };
        const std::size_t index = only(&text::blink());
        QVERIFY(index < checks().findings().size());
        session().view.setProfile(text::gecko());
        QTRY_VERIFY(checks().isFresh());
        checks().choose(only(&text::blink()));
        QCOMPARE(&session().view.profile(), &text::blink());
        QCOMPARE(session().view.width(), checks().findings()[only(&text::blink())].at);
        // A finding of both profiles does not change the profile.
        session().view.setProfile(text::gecko());
        QTRY_VERIFY(checks().isFresh());
        checks().choose(only(nullptr));
        QCOMPARE(&session().view.profile(), &text::gecko());
        session().view.setProfile(text::blink());
    }

    void checksARowOfManyPartsOnABackgroundThread() {
        document().edit("Cards", [](project::Project& project) {
            const std::vector<project::Card> cards = project.row().cards;
            while (project.row().cards.size() < 40)
                project.row().cards.insert(project.row().cards.end(), cards.begin(), cards.end());
        });
        QCoreApplication::processEvents();
        QVERIFY(!checks().isFresh());
        QTRY_VERIFY_WITH_TIMEOUT(checks().isFresh(), 20000);
        QCOMPARE(checks().sweep().curves.cards.size(), document().project().row().cards.size());
        text::Fonts fonts;
        fonts.use(document().project().fonts, document().folder());
        text::ParagraphStore store(fonts);
        const auto expected = checks::check(document().project(), 0, store);
        QCOMPARE(checks().findings().size(), expected.size());
        for (std::size_t i = 0; i < expected.size(); ++i)
            QCOMPARE(checks().findings()[i].says, expected[i].says);
        // The second edit comes while the first is being checked: the result of the first must be ignored.
        document().edit("Cards", [](project::Project& project) {
            const std::vector<project::Card> cards = project.row().cards;
            while (project.row().cards.size() < 600)
                project.row().cards.insert(project.row().cards.end(), cards.begin(), cards.end());
        });
        QTest::qWait(170);
        document().edit("Cards", [](project::Project& project) { project.row().cards.resize(20); });
        std::vector<std::size_t> cardCounts;
        const auto listening = onChange(checks(), CheckRunner::Change::Findings, this, [&] {
            if (checks().isFresh()) cardCounts.push_back(checks().sweep().curves.cards.size());
        });
        QTRY_VERIFY_WITH_TIMEOUT(checks().isFresh(), 20000);
        disconnect(listening);
        QCOMPARE(cardCounts, std::vector<std::size_t>{20});
    }

    void weightsFindingsByADroppedAudience() {
        auto* lane = window_->findChild<axis::AudienceLane*>();
        QVERIFY(!lane->isVisible());
        drop(QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/visits.csv"));
        QTRY_VERIFY(checks().isFresh());
        QVERIFY(lane->isVisible());
        const QJsonArray expected = commandLine({"check", sample("shore-walks"), "--json", "--audience",
                                                 TENTER_SOURCE_DIR "/sample-projects/visits.csv"});
        QCOMPARE(static_cast<int>(checks().findings().size()), expected.size());
        for (int i = 0; i < expected.size(); ++i)
            QCOMPARE(checks().findings()[static_cast<std::size_t>(i)].share,
                     expected[i].toObject()["share"].toDouble());
        QVERIFY2(index(0).data().toString().contains("% of visits"), qPrintable(index(0).data().toString()));
        const QString says = lane->toolTipAt(axis_->scale().x(390));
        QVERIFY2(says.contains("visits") && says.contains("% of all visits"), qPrintable(says));
        // The audience applies to every project.
        window_->openFile(sample("night-sky"));
        QTRY_VERIFY(checks().isFresh());
        QVERIFY(!checks().audience().empty());
        QAction* const stop = action("Stop weighting by audience");
        QVERIFY(stop != nullptr);
        stop->trigger();
        QTRY_VERIFY(checks().isFresh());
        QVERIFY(!lane->isVisible());
    }

    void reportsWhyAFileIsNotAnAudience() {
        QTemporaryDir folder;
        QFile file(folder.filePath("none.csv"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("colour,visits\nred,3\n");
        file.close();
        drop(file.fileName());
        QVERIFY(checks().audience().empty());
        bool reported = false;
        for (const auto* text : window_->findChildren<QPlainTextEdit*>())
            reported =
                reported || (text->isVisible() && text->toPlainText().contains("No heading names the width"));
        QVERIFY(reported);
    }

    void opensThePlotsOfCardHeightAndPictureSize() {
        for (const char* name : {"Card height", "Picture size"}) {
            axis::Disclosure* disclosure = nullptr;
            for (auto* one : axis_->findChildren<axis::Disclosure*>())
                if (one->text() == name) disclosure = one;
            QVERIFY(disclosure != nullptr && disclosure->isVisible() && !disclosure->isChecked());
            QTest::mouseClick(disclosure, Qt::LeftButton);
            QVERIFY(disclosure->isChecked());
        }
        for (auto* plot : axis_->findChildren<axis::SweepPlot*>()) {
            QVERIFY(plot->isVisible());
            QCoreApplication::processEvents();
            const QImage drawn = plot->grab().toImage();
            session().view.setVariant(1);
            QVERIFY(plot->grab().toImage() != drawn);
            session().view.setVariant(0);
        }
    }

    void buildsTheCurvesOfAPlotOncePerEdit() {
        for (auto* disclosure : axis_->findChildren<axis::Disclosure*>())
            if (disclosure->text() == "Card height" || disclosure->text() == "Picture size")
                disclosure->click();
        const auto plots = axis_->findChildren<axis::SweepPlot*>();
        QCOMPARE(plots.size(), 2);
        for (axis::SweepPlot* plot : plots) {
            QVERIFY(plot->isVisible());
            QCoreApplication::processEvents();  // the pane gets its height
            const QImage before = plot->grab().toImage();
            QSignalSpy rebuilt(plot, &axis::SweepPlot::rebuilt);
            QVERIFY(session().scope.setSetting("Gap", "row/columnGap", "77px").empty());
            QCOMPARE(rebuilt.count(), 1);
            QTRY_VERIFY(checks().isFresh());
            QCOMPARE(rebuilt.count(), 1);
            QVERIFY(plot->grab().toImage() != before);
            document().undoStack().undo();
            QCOMPARE(rebuilt.count(), 2);
            QCOMPARE(plot->grab().toImage(), before);
        }
    }

    void plotsOfHeightsFollowTheScaleAndAnEditWhileTheyAreClosed() {
        axis::Disclosure* disclosure = nullptr;
        for (auto* one : axis_->findChildren<axis::Disclosure*>())
            if (one->text() == "Card height") disclosure = one;
        disclosure->click();
        auto* plot = axis_->findChildren<axis::SweepPlot*>().front();
        QVERIFY(plot->isVisible());
        const QImage before = plot->grab().toImage();
        // Equal room for each band moves the breakpoints of the plot, too.
        axis_->scaleActions().back()->setChecked(true);
        const QImage equal = plot->grab().toImage();
        document().edit("Breakpoint", [](project::Project& project) {
            project.row().variants[0].bands[0].upTo = *project.row().variants[0].bands[0].upTo + 40;
        });
        QVERIFY(plot->grab().toImage() != equal);
        document().undoStack().undo();
        QCOMPARE(plot->grab().toImage(), equal);
        axis_->scaleActions().back()->setChecked(false);
        QCOMPARE(plot->grab().toImage(), before);
        disclosure->click();
        QVERIFY(!plot->isVisible());
        session().scope.setSetting("Gap", "row/columnGap", "77px");
        disclosure->click();
        QVERIFY(plot->grab().toImage() != before);
    }

    void rowViewHasMoreThanHalfOfTheHeight() { QVERIFY(row()->height() > axis_->height()); }

    void thumbnailsShowKeyWidthsAndGoThere() {
        auto* lane = axis_->findChild<axis::ThumbnailsLane*>();
        QVERIFY(!lane->isVisible());
        for (QAction* toggle : axis_->laneActions())
            if (toggle->text() == "Thumbnails") toggle->trigger();
        QVERIFY(lane->isVisible());
        const auto expected = checks::keyWidths(session().shown.project(), 0, checks().findings());
        QTRY_COMPARE(lane->thumbnails().size(), expected.size());
        for (std::size_t i = 0; i < expected.size(); ++i) {
            axis::Thumbnail* thumbnail = lane->thumbnails()[i];
            QVERIFY(thumbnail->accessibleName().contains(QString::fromStdString(expected[i].why)));
            QTest::mouseClick(thumbnail, Qt::LeftButton);
            QCOMPARE(session().view.width(), expected[i].width);
        }
    }

    void showsTheThemeBreakpointsOfAnImportedRow() {
        QVERIFY(axis_->themeBreakpoints().empty());
        document().edit("Row of a page", [](project::Project& project) {
            project::Given given;
            given.markup = "<div class=\"walks\"></div>";
            given.selectors = {{"row", ""}, {"card", ".walk"}};
            given.theme = ".walks { margin: 0 } @media (min-width: 48em) { .walks { margin: 1em } }";
            project.row().given = given;
        });
        QCOMPARE(axis_->themeBreakpoints().size(), std::size_t{1});
        QCOMPARE(axis_->themeBreakpoints()[0].width, 768.0);
        const QString says = axis_->rulerToolTipAt(axis_->scale().x(768));
        QVERIFY2(says.contains("768") && says.contains("(min-width: 48em)"), qPrintable(says));
        QCOMPARE(axis_->rulerToolTipAt(axis_->scale().x(900)), QString());
        document().undoStack().undo();
        QVERIFY(axis_->themeBreakpoints().empty());
    }

    void silencesACheckWithAReasonAndStopsSilencingIt() {
        const std::string check = checks().findings()[0].check;
        QCOMPARE(check, std::string("out-of-line"));
        const QString title = "Out of line";
        const auto reports = [&] {
            return std::ranges::any_of(
                checks().findings(), [&](const checks::Finding& finding) { return finding.check == check; });
        };
        const auto answer = [&](const QString& reason) {
            QTimer::singleShot(0, window_.get(), [reason, title] {
                auto* asked = qobject_cast<QInputDialog*>(QApplication::activeModalWidget());
                QVERIFY(asked != nullptr);
                // By its title, not by its name in files.
                QCOMPARE(asked->windowTitle(), QString("Silence check “%1”").arg(title));
                asked->setTextValue(reason);
                asked->accept();
            });
            findings::silence(window_.get(), document(), check);
        };
        answer("  ");
        QVERIFY(document().project().checking.silenced.empty());
        answer("the client wants it so");
        QCOMPARE(document().project().checking.silenced[0].reason, std::string("the client wants it so"));
        QTRY_VERIFY(checks().isFresh() && !reports());

        QMenu menu(window_.get());
        findings::fillSilenceMenu(menu, document(), "");
        QCOMPARE(menu.actions().size(), 1);
        QCOMPARE(menu.actions()[0]->text(),
                 QString("Stop silencing check “%1” (reason: the client wants it so)").arg(title));
        menu.actions()[0]->trigger();
        QTRY_VERIFY(checks().isFresh() && reports());
        document().undoStack().undo();
        QTRY_VERIFY(checks().isFresh() && !reports());
    }

private:
    Session& session() { return window_->session; }
    Document& document() { return session().document; }
    CheckRunner& checks() { return session().checks; }
    row::RowView* row() { return window_->findChild<row::RowView*>(); }
    QModelIndex index(int line) { return list_->model()->index(line, 0); }
    static bool within(const checks::Finding& finding, double width) {
        return std::ranges::any_of(finding.widths, [width](const sweep::Interval& span) {
            return span.from <= width && width <= span.to;
        });
    }
    static QString sample(const QString& name) {
        return QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/") + name + ".tenter.json";
    }
    QAction* action(const QString& text) {
        for (QAction* menu : window_->menuBar()->actions())
            for (QAction* action : menu->menu()->actions())
                if (action->text().remove(QLatin1Char('&')) == text) return action;
        return nullptr;
    }
    void emptyCards() {
        document().edit("Cards", [](project::Project& project) { project.row().cards.clear(); });
    }
    void drop(const QString& file) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(file)});
        const QPoint at = window_->rect().center();
        QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window_.get(), &enter);
        QDropEvent event(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(window_.get(), &event);
        QVERIFY(event.isAccepted());
    }
    static QJsonArray commandLine(const QStringList& arguments) {
        QProcess process;
        process.start(TENTER_CLI, arguments);
        process.waitForFinished();
        return QJsonDocument::fromJson(process.readAllStandardOutput()).array();
    }

    std::unique_ptr<TestWindow> window_;
    axis::AxisPane* axis_ = nullptr;
    findings::Panel* panel_ = nullptr;
    QListView* list_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::FindingsTest)
#include "findings_test.moc"
