// Gaps, paddings, breakpoints and cards are dragged and moved in the row; each change is one step.
#include <QtTest>

#include "axis/handle.h"
#include "project/cascade.h"
#include "row/editing/card_drag.h"
#include "row/editing/spacing.h"
#include "row_at_hand.h"

namespace tenter::desktop {

using row::editing::Spacing;

class CardsInRowTest : public RowAtHand {
    Q_OBJECT

    Spacing spacing(const std::string& path, std::size_t index = 0) {
        const auto all = row::editing::spacingsOf(session().layouts.current());
        const auto found = std::ranges::find_if(
            all, [&](const Spacing& one) { return one.path == path && one.index == index; });
        return found == all.end() ? Spacing{} : *found;
    }
    QWidget* view() { return row_->viewport(); }
    void grab(const QPoint& from, const QPoint& to) {
        QTest::mouseMove(view(), from);
        QTest::mousePress(view(), Qt::LeftButton, {}, from);
        // In steps, as a hand does.
        for (int step = 1; step <= 4; ++step)
            drag(from + (to - from) * step / 4);
    }
    void drag(const QPoint& to) {
        QMouseEvent move(QEvent::MouseMove, to, view()->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(view(), &move);
    }
    void drop(const QPoint& at) { QTest::mouseRelease(view(), Qt::LeftButton, {}, at); }
    std::vector<std::string> order() {
        std::vector<std::string> headings;
        for (std::size_t card = 0; card < project().row().cards.size(); ++card)
            headings.push_back(words(card, "heading"));
        return headings;
    }
    void setEverywhere(const std::string& path, const std::string& value) {
        QVERIFY(document()
                    .edit("Set",
                          [&](project::Project& project) {
                              project::Problems problems;
                              project::setSetting(project.row().style, path, value, problems);
                              for (project::Variant& variant : project.row().variants) {
                                  project::setSetting(variant.set, path, nullptr, problems);
                                  for (project::Band& band : variant.bands)
                                      project::setSetting(band.set, path, nullptr, problems);
                              }
                          })
                    .empty());
        document().endGesture();
        settle();
    }

private Q_SLOTS:
    void init() { openRow("shore-walks"); }
    void cleanup() { window_.reset(); }

    void dragsTheColumnGapInItsUnit() {
        for (const auto& [set, by, expected] :
             {std::tuple{"20px", 13, "33px"}, {"20px", -200, "0"}, {"1.5em", 12, "2.25em"}}) {
            setEverywhere("row/columnGap", set);
            const int from = steps();
            const Spacing gap = spacing("row/columnGap");
            const QPoint start = middle(gap.area) + QPoint(2, 0);
            grab(start, start + QPoint(by, 0));
            QCOMPARE(QString::fromStdString(project().row().style.row.columnGap->css()), QString(expected));
            drop(start + QPoint(by, 0));
            QCOMPARE(steps(), from + 1);
            QCOMPARE(lastStep(), QString("Change column gap"));
            document().undoStack().undo();
            QCOMPARE(QString::fromStdString(project().row().style.row.columnGap->css()), QString(set));
        }
    }

    void followsTheEdgeOfTheGapThatIsGrabbed() {
        setEverywhere("row/columnGap", "40px");
        const QPoint start = middle(spacing("row/columnGap").area) - QPoint(15, 0);
        grab(start, start - QPoint(6, 0));
        drop(start - QPoint(6, 0));
        QCOMPARE(QString::fromStdString(project().row().style.row.columnGap->css()), QString("46px"));
    }

    void dragsPaddingsAndTheRowGap() {
        session().view.setWidth(500);  // one column
        settle();
        setEverywhere("row/rowGap", "30px");
        setEverywhere("card/padding/left", "24px");
        row_->verticalScrollBar()->setValue(at(0, spacing("row/rowGap").area.y).y() - view()->height() / 2);
        QPoint start = middle(spacing("row/rowGap").area);
        QVERIFY(view()->rect().contains(start));
        grab(start, start + QPoint(0, 8));
        drop(start + QPoint(0, 8));
        QCOMPARE(QString::fromStdString(project().row().style.row.rowGap->css()), QString("38px"));
        QCOMPARE(lastStep(), QString("Change row gap"));
        const layout::LaidPart& button = laid(0, indexOf(0, "button"));
        const Spacing left = spacing("card/padding/left");
        start = at(left.area.x + left.area.width / 2, button.box.y + button.box.height / 2);
        grab(start, start + QPoint(9, 0));
        drop(start + QPoint(9, 0));
        QCOMPARE(QString::fromStdString(project().row().style.card.padding.left->css()), QString("33px"));
        QCOMPARE(lastStep(), QString("Change card padding, left"));
    }

    void restoresTheGapWithEscape() {
        const project::Project before = project();
        const QPoint start = middle(spacing("row/columnGap").area) + QPoint(2, 0);
        grab(start, start + QPoint(20, 0));
        QVERIFY(project() != before);
        QTest::keyClick(row_, Qt::Key_Escape);
        QCOMPARE(project(), before);
        QCOMPARE(document().undoStack().count(), 0);
        // The rest of the gesture changes nothing.
        drag(start + QPoint(40, 0));
        drop(start + QPoint(40, 0));
        QCOMPARE(project(), before);
    }

    void changesTheScopeOrTheLayerThatDecides() {
        setEverywhere("row/columnGap", "20px");
        const std::size_t variant = session().view.variant();
        const std::size_t band = session().layouts.band();
        const auto gapOf = [&](project::CascadeLayer layer) {
            const auto& gap = project::settingsOf(project(), layer, variant, band).row.columnGap;
            return gap ? QString::fromStdString(gap->css()) : QString();
        };
        const auto widen = [&] {
            const QPoint start = middle(spacing("row/columnGap").area) + QPoint(2, 0);
            grab(start, start + QPoint(5, 0));
            drop(start + QPoint(5, 0));
        };
        session().scope.setLayer(project::CascadeLayer::Band);
        widen();
        QCOMPARE(gapOf(project::CascadeLayer::Band), QString("25px"));
        QCOMPARE(gapOf(project::CascadeLayer::Style), QString("20px"));
        // For all variants, the drag would have no effect at this width: it changes what decides here.
        session().scope.setLayer(project::CascadeLayer::Style);
        widen();
        QCOMPARE(gapOf(project::CascadeLayer::Band), QString("30px"));
        QCOMPARE(gapOf(project::CascadeLayer::Style), QString("20px"));
    }

    void dragsInAScaledRowAndInAllVariants() {
        setEverywhere("row/columnGap", "40px");
        row_->setFit(true);
        const double zoom = row_->zoom();
        QVERIFY(zoom < 1);
        QPoint start = middle(spacing("row/columnGap").area) + QPoint(2, 0);
        grab(start, start + QPoint(6, 0));
        drop(start + QPoint(6, 0));
        const double expected = std::round(40 + 6 / zoom);
        QCOMPARE(project().row().style.row.columnGap->value(), expected);
        row_->allVariantsAction()->setChecked(true);
        settle();
        const double all = row_->zoom();
        const QRectF page = row_->sheetsInView()[0].page;
        const Spacing gap = spacing("row/columnGap");
        start = (page.topLeft() + QPointF(gap.area.x + gap.area.width / 2, gap.area.y + 20) * all).toPoint() +
                QPoint(1, 0);
        grab(start, start + QPoint(8, 0));
        drop(start + QPoint(8, 0));
        QCOMPARE(project().row().style.row.columnGap->value(), std::round(expected + 8 / all));
    }

    void selectsAsBefore() {
        session().selection.select(Place{0, 0});
        QTest::mouseClick(view(), Qt::LeftButton, {}, middle(spacing("row/columnGap").area));
        QVERIFY(!session().selection.place().has_value());
        QCOMPARE(document().undoStack().count(), 0);
        QTest::mouseClick(view(), Qt::LeftButton, {}, lineStart(1, "heading"));
        QCOMPARE(session().selection.place(), std::optional(Place{1, indexOf(1, "heading")}));
    }

    void movesABreakpointWithItsValueShownAndBack() {
        const std::size_t variant = session().view.variant();
        const double before = *project().row().variants[variant].bands[0].upTo;
        axis::Handle* edge = nullptr;
        for (auto* one : window_->findChildren<axis::Handle*>())
            if (one->accessibleName().startsWith("Breakpoint") && one->isVisible() && edge == nullptr)
                edge = one;
        QVERIFY(edge != nullptr);
        const QPoint hold = edge->rect().center();
        const auto pull = [&](const QPoint& by) {
            QMouseEvent move(QEvent::MouseMove, hold + by, edge->mapToGlobal(hold + by), Qt::NoButton,
                             Qt::LeftButton, {});
            QApplication::sendEvent(edge, &move);
        };
        QTest::mousePress(edge, Qt::LeftButton, {}, hold);
        pull({20, 0});
        QVERIFY(*project().row().variants[variant].bands[0].upTo > before);
        QTest::keyClick(edge, Qt::Key_Escape);
        QCOMPARE(*project().row().variants[variant].bands[0].upTo, before);
        QCOMPARE(document().undoStack().count(), 0);
        QTest::mouseRelease(edge, Qt::LeftButton, {}, hold);
        QTest::mousePress(edge, Qt::LeftButton, {}, hold);
        pull({20, 0});
        QTest::mouseRelease(edge, Qt::LeftButton, {}, hold);
        QCOMPARE(steps(), 1);
        QCOMPARE(lastStep(), QString("Move breakpoint"));
    }

    void dropsACardAtTheLine() {
        const std::vector<std::string> before = order();
        QCOMPARE(before.size(), std::size_t{4});
        const QPoint from = lineStart(0, "heading") + QPoint(4, 0);
        const layout::Box second = layout().cards[1].box;
        const QPoint to = at(second.right() - 20, second.y + 200);
        grab(from, to);
        // Nothing changes before the card is dropped.
        QCOMPARE(order(), before);
        drop(to);
        QCOMPARE(order(), (std::vector{before[1], before[0], before[2], before[3]}));
        QCOMPARE(lastStep(), QString("Move card"));
        QCOMPARE(session().selection.place(), std::optional(Place{1, indexOf(1, "heading")}));
        document().undoStack().undo();
        QCOMPARE(order(), before);
        grab(from, to);
        QTest::keyClick(row_, Qt::Key_Escape);
        drop(to);
        QCOMPARE(order(), before);
    }

    void movesACardByKeys() {
        const std::vector<std::string> before = order();
        session().selection.select(Place{0, indexOf(0, "body")});
        QTest::keyClick(row_, Qt::Key_Right, Qt::AltModifier);
        QCOMPARE(order(), (std::vector{before[1], before[0], before[2], before[3]}));
        QTest::keyClick(row_, Qt::Key_Right, Qt::AltModifier);
        QCOMPARE(order(), (std::vector{before[1], before[2], before[0], before[3]}));
        QCOMPARE(session().selection.place(), std::optional(Place{2, indexOf(2, "body")}));
        QTest::keyClick(row_, Qt::Key_Right, Qt::AltModifier);
        QTest::keyClick(row_, Qt::Key_Right, Qt::AltModifier);
        QVERIFY(label("This is the last card") != nullptr);
        QCOMPARE(steps(), 3);
        QTest::keyClick(row_, Qt::Key_Left, Qt::AltModifier);
        QTest::keyClick(row_, Qt::Key_Left, Qt::AltModifier);
        QCOMPARE(order(), (std::vector{before[1], before[0], before[2], before[3]}));
    }

    void movesCardsFromRightToLeft() {
        window_.reset();
        openRow("marsh-ar");
        row_->setFit(true);
        const std::vector<std::string> before = order();
        QVERIFY(layout().cards[1].box.x < layout().cards[0].box.x);
        session().selection.select(Place{0, indexOf(0, "heading")});
        QTest::keyClick(row_, Qt::Key_Left, Qt::AltModifier);
        std::vector<std::string> expected = before;
        std::swap(expected[0], expected[1]);
        QCOMPARE(order(), expected);
        // The card on the right is dropped to the left of the second one.
        const layout::Box second = layout().cards[1].box;
        const layout::LaidPart& heading = laid(0, indexOf(0, "heading"));
        const QPoint from = middle(heading.box);
        const QPoint to = at(second.x + 5, second.y + second.height / 2);
        grab(from, to);
        drop(to);
        QCOMPARE(order(), before);
    }

    void findsThePlaceInEveryLine() {
        session().view.setWidth(700);  // two columns
        settle();
        const layout::Layout& laid = layout();
        QVERIFY(laid.cards.size() == 4 && laid.cards[2].box.y > laid.cards[0].box.y);
        const auto at = [&](std::size_t card, double share) {
            const layout::Box& box = laid.cards[card].box;
            return row::editing::dropPlaceAt(laid, {box.x + box.width * share, box.y + 10}, false).before;
        };
        QCOMPARE(at(0, 0.2), std::size_t{0});
        QCOMPARE(at(0, 0.8), std::size_t{1});
        QCOMPARE(at(1, 0.8), std::size_t{2});
        QCOMPARE(at(2, 0.2), std::size_t{2});
        QCOMPARE(at(2, 0.8), std::size_t{3});
        QCOMPARE(at(3, 0.8), std::size_t{4});
        session().view.setWidth(400);  // one column
        settle();
        const layout::Box& box = layout().cards[1].box;
        const auto below = row::editing::dropPlaceAt(layout(), {box.x + 5, box.bottom() - 5}, false);
        QCOMPARE(below.before, std::size_t{2});
        QVERIFY(below.line.width > below.line.height);
    }

    void duplicatesRemovesAndMovesParts() {
        const project::Project before = project();
        session().selection.select(Place{1, indexOf(1, "heading")});
        QTest::keyClick(row_, Qt::Key_D, Qt::ControlModifier);
        QCOMPARE(project().row().cards.size(), before.row().cards.size() + 1);
        QCOMPARE(project().row().cards[2], before.row().cards[1]);
        QCOMPARE(lastStep(), QString("Duplicate card"));
        session().selection.select(Place{2, {}});
        QTest::keyClick(row_, Qt::Key_Delete);
        QCOMPARE(project(), before);
        QCOMPARE(lastStep(), QString("Remove card"));
        const std::size_t heading = indexOf(0, "heading");
        session().selection.select(Place{0, heading});
        QTest::keyClick(row_, Qt::Key_Down, Qt::AltModifier);
        QCOMPARE(indexOf(0, "heading"), heading + 1);
        QCOMPARE(session().selection.place(), std::optional(Place{0, heading + 1}));
        QTest::keyClick(row_, Qt::Key_Delete);
        QCOMPARE(indexOf(0, "heading"), project().row().cards[0].parts.size());
        QCOMPARE(lastStep(), QString("Remove part"));
        QCOMPARE(steps(), 4);
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::CardsInRowTest)
#include "cards_in_row_test.moc"
