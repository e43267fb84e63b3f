// Several parts are selected in the row, and the context menu offers what can be done with them.
#include <QContextMenuEvent>
#include <QMenu>
#include <QtTest>

#include "row_at_hand.h"

namespace tenter::desktop {

class SelectionInRowTest : public RowAtHand {
    Q_OBJECT

    QPoint point(std::size_t card, const std::string& role) { return lineStart(card, role) + QPoint(4, 0); }
    void click(const QPoint& at, Qt::KeyboardModifiers modifiers = {}) {
        QTest::mouseClick(row_->viewport(), Qt::LeftButton, modifiers, at);
    }
    Place place(std::size_t card, const std::string& role) { return {card, indexOf(card, role)}; }

    QMenu* openMenu(QContextMenuEvent::Reason reason, const QPoint& at) {
        QContextMenuEvent event(reason, at, row_->viewport()->mapToGlobal(at));
        QApplication::sendEvent(
            reason == QContextMenuEvent::Mouse ? row_->viewport() : static_cast<QWidget*>(row_), &event);
        return qobject_cast<QMenu*>(QApplication::activePopupWidget());
    }
    static QStringList titles(const QMenu& menu) {
        QStringList titles;
        for (const QAction* action : menu.actions())
            if (!action->isSeparator()) titles << action->text().remove('&').section('\t', 0, 0);
        return titles;
    }
    static void choose(QMenu& menu, const QString& title) {
        for (QAction* action : menu.actions())
            if (action->text().remove('&').section('\t', 0, 0) == title) {
                menu.setActiveAction(action);
                QTest::keyClick(&menu, Qt::Key_Return);
                return;
            }
        QFAIL(qPrintable(title));
    }

private Q_SLOTS:
    void init() {
        openRow("shore-walks");
        row_->setFit(true);
    }
    void cleanup() { window_.reset(); }

    void addsToTheSelectionAndTakesOneOff() {
        click(point(0, "heading"));
        click(point(1, "body"), Qt::ControlModifier);
        QCOMPARE(session().selection.place(), std::optional(place(1, "body")));
        QCOMPARE(session().selection.others(), std::vector{place(0, "heading")});
        QCOMPARE(session().selection.roles(), (std::vector<std::string>{"body", "heading"}));
        QVERIFY(label("2 parts of 2 cards selected. Settings apply to body and heading.") != nullptr);
        click(point(1, "body"), Qt::ControlModifier);
        QCOMPARE(session().selection.place(), std::optional(place(0, "heading")));
        QVERIFY(session().selection.others().empty());
        click(point(1, "body"), Qt::ControlModifier);
        // A plain click, and Escape, select as they do with one part.
        click(point(2, "heading"));
        QVERIFY(session().selection.others().empty());
        click(point(1, "body"), Qt::ControlModifier);
        QTest::keyClick(row_, Qt::Key_Escape);
        QVERIFY(!session().selection.place() && session().selection.others().empty());
    }

    void selectsTheSamePartOfTheCardsBetween() {
        click(point(0, "heading"));
        click(point(2, "heading"), Qt::ShiftModifier);
        QCOMPARE(session().selection.all(),
                 (std::vector{place(0, "heading"), place(1, "heading"), place(2, "heading")}));
        QCOMPARE(session().selection.place(), std::optional(place(2, "heading")));
        // The end moves; the part that was selected first stays.
        click(point(1, "heading"), Qt::ShiftModifier);
        QCOMPARE(session().selection.all(), (std::vector{place(0, "heading"), place(1, "heading")}));
        click(point(0, "button"), Qt::ShiftModifier);
        QCOMPARE(session().selection.all(),
                 (std::vector{place(0, "heading"), place(0, "body"), place(0, "button")}));
    }

    void setsASettingOfAllSelectedRolesInOneStep() {
        click(point(0, "heading"));
        click(point(1, "body"), Qt::ControlModifier);
        openPanel(panels::PanelKind::Text);
        const int from = steps();
        const auto weightOf = [&](const char* role) { return project().row().style.text.find(role)->weight; };
        const auto button = project().row().style.text.find("button")->weight;
        type("Body weight", "500");
        QCOMPARE(weightOf("body"), std::optional(500.0));
        QCOMPARE(weightOf("heading"), std::optional(500.0));
        QCOMPARE(weightOf("button"), button);
        document().endGesture();
        QCOMPARE(steps(), from + 1);
        // With one part, one role.
        click(point(1, "body"));
        settle();
        type("Body weight", "300");
        QCOMPARE(weightOf("heading"), std::optional(500.0));
    }

