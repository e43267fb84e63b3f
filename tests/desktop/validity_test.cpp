// Edits that would make the project invalid are refused: a saved project can always be opened again.
#include <sys/stat.h>

#include <QLineEdit>
#include <QStatusBar>
#include <QTemporaryDir>
#include <QtTest>
#include <variant>

#include "at_the_window.h"
#include "document/refusal.h"
#include "project/validate.h"
#include "window/status_note.h"

namespace tenter::desktop {

class ValidityTest : public AtTheWindow {
    Q_OBJECT

private Q_SLOTS:
    void init() { open("shore-walks"); }
    void cleanup() { window_.reset(); }

    void refusesThePicturesOwnRatioWhereASizeIsNotKnown() {
        edit([](project::Project& project) {
            for (project::Card& card : project.row().cards)
                for (project::Part& part : card.parts)
                    if (auto* picture = std::get_if<project::PicturePart>(&part))
                        picture->width = picture->height = 0;
        });
        openPanel(panels::PanelKind::Pictures);
        auto* ratio = named<QLineEdit>("Picture aspect ratio");
        QVERIFY(ratio != nullptr && ratio->isVisible());
        const project::Project before = project();
        ratio->setFocus();
        ratio->selectAll();
        QTest::keyClicks(ratio, "own");
        QTest::keyClick(ratio, Qt::Key_Return);
        QVERIFY(project() == before);
        QVERIFY(label("Picture aspect ratio: The size of the picture in card 1 is not known") != nullptr);
        opensAgain();
        QTest::keyClick(ratio, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(ratio, "16/9");
        QTest::keyClick(ratio, Qt::Key_Return);
        QVERIFY(project() != before);
        opensAgain();
    }

    // Reading from a pipe that nobody writes to would stop the window.
    void refusesToOpenAPipe() {
        const QTemporaryDir folder;
        const std::string pipe = folder.filePath("pipe.tenter.json").toStdString();
        QCOMPARE(mkfifo(pipe.c_str(), 0600), 0);
        project::Problems problems;
        QVERIFY(!document().open(pipe, problems));
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY(problems.front().line().find("not a regular file") != std::string::npos);
    }

    void refusesTheCardAfterTheFiveHundredth() {
        edit([](project::Project& project) {
            const project::Card one = project.row().cards.front();
            project.row().cards.assign(499, one);
            for (project::Card& card : project.row().cards)
                card.parts.resize(1);
        });
        openPanel(panels::PanelKind::Words);
        press("Add card after this one");
        QCOMPARE(project().row().cards.size(), std::size_t{500});
        opensAgain();
        const auto selected = session().selection.card();
        QVERIFY(selected.has_value());
        const int steps = document().undoStack().count();
        press("Add card after this one");
        QCOMPARE(project().row().cards.size(), std::size_t{500});
        QCOMPARE(document().undoStack().count(), steps);
        QCOMPARE(session().selection.card(), selected);
        QVERIFY(label("A project can have at most 500 cards.") != nullptr);
    }

    void refusesTheBandAfterTheFiftieth() {
        edit([](project::Project& project) {
            auto& bands = project.row().variants.front().bands;
            bands.assign(50, project::Band());
            for (std::size_t i = 0; i < 49; ++i)
                bands[i].upTo = 400 + 10.0 * double(i);
        });
        openPanel(panels::PanelKind::Row);
        session().view.setWidth(1200);
        settle();
        press("Add breakpoint at " + QString("1200") + QChar(0xa0) + "px");
        QCOMPARE(project().row().variants.front().bands.size(), std::size_t{50});
        QVERIFY(label("A variant can have at most 50 bands.") != nullptr);
        opensAgain();
    }

    void namesSettingsInAConflictAsThePanelsDo() {
        edit([](project::Project& project) {
            project.row().style.card.padding.top = units::Length::percent(5);
        });
        const auto problems = session().scope.setSetting("Align", "row/level", "subgrid");
        QVERIFY(!problems.empty());
        for (const project::Problem& problem : problems)
            QVERIFY2(!refusal(project(), problem).contains("/style"), problem.line().c_str());
        QCOMPARE(refusal(project(), problems.front()),
                 QString("“Align parts” cannot be “On” because the top or bottom padding of the cards is a "
                         "percentage. Change “Card padding top” to px, rem, em or vw, or set “Align parts” "
                         "to “Off”."));
        session().view.setWidth(1200);
        session().scope.setLayer(project::CascadeLayer::Band);
        QVERIFY(session().scope.setSetting("Padding", "card/padding/top", "5%").empty());
        QVERIFY(session().scope.setSetting("Bleed", "card/bleed", false).empty());
        const auto inBand = session().scope.setSetting("Beside", "card/direction", "beside");
        QVERIFY(!inBand.empty());
        const QString words = refusal(project(), inBand.front());
        QVERIFY2(words.contains("the picture is beside the text (“Card picture” in the band ") &&
                     !words.contains("/variants"),
                 qPrintable(words));
    }

    // Real presses of “On” where two settings prevent it, in the narrowest window.
    void showsAllLinesOfAMessage() {
        edit([](project::Project& project) {
            project.row().style.card.padding.top = units::Length::percent(5);
            project.row().style.row.lastLine = project::LastLine::Center;
        });
        openPanel(panels::PanelKind::Row);
        QAbstractButton* on = nullptr;
        for (auto* button : side().findChildren<QAbstractButton*>())
            if (button->text() == "On" && button->isVisible()) on = button;
        QVERIFY(on != nullptr);
        const int steps = document().undoStack().count();
        QTest::mouseClick(on, Qt::LeftButton, {}, on->rect().center());
        settle();
        QCOMPARE(document().undoStack().count(), steps);
        QLabel* const message = label("“Align parts” cannot be “On”");
        QVERIFY(message != nullptr);
        QVERIFY(!message->text().contains("/style") && !message->text().contains("/variants"));
        QVERIFY(message->height() >= message->heightForWidth(message->width()));
        // The room that a long message took is given back.
        edit([](project::Project& project) { project.row().style.card.padding.top = units::Length(); });
        QVERIFY(message->text().isEmpty());
        QVERIFY(!message->isVisible());
    }

    void showsAllLinesOfAMessageInTheStatusBar() {
        auto* note = window_->findChild<window::StatusNote*>();
        const int usual = window_->statusBar()->height();
        note->showMessage(QString("A message that is longer than the status bar is wide. ").repeated(8));
        settle();
        QVERIFY(note->height() >= note->heightForWidth(note->width()));
        QVERIFY(window_->statusBar()->height() > usual);
        note->showMessage("Short.");
        settle();
        QCOMPARE(window_->statusBar()->height(), usual);
    }

    // A view without a place for messages: the status bar.
    void saysInTheStatusBarWhyAnEditOnTheAxisIsRefused() {
        auto* note = window_->findChild<window::StatusNote*>();
        QVERIFY(note != nullptr);
        const project::Project before = project();
        QVERIFY(!session().scope.edit("Move breakpoint", [](project::Project& project) {
            project.row().variants.front().bands.front().upTo = 0;
        }));
        QVERIFY(project() == before);
        QCOMPARE(note->text(), QString("“Breakpoint” must be a number from 1 to 10000; it is 0."));
    }

    void keepsNoRefusedStepInAGesture() {
        const project::Project before = project();
        const auto put = [&](const project::Length& width) {
            return document().edit(
                "Width", [&](project::Project& project) { project.row().style.row.width = width; }, "width");
        };
        QVERIFY(put(units::Length::percent(50)).empty());
        QVERIFY(!put(units::Length::cqi(50)).empty());
        QVERIFY(put(units::Length::percent(60)).empty());
        QCOMPARE(document().undoStack().count(), 1);
        document().undoStack().undo();
        QVERIFY(project() == before);
    }

private:
    void edit(const std::function<void(project::Project&)>& change) {
        const auto problems = document().edit("Prepare", change);
        QVERIFY2(problems.empty(), problems.empty() ? "" : problems.front().line().c_str());
        settle();
    }
    void opensAgain() {
        project::Problems problems;
        QVERIFY(document().save(problems));
        const auto again = project::read(document().file(), problems);
        QVERIFY2(again.has_value(), problems.empty() ? "" : problems.front().line().c_str());
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::ValidityTest)
#include "validity_test.moc"
