// What is wished, in the window: for all widths or a band, seen solved as it changes, explained where it
// binds; sizes by the card; the leeway of the row. What is computed is proved in tests/solve.
#include <QtTest>

#include "at_the_window.h"
#include "axis/wish_mark.h"
#include "document/wording.h"
#include "panels/answer_view.h"
#include "panels/leeway_box.h"
#include "panels/scale_box.h"
#include "panels/solve_box.h"
#include "project/cascade.h"
#include "project/role_wishes.h"

namespace tenter::desktop {

class WishesTest : public AtTheWindow {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        open("shore-walks");
        openPanel(panels::PanelKind::Text);
    }
    void cleanup() { window_.reset(); }

    void wishesForTheBandInViewWhereEditsGoToIt() {
        session().view.setWidth(700);
        session().scope.setLayer(project::CascadeLayer::Band);
        settle();
        type("Wish: lines at most", "2");
        const project::WishWidths band{590, 930};
        const project::RoleWishes* said = project::ownWishesFor(project(), "heading", band);
        QVERIFY(said != nullptr && said->lines == 2);
        QVERIFY(project::ownWishesFor(project(), "heading", {}) == nullptr);
        QVERIFY(label("Wishes, " + bandWidths(project().row().variants[0], 1)) != nullptr);
        // Emptied, it is as for all widths again, and the project as it was.
        type("Wish: lines at most", "");
        QVERIFY(!project().row().wishes);
        QCOMPARE(field("Wish: lines at most")->text(), QString("3"));
    }

    void wishesForWidthsThatAreNoBand() {
        session().view.setWidth(700);
        QVERIFY(!field("Wishes: above")->isVisible());
        choose("Wishes: widths", "Other widths…");
        QVERIFY(field("Wishes: above")->isVisible());
        QCOMPARE(field("Wishes: above")->text(), QString("700 px"));
        type("Wishes: up to", "1100");
        // What nobody wishes there is not said yet.
        QVERIFY(!project().row().wishes);
        type("Wish: lines at most", "2");
        const project::WishWidths some{700, 1100};
        const auto linesAt = [&](const project::WishWidths& widths) {
            const project::RoleWishes* said = project::ownWishesFor(project(), "heading", widths);
            return said != nullptr ? said->lines : std::nullopt;
        };
        QCOMPARE(linesAt(some), std::optional(2));
        QVERIFY(label("Wishes, 701–1100\u00A0px") != nullptr);
        // They move with all that is wished for them, and back.
        type("Wishes: above", "800");
        QVERIFY(project::ownWishesFor(project(), "heading", some) == nullptr);
        QCOMPARE(linesAt({800, 1100}), std::optional(2));
        type("Wishes: above", "1200");
        QCOMPARE(linesAt({800, 1100}), std::optional(2));
        document().undoStack().undo();
        settle();
        QCOMPARE(linesAt(some), std::optional(2));
        // For every width it is as before, and these are there to be chosen.
        choose("Wishes: widths", "At every width");
        QCOMPARE(field("Wish: lines at most")->text(), QString("3"));
        choose("Wishes: widths", QString("701–1100\u00A0px"));
        QCOMPARE(field("Wish: lines at most")->text(), QString("2"));
        type("Wish: lines at most", "");
        QVERIFY(!project().row().wishes);
    }

    void unwishesWhatIsUsual() {
        type("Wish: lines at most", "none");
        QVERIFY(project::wishesFor(project(), "heading", {}).lines == project::unlimitedWishes().lines);
        QCOMPARE(field("Wish: lines at most")->text(), QString("none"));
        type("Wish: measure at least", "none");
        // Nobody wishes that of a heading.
        QVERIFY(!project::ownWishesFor(project(), "heading", {})->leastMeasure);
    }

    void keepsWhatIsWantedLessOftenInFolds() {
        QVERIFY(!field("Wish: growth at most")->isVisible());
        fold("More wishes")->button()->click();
        QVERIFY(field("Wish: growth at most")->isVisible());
        type("Wish: growth at most", "0.5 px");
        QCOMPARE(project::wishesFor(project(), "heading", {}).growth, std::optional(0.5));
        type("Wish: double at zoom", "400");
        QCOMPARE(project::wishesFor(project(), "heading", {}).zoom, std::optional(4.0));
        fold("More wishes")->button()->click();
        settle();
        QVERIFY2(fold("More wishes")->button()->text().contains("2 set"),
                 qPrintable(fold("More wishes")->button()->text()));
        document().undoStack().undo();
        document().undoStack().undo();
        QVERIFY(!project().row().wishes);
    }

