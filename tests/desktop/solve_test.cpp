// “Solve sizes” in the window: a preview with a table of sizes and limits, applied in one undo step. Tests of
// the solver are in tests/solve; here its answer is compared with that of the command line.
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QScrollBar>
#include <QtTest>

#include "axis/axis_pane.h"
#include "controls/number_editors.h"
#include "document/wording.h"
#include "panels/answer_view.h"
#include "panels/side_panel.h"
#include "panels/solve_box.h"
#include "project/card_scale.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/role_wishes.h"
#include "remedy/wording.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

class SolveTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        folder_ = std::make_unique<QTemporaryDir>();
        sample = bareSample("shore-walks", *folder_);
        window_ = shownWindow(sample);
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        window_->findChild<panels::SidePanel*>()->openPanel(panels::PanelKind::Text);
        box_ = window_->findChild<panels::SolveBox*>();
        QVERIFY(box_ != nullptr && box_->isVisible());
    }
    void cleanup() { window_.reset(); }

    void previewsWhatTheCommandLineSolvesAndAppliesItInOneStep() {
        type("Wish: lines at most", "2");
        QCOMPARE(document().undoStack().undoText(), QString("Change wish: lines at most"));
        const project::Project before = document().project();
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(document().project() == before);
        QVERIFY2(tableText().contains("word “under-12s” (card 2)"), qPrintable(tableText()));
        QVERIFY2(tableText().contains(QString("just above 1060\u00A0px")), qPrintable(tableText()));

        QProcess cli;
        cli.start(TENTER_CLI, {"solve", sample, "--all-variants", "heading.lines=2"});
        QVERIFY(cli.waitForFinished());
        QCOMPARE(cli.exitCode(), 0);
        project::Problems problems;
        const auto told = project::parse(cli.readAllStandardOutput().toStdString(), "solved",
                                         document().folder(), problems);
        QVERIFY(told.has_value());
        QVERIFY(session().shown.project().row().style == told->row().style);
        QVERIFY(session().shown.project().row().variants == told->row().variants);

        press("Apply sizes");
        QVERIFY(!session().shown.isProposal());
        QVERIFY(document().project().row().style == told->row().style);
        QCOMPARE(document().undoStack().undoText(), QString("Solve sizes"));
        document().undoStack().undo();
        QVERIFY(document().project() == before);
    }

    void discardsThePreview() {
        type("Wish: lines at most", "2");
        const project::Project before = document().project();
        const int steps = document().undoStack().count();
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        press("Discard");
        QVERIFY(!session().shown.isProposal());
        QVERIFY(document().project() == before);
        // The button is where the table was, not scrolled away.
        QVERIFY(box_->button()->hasFocus());
        QTRY_VERIFY(box_->button()->visibleRegion().boundingRect() == box_->button()->rect());
        QCOMPARE(document().undoStack().count(), steps);
        press("Solve sizes");
        window_->findChild<panels::SidePanel*>()->openPanel(panels::PanelKind::Row);
        QVERIFY(!session().shown.isProposal());
    }

    void tabulatesTheSizesOfBothProjectsAtBothEndsOfEachBand() {
        type("Wish: lines at most", "2");
        const project::Project before = document().project();
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        const project::Project& after = session().shown.project();
        const auto sizeIn = [&](const project::Project& project, const solve::SizeRow& sizes, double width) {
            const project::Variant& variant = project.row().variants[sizes.variant];
            return project::resolve(project, variant, sizes.band).text.find(sizes.role)->size->sizeAt(width);
        };
        int rows = 0;
        int changed = 0;
        for (int row = 0; row < model()->rowCount(); ++row) {
            if (model()->kind(row) != panels::AnswerModel::RowKind::Sizes) continue;
            ++rows;
            const solve::SizeRow& sizes = model()->sizes(row);
            for (const int column : {panels::AnswerModel::NarrowEnd, panels::AnswerModel::WideEnd}) {
                const double width =
                    column == panels::AnswerModel::NarrowEnd ? sizes.narrow.width : sizes.wide.width;
                const QString was = figure(sizeIn(before, sizes, width));
                const QString is = figure(sizeIn(after, sizes, width));
                QCOMPARE(model()->index(row, column).data().toString(), was == is ? was : was + " → " + is);
                changed += was == is ? 0 : 1;
                const QString spoken = model()->index(row, column).data(Qt::AccessibleTextRole).toString();
                QVERIFY2(spoken.contains(roleTitle(sizes.role)) && spoken.contains(pixels(width)),
                         qPrintable(spoken));
                QCOMPARE(spoken.contains("unchanged"), was == is);
            }
        }
        std::size_t bands = 0;
        for (const project::Variant& variant : before.row().variants)
            bands += variant.bands.size();
        QCOMPARE(static_cast<std::size_t>(rows), bands * project::usedRoles(before).size());
        QVERIFY(changed > 3);
    }

    void showsTheFindingsThatComeAndGo() {
        type("Wish: lines at most", "2");
        const project::Project before = document().project();
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        const project::Project after = session().shown.project();
        const remedy::Effects effects =
            remedy::effectsOf(before, after, project::everyVariant(before), document().store());
        QVERIFY(!effects.lost.empty());
        const auto summary = [&]() -> QString {
            for (const QLabel* label : box_->findChildren<QLabel*>())
                if (label->accessibleName() == "Findings that come and go" && label->isVisible())
                    return label->text();
            return {};
        };
        QTRY_COMPARE(summary(), "Findings: " + QString::fromStdString(remedy::summaryOf(before, effects)));
        using Kind = panels::AnswerModel::RowKind;
        QMap<panels::AnswerModel::Effect, std::size_t> seen;
        bool isUnderOther = false;
        for (int row = 0; row < model()->rowCount(); ++row) {
            const QModelIndex index = model()->index(row, panels::AnswerModel::Band);
            if (model()->kind(row) == Kind::Title) isUnderOther = index.data().toString() == "Other findings";
            if (model()->kind(row) != Kind::Finding) continue;
            ++seen[model()->effect(row)];
            const auto place = model()->placeOf(index);
            QVERIFY(place.has_value());
            if (isUnderOther) continue;
            // It stands below the role and band of its worst place.
            int sizes = row;
            while (model()->kind(sizes) != Kind::Sizes)
                --sizes;
            QCOMPARE(model()->sizes(sizes).role, place->role);
            QCOMPARE(model()->sizes(sizes).variant, place->variant);
            QVERIFY(place->width <= model()->sizes(sizes).wide.width);
            QVERIFY(place->width >= solve::firstWholeWidth(model()->sizes(sizes)) - 1);
        }
        QCOMPARE(seen[panels::AnswerModel::Effect::Removes], effects.lost.size());
        QCOMPARE(seen[panels::AnswerModel::Effect::Adds], effects.gained.size());
        QCOMPARE(seen[panels::AnswerModel::Effect::Widens], effects.grown.size());
        // Enter goes to the finding.
        int row = 0;
        while (model()->kind(row) != Kind::Finding)
            ++row;
        const QModelIndex index = model()->index(row, panels::AnswerModel::Band);
        const auto place = *model()->placeOf(index);
        table()->setCurrentIndex(index);
        QTest::keyClick(table(), Qt::Key_Return);
        QCOMPARE(session().view.width(), place.width);
        QCOMPARE(session().view.variant(), place.variant);
    }

    void showsAndHidesThePreviewByOneKey() {
        type("Wish: lines at most", "2");
        const project::Project before = document().project();
        QTest::keyClick(window_.get(), Qt::Key_F4);
        QVERIFY(!session().shown.isProposal() && session().shown.project() == before);
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        const project::Project after = session().shown.project();
        auto* check = previewSwitch();
        QVERIFY(check->isVisible() && check->isChecked() && check->text().contains("F4"));
        QTest::keyClick(window_.get(), Qt::Key_F4);
        QVERIFY(session().shown.project() == before && session().shown.proposal() != nullptr);
        QVERIFY(!check->isChecked() && table()->isVisible());
        // The preview stays hidden after an edit, with new sizes.
        document().edit("Other text", [](project::Project& project) {
            std::get<project::TextPart>(project.row().cards[0].parts[1]).copy = {
                {project::Run::Kind::Plain, "Tide", {}}};
        });
        waitForJobs(*window_);
        QVERIFY(session().shown.project() == document().project());
        QTRY_VERIFY(session().shown.proposal() != nullptr);
        document().undoStack().undo();
        waitForJobs(*window_);
        QTRY_VERIFY(session().shown.proposal() != nullptr);
        QTest::mouseClick(check, Qt::LeftButton, {}, {8, check->height() / 2});
        QVERIFY(session().shown.project() == after && session().shown.isProposal());
        // It is on again for the next proposal.
        QTest::keyClick(window_.get(), Qt::Key_F4);
        press("Discard");
        QVERIFY(session().shown.proposal() == nullptr && session().shown.project() == before);
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        QTest::keyClick(window_.get(), Qt::Key_F4);
        press("Apply sizes");
        QVERIFY(document().project() == after);
    }

    void goesToALimitByClickAndByKey() {
        type("Wish: lines at most", "2");
        press("Solve sizes");
        const int row = firstRow(panels::AnswerModel::RowKind::Limit);
        QVERIFY(row >= 0);
        const solve::Limit limit = model()->limit(row);
        const QModelIndex index = model()->index(row, 0);
        session().view.setWidth(document().project().mostWidth);
        QTest::mouseClick(table()->viewport(), Qt::LeftButton, {}, table()->visualRect(index).center());
        QCOMPARE(session().view.width(), limit.width);
        QCOMPARE(session().view.variant(), limit.binding.variant);
        if (limit.binding.text.exists) {
            const project::PartRef part{limit.binding.text.card, limit.binding.text.part};
            QCOMPARE(session().selection.part(), std::optional(part));
        }
        // Tab reaches the table from the button above it, and the preview from the button above that; arrow
        // keys and Enter go to a place.
        session().view.setWidth(document().project().mostWidth);
        const auto focusButton = [&](const char* text) {
            for (QPushButton* button : window_->findChildren<QPushButton*>())
                if (button->text() == text) button->setFocus();
        };
        focusButton("Discard");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(previewSwitch()));
        focusButton("Solve sizes");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(table()));
        table()->setCurrentIndex(index);
        QTest::keyClick(table(), Qt::Key_Return);
        QCOMPARE(session().view.width(), limit.width);
        // A size goes to its end of the band.
        const int sizes = firstRow(panels::AnswerModel::RowKind::Sizes);
        table()->setCurrentIndex(model()->index(sizes, panels::AnswerModel::WideEnd));
        QTest::keyClick(table(), Qt::Key_Return);
        QCOMPARE(session().view.width(), model()->sizes(sizes).wide.width);
        QTest::keyClick(table(), Qt::Key_Escape);
        QVERIFY(!session().shown.isProposal());
    }

    // At 1280 × 800 the side panel is narrow: the table shows all of its text without scrolling.
    void showsTheWholeTableInANarrowPanel() {
        type("Wish: lines at most", "2");
        press("Solve sizes");
        QTest::qWait(50);
        QVERIFY(table()->isVisible());
        QCOMPARE(table()->horizontalScrollBar()->maximum(), 0);
        QCOMPARE(table()->verticalScrollBar()->maximum(), 0);
        for (int row = 0; row < model()->rowCount(); ++row) {
            if (model()->kind(row) != panels::AnswerModel::RowKind::Sizes) continue;
            for (const int column : {panels::AnswerModel::NarrowEnd, panels::AnswerModel::WideEnd}) {
                QFont bold = table()->font();
                bold.setBold(true);
                const QString text = model()->index(row, column).data().toString();
                QVERIFY2(QFontMetrics(bold).horizontalAdvance(text) + 2 * panels::AnswerView::cellMargin <=
                             table()->columnWidth(column),
                         qPrintable(text));
            }
        }
    }

    void solvesAgainAsAWishIsTyped() {
        type("Wish: lines at most", "2");
        press("Solve sizes");
        const project::Project two = session().shown.project();
        type("Wish: lines at most", "1");
        QTRY_VERIFY2(tableText().contains("because of the wish “one line”, limited by the word “"),
                     qPrintable(tableText()));
        QVERIFY(!(session().shown.project().row().style == two.row().style &&
                  session().shown.project().row().variants == two.row().variants));
    }

    void explainsAConflictAndAppliesTheChangesThatResolveIt() {
        type("Wish: size at least", "60 px");
        type("Wish: lines at most", "1");
        press("Solve sizes");
        QVERIFY(!session().shown.isProposal());
        QVERIFY2(says().contains("No sizes satisfy these wishes together:\n"), qPrintable(says()));
        QVERIFY2(says().contains("•\u00A0heading on one line"), qPrintable(says()));
        QVERIFY2(says().contains("•\u00A0heading at least 60\u00A0px"), qPrintable(says()));
        const auto offered = [&]() -> QPushButton* {
            for (QPushButton* button : window_->findChildren<QPushButton*>())
                if (button->isVisible() && button->accessibleName().startsWith("Apply: Change “"))
                    return button;
            return nullptr;
        };
        // Each that is taken ends one conflict, in one step.
        for (int taken = 0; !session().shown.isProposal(); ++taken) {
            QVERIFY(taken < 6);
            QTRY_VERIFY(offered() != nullptr);
            const int steps = document().undoStack().count();
            QTest::mouseClick(offered(), Qt::LeftButton);
            QTRY_COMPARE(document().undoStack().count(), steps + 1);
            waitForJobs(*window_);
        }
    }

    // A long row takes longer than a click may be kept waiting: the window shows that it works, and can stop.
    void showsThatItIsSolvingAndStops() {
        document().edit("Add cards", [](project::Project& project) {
            const std::vector<project::Card> cards = project.row().cards;
            while (project.row().cards.size() < 480)
                project.row().cards.insert(project.row().cards.end(), cards.begin(), cards.end());
            // Equal texts would be measured once for all.
            int number = 0;
            for (project::Card& card : project.row().cards)
                for (project::Part& part : card.parts)
                    if (auto* text = std::get_if<project::TextPart>(&part); text && text->role == "body")
                        text->copy.back().text += " and " + std::to_string(++number);
            project::wishesFor(project, "heading", {}).lines = 2;
        });
        auto* job = box_->findChild<BackgroundJob*>();
        const auto button = [&](const QString& text) {
            for (QPushButton* one : window_->findChildren<QPushButton*>())
                if (one->text() == text && one->isVisible()) return one;
            return static_cast<QPushButton*>(nullptr);
        };
        QTest::mouseClick(button("Solve sizes"), Qt::LeftButton);
        QVERIFY(job->isRunning());
        QVERIFY(button("Stop") != nullptr && button("Stop")->hasFocus());
        QVERIFY(!session().shown.isProposal());
        QTest::mouseClick(button("Stop"), Qt::LeftButton);
        QVERIFY(!job->isRunning());
        QVERIFY(button("Stop") == nullptr && button("Apply sizes") == nullptr);
        QTest::mouseClick(button("Solve sizes"), Qt::LeftButton);
        waitForJobs(*window_);
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(button("Stop") == nullptr && button("Apply sizes")->isEnabled());
        QVERIFY(button("Apply sizes")->hasFocus());
    }

    // Common practice, no source: columns step down to one as pages get narrower.
    void addsAVariantWithOneMoreColumn() {
        auto* side = window_->findChild<panels::SidePanel*>();
        side->openPanel(panels::PanelKind::Row);
        session().view.setVariant(2);
        const std::size_t before = document().project().row().variants.size();
        QPushButton* add = nullptr;
        for (QPushButton* button : side->findChildren<QPushButton*>())
            if (button->text() == "Add variant") add = button;
        QVERIFY(add != nullptr);
        QTest::mouseClick(add, Qt::LeftButton);
        waitForJobs(*window_);
        QCOMPARE(document().project().row().variants.size(), before + 1);
        QCOMPARE(session().view.variant(), std::size_t{3});
        const project::Variant& added = document().project().row().variants[3];
        QVERIFY(added.bands.size() > 1);
        int columns = 0;
        for (std::size_t band = 0; band < added.bands.size(); ++band) {
            const int here = *project::resolve(document().project(), added, band).row.columns;
            QVERIFY(here > columns);
            columns = here;
        }
        QCOMPARE(project::resolve(document().project(), added, 0).row.columns, std::optional<int>(1));
        document().undoStack().undo();
        QCOMPARE(document().project().row().variants.size(), before);
    }

    // The sample has variants of 3, 2 and 4 columns.
    void suggestsAColumnCountThatNoVariantHasAndReportsTheResult() {
        auto* side = window_->findChild<panels::SidePanel*>();
        side->openPanel(panels::PanelKind::Row);
        session().view.setVariant(1);
        QTest::qWait(20);
        const auto columns = [&]() -> controls::NumberField* {
            for (auto* number : side->findChildren<controls::NumberField*>())
                if (number->accessibleName() == "Variant with this many columns") return number;
            return nullptr;
        };
        const auto add = [&] {
            for (QPushButton* button : side->findChildren<QPushButton*>())
                if (button->text() == "Add variant") QTest::mouseClick(button, Qt::LeftButton);
            waitForJobs(*window_);
        };
        const auto added = [&] {
            for (QLabel* label : side->findChildren<QLabel*>())
                if (label->isVisible() && label->text().startsWith("Added ")) return label->text();
            return QString();
        };
        QCOMPARE(columns()->text(), QString("5"));
        add();
        QCOMPARE(document().project().row().variants[2].className, std::string("walks-quintet"));
        QVERIFY2(added().startsWith(
                     "Added the variant walks-quintet with 1 to 5 columns. Its sizes satisfy the wishes."),
                 qPrintable(added()));
        document().undoStack().undo();
        QVERIFY(added().isEmpty());
        document().edit("Wish for what cannot be", [](project::Project& project) {
            project::RoleWishes& wish = project::ownWishesOrNew(project, "heading", {});
            wish.leastSize = 80;
            wish.lines = 1;
        });
        type("Variant with this many columns", "6");
        add();
        QCOMPARE(document().project().row().variants[session().view.variant()].className,
                 std::string("walks-sextet"));
        QVERIFY2(added().contains("Its sizes are derived from the variant Calendar page. No sizes satisfy "
                                  "these wishes together: “"),
                 qPrintable(added()));
    }

    void refusesAMinimumAboveTheMaximum() {
        type("Wish: size at most", "20 px");
        const project::Project before = document().project();
        type("Wish: size at least", "30 px");
        QVERIFY(document().project() == before);
        project::Problems problems;
        QVERIFY(project::parse(project::write(document().project()), "kept", document().folder(), problems));
    }