    void movesAndRemovesSeveral() {
        const project::Project before = project();
        click(point(0, "heading"));
        click(point(1, "heading"), Qt::ControlModifier);
        QTest::keyClick(row_, Qt::Key_Right, Qt::AltModifier);
        QCOMPARE(lastStep(), QString("Move 2 cards"));
        QCOMPARE(project().row().cards[0], before.row().cards[2]);
        QCOMPARE(project().row().cards[1], before.row().cards[0]);
        QCOMPARE(session().selection.all(), (std::vector{place(1, "heading"), place(2, "heading")}));
        QTest::keyClick(row_, Qt::Key_Delete);
        QCOMPARE(lastStep(), QString("Remove 2 parts"));
        QCOMPARE(indexOf(0, "heading") < project().row().cards[0].parts.size(), true);
        QCOMPARE(indexOf(1, "heading"), project().row().cards[1].parts.size());
        document().undoStack().undo();
        document().undoStack().undo();
        QCOMPARE(project(), before);
    }

    void offersWhatApplies() {
        QMenu* menu = openMenu(QContextMenuEvent::Mouse, point(0, "heading"));
        QVERIFY(menu != nullptr);
        QCOMPARE(session().selection.place(), std::optional(place(0, "heading")));
        QCOMPARE(titles(*menu),
                 QStringList({"Edit text", "Copy font size of selected text", "Move part up",
                              "Move part down", "Remove part", "Move card right", "Duplicate card",
                              "Remove card", "Add card", "Show settings", "Solve sizes"}));
        menu->close();
        menu = openMenu(QContextMenuEvent::Mouse, middle(laid(3, indexOf(3, "picture")).box));
        QVERIFY(menu != nullptr);
        QVERIFY(titles(*menu).startsWith("Change picture…"));
        QVERIFY(titles(*menu).contains("Move card left") && !titles(*menu).contains("Move card right"));
        QVERIFY(!titles(*menu).contains("Edit text"));
        menu->close();
        // Beside the cards.
        menu = openMenu(QContextMenuEvent::Mouse, at(5, 5));
        QVERIFY(menu != nullptr);
        QVERIFY(!session().selection.place().has_value());
        QCOMPARE(titles(*menu), QStringList({"Add card", "Show settings", "Solve sizes"}));
        menu->close();
        QVERIFY(document().undoStack().count() == 0);
    }

    void opensForTheSelectedPartByKey() {
        session().selection.select(place(1, "body"));
        QMenu* menu = openMenu(QContextMenuEvent::Keyboard, {});
        QVERIFY(menu != nullptr && titles(*menu).contains("Edit text"));
        choose(*menu, "Duplicate card");
        QCOMPARE(project().row().cards.size(), std::size_t{5});
        QCOMPARE(lastStep(), QString("Duplicate card"));
        menu = openMenu(QContextMenuEvent::Keyboard, {});
        QVERIFY(menu != nullptr);
        choose(*menu, "Edit text");
        QVERIFY(qobject_cast<QTextEdit*>(QApplication::focusWidget()) != nullptr);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        menu = openMenu(QContextMenuEvent::Keyboard, {});
        QVERIFY(menu != nullptr);
        choose(*menu, "Add card");
        QCOMPARE(project().row().cards.size(), std::size_t{6});
        QCOMPARE(lastStep(), QString("Add card"));
        QCOMPARE(words(3, "heading"), std::string("New heading"));
    }

    void addsTheFirstCardOfAnEmptyRow() {
        document().edit("Clear", [](project::Project& project) { project.row().cards.clear(); });
        settle();
        QMenu* menu = openMenu(QContextMenuEvent::Mouse, at(100, 100));
        QVERIFY(menu != nullptr);
        choose(*menu, "Add card");
        QCOMPARE(project().row().cards.size(), std::size_t{1});
        QCOMPARE(words(0, "heading"), std::string("New heading"));
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::SelectionInRowTest)
#include "selection_in_row_test.moc"