    void relatesARoleToAnother() {
        fold("More wishes")->button()->click();
        auto* list = named<QComboBox>("Wish: ratio to role");
        QVERIFY(list != nullptr);
        list->setFocus();
        QTest::keyClicks(list, "Body");
        Q_EMIT list->activated(list->currentIndex());
        const project::RoleWishes wished = project::wishesFor(project(), "heading", {});
        QCOMPARE(wished.ratioTo, std::optional<std::string>("body"));
        QVERIFY(wished.leastRatio && !wished.ratio);
        settle();
        type("Wish: ratio", "1.4");
        QCOMPARE(project::wishesFor(project(), "heading", {}).leastRatio, std::optional(1.4));
        press("Wish: ratio is: Exactly");
        QCOMPARE(project::wishesFor(project(), "heading", {}).ratio, std::optional(1.4));
        QVERIFY(!project::wishesFor(project(), "heading", {}).leastRatio);
    }

    void saysHowSizesAreSought() {
        fold("Solver settings for all roles")->button()->click();
        type("Solver: size grid", "0.5 px");
        type("Solver: reserve", "20");
        QCOMPARE(project().row().wishes->grid->css(), std::string("0.5px"));
        QCOMPARE(*project().row().wishes->reserve, 0.2);
        auto* cards = named<QLineEdit>("Solver: ignored cards");
        cards->setFocus();
        cards->selectAll();
        QTest::keyClicks(cards, "3, 1");
        QTest::keyClick(cards, Qt::Key_Return);
        QCOMPARE(project().row().wishes->without, (std::vector<int>{0, 2}));
    }

    // In the same frame: before the event loop turns.
    void solvesAgainWithEachStepOfAWish() {
        type("Wish: size at most", "26 px");
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        controls::NumberField* most = field("Wish: size at most");
        most->setFocus();
        double size = headingAt(1900);
        for (int i = 0; i < 4; ++i) {
            QTest::keyClick(most, Qt::Key_Down);
            QTRY_VERIFY(session().shown.isProposal());
            QVERIFY(headingAt(1900) < size);
            size = headingAt(1900);
        }
        QVERIFY(size <= 24.01);
    }

    void solvesEveryVariantForTheSameSize() {
        session().scope.setLayer(project::CascadeLayer::Variant);
        settle();
        fold("More wishes")->button()->click();
        press("Wish: variants: Same size");
        QVERIFY(project::wishesFor(project(), "heading", {}).sameInVariants == true);
        type("Wish: size at most", "26 px");
        press("Solve sizes");
        const auto headings = [&] {
            std::vector<double> sizes;
            for (std::size_t variant = 0; variant < session().shown.project().row().variants.size();
                 ++variant) {
                const auto& bands = session().shown.project().row().variants[variant];
                const std::size_t band = project::bandAt(bands, 1500);
                const auto settings = project::resolve(session().shown.project(), bands, band);
                sizes.push_back(settings.text.find("heading")->size->sizeAt(1500));
            }
            return sizes;
        };
        QCOMPARE(headings(), std::vector<double>(3, headings()[0]));
        // Another wish is solved for in all of them as it changes.
        const double before = headings()[0];
        controls::NumberField* most = field("Wish: size at most");
        most->setFocus();
        for (int i = 0; i < 16; ++i)
            QTest::keyClick(most, Qt::Key_Down);
        waitForJobs(*window_);
        QTRY_VERIFY(session().shown.isProposal());
        QCOMPARE(headings(), std::vector<double>(3, headings()[0]));
        QVERIFY(headings()[0] < before);
        const int steps = document().undoStack().count();
        press("Apply sizes");
        QCOMPARE(document().undoStack().count(), steps + 1);
        QCOMPARE(headings(), std::vector<double>(3, headings()[0]));
    }

    void dragsAWishByItsName() {
        type("Wish: size at most", "26 px");
        press("Solve sizes");
        const int steps = document().undoStack().count();
        QLabel* name = label("Size at most");
        QVERIFY(name != nullptr);
        const QPoint hold(10, 10);
        QTest::mousePress(name, Qt::LeftButton, {}, hold);
        for (int by = 4; by <= 16; by += 4)
            QTest::mouseMove(name, hold - QPoint(by, 0));
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(headingAt(1900) <= 24.01);
        QTest::mouseRelease(name, Qt::LeftButton, {}, hold - QPoint(16, 0));
        QCOMPARE(project::wishesFor(project(), "heading", {}).mostSize, std::optional(24.0));
        QCOMPARE(document().undoStack().count(), steps + 1);
    }