private:
    Session& session() { return window_->session; }
    Document& document() { return session().document; }
    QString says() const {
        QString all;
        for (const QLabel* label : box_->findChildren<QLabel*>())
            all += label->text();
        return all;
    }
    panels::AnswerView* table() const { return box_->findChild<panels::AnswerView*>(); }
    panels::AnswerModel* model() const { return static_cast<panels::AnswerModel*>(table()->model()); }
    /// The table's cells, one a line.
    QString tableText() const {
        QStringList cells;
        for (int row = 0; row < model()->rowCount(); ++row)
            for (int column = 0; column < model()->columnCount(); ++column)
                cells << model()->index(row, column).data().toString();
        return cells.join('\n');
    }
    int firstRow(panels::AnswerModel::RowKind kind) const {
        for (int row = 0; row < model()->rowCount(); ++row)
            if (model()->kind(row) == kind) return row;
        return -1;
    }
    QCheckBox* previewSwitch() const {
        for (QCheckBox* one : window_->findChildren<QCheckBox*>())
            if (one->text() == "Preview (F4)") return one;
        return nullptr;
    }
    void press(const QString& text) {
        for (QPushButton* button : window_->findChildren<QPushButton*>())
            if (button->text() == text && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                waitForJobs(*window_);
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
    std::unique_ptr<TestWindow> window_;
    panels::SolveBox* box_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::SolveTest)
#include "solve_test.moc"
