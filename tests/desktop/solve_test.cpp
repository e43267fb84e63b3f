// Sizes from wishes, in the window: asked for in the Text panel, seen before they are taken, one step to
// undo. What is solved is proved in tests/solve; here it is the command line's answer, shown and taken.
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QTextDocument>
#include <QtTest>

#include "axis/axis_pane.h"
#include "controls/number_editors.h"
#include "panels/side_panel.h"
#include "panels/solve_box.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/wishing.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

class SolveTest : public QObject {
    Q_OBJECT

private slots:
    void init() {
        folder_ = std::make_unique<QTemporaryDir>();
        sample = bareSample("shore-walks", *folder_);
        window_ = shownWindow(sample);
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        window_->findChild<panels::SidePanel*>()->openPanel(1);
        box_ = window_->findChild<panels::SolveBox*>();
        QVERIFY(box_ != nullptr && box_->isVisible());
    }
    void cleanup() { window_.reset(); }

    void showsWhatTheCommandLineSolvesAndTakesItInOneStep() {
        type("Wish: lines up to", "2");
        QCOMPARE(document().undoStack().undoText(), QString("Wish: lines up to"));
        const project::Project before = document().project();
        press("Solve sizes");
        QVERIFY(viewing().isProposal());
        QVERIFY(document().project() == before);
        QVERIFY2(says().contains("under-12s"), qPrintable(says()));
        QTextDocument shown;
        shown.setHtml(says());
        QVERIFY2(shown.toPlainText().contains(QString("1\u202F060")), qPrintable(shown.toPlainText()));

        QProcess cli;
        cli.start(TENTER_CLI, {"solve", sample, "--all-variants", "heading.lines=2"});
        QVERIFY(cli.waitForFinished());
        QCOMPARE(cli.exitCode(), 0);
        project::Problems problems;
        const auto told = project::parse(cli.readAllStandardOutput().toStdString(), "solved",
                                         document().folder(), problems);
        QVERIFY(told.has_value());
        QVERIFY(viewing().shown().style == told->style);
        QVERIFY(viewing().shown().variants == told->variants);

        press("Take these sizes");
        QVERIFY(!viewing().isProposal());
        QVERIFY(document().project().style == told->style);
        QCOMPARE(document().undoStack().undoText(), QString("Solve sizes"));
        document().undoStack().undo();
        QVERIFY(document().project() == before);
    }

    void leavesEverythingAsItWas() {
        type("Wish: lines up to", "2");
        const project::Project before = document().project();
        const int steps = document().undoStack().count();
        press("Solve sizes");
        QVERIFY(viewing().isProposal());
        press("Leave");
        QVERIFY(!viewing().isProposal());
        QVERIFY(document().project() == before);
        QCOMPARE(document().undoStack().count(), steps);
        press("Solve sizes");
        window_->findChild<panels::SidePanel*>()->openPanel(0);
        QVERIFY(!viewing().isProposal());
    }

    void solvesAgainAsAWishIsTyped() {
        type("Wish: lines up to", "2");
        press("Solve sizes");
        const project::Project two = viewing().shown();
        type("Wish: lines up to", "1");
        QTRY_VERIFY2(says().contains("one line"), qPrintable(says()));
        QVERIFY(!(viewing().shown().style == two.style && viewing().shown().variants == two.variants));
    }

    void explainsWishesThatCannotBeKeptTogetherAndLoosensOne() {
        type("Wish: size from", "60 px");
        type("Wish: lines up to", "1");
        press("Solve sizes");
        QVERIFY(!viewing().isProposal());
        QVERIFY2(says().contains("together"), qPrintable(says()));
        const auto offered = [&]() -> QPushButton* {
            for (QPushButton* button : box_->findChildren<QPushButton*>())
                if (button->isVisible() && button->accessibleName().startsWith("Take this: Rather "))
                    return button;
            return nullptr;
        };
        // Each that is taken ends one conflict, in one step.
        for (int taken = 0; !viewing().isProposal(); ++taken) {
            QVERIFY(taken < 6);
            QTRY_VERIFY(offered() != nullptr);
            const int steps = document().undoStack().count();
            QTest::mouseClick(offered(), Qt::LeftButton);
            QCOMPARE(document().undoStack().count(), steps + 1);
            QTest::qWait(20);
        }
    }