    void marksWhereWishesDecideAndGoesThere() {
        type("Wish: lines at most", "2");
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        axis::WishMark* found = nullptr;
        for (auto* mark : window_->findChildren<axis::WishMark*>())
            if (mark->isVisible() && mark->mark().part) found = mark;
        QVERIFY(found != nullptr);
        const PlotMark mark = found->mark();
        QVERIFY(!mark.conflicts && found->accessibleName() == mark.says);
        QCOMPARE(mark.variant, session().view.variant());
        // It stands on the proposed ramp, or a px past where that starts.
        const auto& roles = session().layouts.row().roles();
        const auto role = static_cast<std::uint32_t>(std::ranges::find(roles, mark.role) - roles.begin());
        QVERIFY(qAbs(session().layouts.row().fontSize(role, mark.width) - mark.size) < 0.1);
        QTest::mouseClick(found, Qt::LeftButton);
        QCOMPARE(session().view.width(), mark.width);
        QCOMPARE(session().selection.part(), mark.part);
        press("Discard");
        for (auto* each : window_->findChildren<axis::WishMark*>())
            QVERIFY(!each->isVisible());
    }

    void explainsAConflictWhereItIs() {
        type("Wish: size at least", "60 px");
        type("Wish: lines at most", "1");
        press("Solve sizes");
        QVERIFY(!session().shown.isProposal());
        QVERIFY(!session().plot.marks().empty());
        const PlotMark mark = session().plot.marks().front();
        QVERIFY(mark.conflicts && mark.part);
        session().view.setWidth(1900);
        auto* table = window_->findChild<panels::AnswerView*>();
        QVERIFY(table != nullptr && table->isVisible());
        const QModelIndex place = table->model()->index(0, 0);
        QCOMPARE(place.data().toString(), mark.says);
        QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualRect(place).center());
        QCOMPARE(session().view.width(), mark.width);
        QCOMPARE(session().view.variant(), mark.variant);
        QCOMPARE(session().selection.part(), mark.part);
    }

    void makesAllSizesFollowTheCardAndThePageAgain() {
        const project::Project before = project();
        press("Use card width for all sizes…");
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(project() == before);
        QVERIFY(label("container") != nullptr);
        press("Apply sizes");
        QVERIFY(!session().shown.isProposal());
        for (const char* role : {"heading", "body", "button"})
            QVERIFY(project::resolve(project(), project().row().variants[1], 0).text.find(role)->follow ==
                    project::Follow::Card);
        QCOMPARE(document().undoStack().undoText(), QString("Use card width for all sizes"));
        settle();
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal() || label("satisfy every wish") != nullptr);
        press("Discard");
        press("Use viewport width for all sizes…");
        press("Apply sizes");
        QVERIFY(project::resolve(project(), project().row().variants[1], 0).text.find("body")->follow ==
                project::Follow::Viewport);
        document().undoStack().undo();
        document().undoStack().undo();
        QVERIFY(project() == before);
    }

    void scrollsToAProposal() {
        press("Use card width for all sizes…");
        for (QPushButton* button : window_->findChildren<QPushButton*>()) {
            if (button->text() != "Apply sizes") continue;
            QTest::qWait(200);
            QCOMPARE(button->visibleRegion().boundingRect(), button->rect());
            return;
        }
        QFAIL("nothing is proposed");
    }

    void showsOneProposalAtATime() {
        type("Wish: lines at most", "2");
        press("Solve sizes");
        QTRY_VERIFY(session().shown.isProposal());
        press("Use card width for all sizes…");
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(session().plot.marks().empty());
        const project::Project proposed = session().shown.project();
        press("Apply sizes");
        QVERIFY(!session().shown.isProposal());
        QVERIFY(project() == proposed);
    }

    void showsTheLeewayOfABreakpointAndAppliesTheSuggestion() {
        // Two columns start so early there that labels wrap.
        session().view.setWidth(500);
        openPanel(panels::PanelKind::Row);
        const auto leeway =
            solve::leewayOf(project(), 0, 0, solve::LeewaySetting::Breakpoint, document().store());
        QVERIFY(leeway && leeway->range && leeway->range->suggested != leeway->current);
        press("Breakpoint");
        QTRY_VERIFY(session().shown.isProposal());
        QVERIFY(label("must be ") != nullptr);
        QCOMPARE(project().row().variants[0].bands[0].upTo, std::optional(leeway->current));
        auto* box = window_->findChild<panels::LeewayBox*>();
        for (QPushButton* button : box->findChildren<QPushButton*>())
            if (button->isVisible() && button->text().startsWith("Apply ")) {
                QTest::mouseClick(button, Qt::LeftButton);
                break;
            }
        QCOMPARE(project().row().variants[0].bands[0].upTo, std::optional(leeway->range->suggested));
        document().undoStack().undo();
        QCOMPARE(project().row().variants[0].bands[0].upTo, std::optional(leeway->current));
    }

private:
    double headingAt(double width) {
        const auto& roles = session().layouts.row().roles();
        return session().layouts.row().fontSize(
            static_cast<std::uint32_t>(std::ranges::find(roles, "heading") - roles.begin()), width);
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::WishesTest)
#include "wishes_test.moc"