    // Common practice, no source: columns step down to one as pages get narrower.
    void addsTheSameRowWithAColumnMore() {
        auto* side = window_->findChild<panels::SidePanel*>();
        side->openPanel(0);
        viewing().setVariant(2);
        const std::size_t before = document().project().variants.size();
        QPushButton* add = nullptr;
        for (QPushButton* button : side->findChildren<QPushButton*>())
            if (button->text() == "Add a variant") add = button;
        QVERIFY(add != nullptr);
        QTest::mouseClick(add, Qt::LeftButton);
        QCOMPARE(document().project().variants.size(), before + 1);
        QCOMPARE(viewing().variant(), std::size_t{3});
        const project::Variant& added = document().project().variants[3];
        QVERIFY(added.bands.size() > 1);
        int columns = 0;
        for (std::size_t band = 0; band < added.bands.size(); ++band) {
            const int here = *project::resolve(document().project(), added, band).row.columns;
            QVERIFY(here > columns);
            columns = here;
        }
        QCOMPARE(project::resolve(document().project(), added, 0).row.columns, std::optional<int>(1));
        document().undoStack().undo();
        QCOMPARE(document().project().variants.size(), before);
    }

    // The sample has variants of 3, 2 and 4 columns.
    void offersColumnsThatNoVariantHasAndSaysHowSizesWereFound() {
        auto* side = window_->findChild<panels::SidePanel*>();
        side->openPanel(0);
        viewing().setVariant(1);
        QTest::qWait(20);
        const auto columns = [&]() -> controls::NumberField* {
            for (auto* number : side->findChildren<controls::NumberField*>())
                if (number->accessibleName() == "The same row in so many columns") return number;
            return nullptr;
        };
        const auto add = [&] {
            for (QPushButton* button : side->findChildren<QPushButton*>())
                if (button->text() == "Add a variant") QTest::mouseClick(button, Qt::LeftButton);
        };
        const auto added = [&] {
            for (QLabel* label : side->findChildren<QLabel*>())
                if (label->isVisible() && label->text().startsWith("Added ")) return label->text();
            return QString();
        };
        QCOMPARE(columns()->text(), QString("5"));
        add();
        QCOMPARE(document().project().variants[2].name, std::string("5 columns"));
        QVERIFY2(
            added().startsWith("Added 5 columns, class walks-quintet. Its sizes are solved by the wishes."),
            qPrintable(added()));
        document().undoStack().undo();
        QVERIFY(added().isEmpty());
        document().edit("Wish for what cannot be", [](project::Project& project) {
            project::RoleWishes& wish = project::wishFor(project, "heading", {});
            wish.leastSize = 80;
            wish.lines = 1;
        });
        type("The same row in so many columns", "6");
        add();
        QCOMPARE(document().project().variants[viewing().variant()].name, std::string("6 columns"));
        QVERIFY2(added().contains("not by the wishes. No sizes keep these wishes together"),
                 qPrintable(added()));
    }

    void refusesALeastAboveTheMost() {
        type("Wish: size to", "20 px");
        const project::Project before = document().project();
        type("Wish: size from", "30 px");
        QVERIFY(document().project() == before);
        project::Problems problems;
        QVERIFY(project::parse(project::write(document().project()), "kept", document().folder(), problems));
    }

private:
    Viewing& viewing() { return window_->viewing(); }
    Document& document() { return window_->document(); }
    QString says() const {
        QString all;
        for (const QLabel* label : box_->findChildren<QLabel*>())
            all += label->text();
        return all;
    }
    void press(const QString& text) {
        for (QPushButton* button : box_->findChildren<QPushButton*>())
            if (button->text() == text && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        QFAIL(qPrintable("no button " + text));
    }
    void type(const QString& field, const QString& text) {
        for (auto* number : window_->findChildren<controls::NumberField*>()) {
            if (number->accessibleName() != field || !number->isVisible()) continue;
            number->setFocus();
            number->selectAll();
            QTest::keyClicks(number, text);
            QTest::keyClick(number, Qt::Key_Return);
            return;
        }
        QFAIL(qPrintable("no field " + field));
    }

    std::unique_ptr<QTemporaryDir> folder_;
    QString sample;
    std::unique_ptr<window::MainWindow> window_;
    panels::SolveBox* box_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::SolveTest)
#include "solve_test.moc"
