// Remedies in the list of findings, chosen by mouse and keyboard, and undone.
#include <QListView>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QtTest>

#include "controls/segments.h"
#include "findings/panel.h"
#include "remedy/wording.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

class RemediesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(sample("shore-walks"));
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        panel_ = window_->findChild<findings::Panel*>();
        list_ = panel_->findChild<QListView*>();
        QTRY_VERIFY(checking().isFresh());
    }
    void cleanup() { window_.reset(); }

    void ofAFindingAreTheButtonsOfItsRow() {
        const int row = rowOf("button-lines");
        click(row);
        QVERIFY(panel_->remedies().box() != nullptr);
        QVERIFY(panel_->remedies().search().isRunning());
        waitForRemedies();
        const std::vector<findings::RemedyButton*> buttons = this->buttons();
        const auto& remedies = *panel_->remedies().search().answer();
        QCOMPARE(buttons.size(), remedies.size());
        QVERIFY(buttons.size() >= 2);
        QCoreApplication::processEvents();
        for (std::size_t i = 0; i < buttons.size(); ++i) {
            const findings::RemedyButton& button = *buttons[i];
            QCOMPARE(button.accessibleName(), QString::fromStdString(remedies[i].label));
            const QString description = button.accessibleDescription();
            QVERIFY(description.endsWith(QString::fromStdString(remedy::effectOf(remedies[i], "widths"))));
            QVERIFY(description.contains(QString::fromStdString(remedies[i].where), Qt::CaseInsensitive));
            // Nothing is clipped, and the buttons are below the text of the finding.
            QVERIFY(button.height() >= button.heightForWidth(button.width()));
            const QRect place(button.mapTo(list_->viewport(), QPoint()), button.size());
            QVERIFY(list_->visualRect(index(row)).contains(place));
        }
        QVERIFY(!document().isModified());
    }

    void pressAppliesOneAsOneStepThatIsUndone() {
        click(rowOf("last-word"));
        waitForRemedies();
        const project::Project before = document().project();
        const remedy::Remedy remedy = panel_->remedies().search().answer()->front();
        const std::size_t count = checking().findings().size();
        findings::RemedyButton* const button = buttons().front();
        QCoreApplication::processEvents();
        QVERIFY(button->isVisible());
        QTest::mouseClick(button, Qt::LeftButton, {}, button->rect().center());
        QVERIFY(document().project() == remedy.project);
        QCOMPARE(document().undoStack().count(), 1);
        QCOMPARE(document().undoStack().undoText(), QString::fromStdString(remedy.label));
        // The finding is gone, and the focus is still in the list.
        QTRY_VERIFY(checking().isFresh());
        QVERIFY(rowOf("last-word") < 0);
        QVERIFY(checking().findings().size() < count);
        QVERIFY(list_->hasFocus());
        QTest::keyClick(list_, Qt::Key_Z, Qt::ControlModifier);
        QVERIFY(document().project() == before);
        QTRY_VERIFY(checking().isFresh());
        QCOMPARE(checking().findings().size(), count);
        QVERIFY(rowOf("last-word") >= 0);
    }

    void areReachedByTheKeyboard() {
        click(rowOf("button-lines"));
        waitForRemedies();
        const std::vector<findings::RemedyButton*> buttons = this->buttons();
        for (findings::RemedyButton* button : buttons) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            QCOMPARE(QApplication::focusWidget(), button);
        }
        QTest::keyClick(buttons.back(), Qt::Key_Backtab, Qt::ShiftModifier);
        const remedy::Remedy remedy = panel_->remedies().search().answer()->at(buttons.size() - 2);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        QVERIFY(document().project() == remedy.project);
        QCOMPARE(document().undoStack().count(), 1);
    }

    void areAppliedByEnterToo() {
        click(rowOf("button-lines"));
        waitForRemedies();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        const remedy::Remedy remedy = panel_->remedies().search().answer()->front();
        QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(buttons().front()));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QVERIFY(document().project() == remedy.project);
        const QString said = "Applied: " + QString::fromStdString(remedy.label);
        const auto labels = window_->findChildren<QLabel*>();
        QVERIFY(std::ranges::any_of(labels, [&](const QLabel* one) { return one->text().startsWith(said); }));
        // The keyboard goes on at a finding that is there.
        QTRY_VERIFY(checking().isFresh());
        QVERIFY(list_->hasFocus());
        QTRY_VERIFY(list_->currentIndex().isValid());
    }

    void areInADrawerThatItsWholeHeadOpens() {
        auto* head = panel_->findChild<QToolButton*>()->parentWidget();
        const bool open = panel_->isOpen();
        QTest::mouseClick(head, Qt::LeftButton, {}, QPoint(head->width() / 2, head->height() / 2));
        QCOMPARE(panel_->isOpen(), !open);
        QTest::mouseClick(head, Qt::LeftButton, {}, QPoint(head->width() / 2, head->height() / 2));
        QCOMPARE(panel_->isOpen(), open);
    }

    // Walking through the list opens one finding after the other.
    void followTheOpenFinding() {
        click(0);
        waitForRemedies();
        const QString first = titles().join('\n');
        QTest::keyClick(list_, Qt::Key_Down);
        QCOMPARE(list_->currentIndex().row(), 1);
        waitForRemedies();
        QVERIFY(titles().join('\n') != first);
        QTest::keyClick(list_, Qt::Key_Up);
        waitForRemedies();
        QCOMPARE(titles().join('\n'), first);
    }

    // An answer about an earlier state of the row is dropped.
    void areNeverThoseOfAnEarlierState() {
        click(rowOf("button-lines"));
        waitForRemedies();
        const std::string old = panel_->remedies().search().answer()->front().label;
        findings::RemedyButton* const button = buttons().front();
        document().edit("Column gap", [](project::Project& project) {
            project.row().style.row.columnGap = units::Length::px(40);
        });
        const project::Project edited = document().project();
        // Pressed before the checks have run.
        if (button->isVisible()) button->click();
        QVERIFY(document().project() == edited);
        QTRY_VERIFY(checking().isFresh());
        if (rowOf("button-lines") >= 0) {
            click(rowOf("button-lines"));
            waitForRemedies();
            for (const remedy::Remedy& remedy : *panel_->remedies().search().answer())
                QCOMPARE(remedy.project.row().style.row.columnGap->css(), std::string("40px"));
        }
    }

    // Nobody but its author can write what a picture shows.
    void areNoneIfNothingHelps() {
        document().edit("Alternative text", [](project::Project& project) {
            for (project::Part& part : project.row().cards[0].parts)
                if (auto* picture = std::get_if<project::PicturePart>(&part)) picture->alt.clear();
        });
        QTRY_VERIFY(checking().isFresh());
        click(rowOf("alternative"));
        waitForRemedies();
        QVERIFY(panel_->remedies().search().answer()->empty());
        QVERIFY(hasLabel("Tenter found no remedy"));
    }

    // A proposal or the saved version cannot be changed.
    void areOnlyOfferedForTheDocument() {
        click(rowOf("button-lines"));
        waitForRemedies();
        session().shown.showSaved(true);
        QTRY_VERIFY(checking().isFresh());
        QVERIFY(panel_->remedies().box() == nullptr);
        session().shown.showSaved(false);
        QTRY_VERIFY(checking().isFresh());
        QVERIFY(panel_->remedies().box() != nullptr);
    }

    // From the next finding, Tab goes to its remedies; the width keys still work, and Escape goes to the row.
    void areReachedByKeyFromTheNextFinding() {
        auto* row = window_->findChild<row::RowView*>();
        row->setFocus();
        QTest::keyClick(row, Qt::Key_F8);
        QVERIFY(list_->hasFocus());
        QCOMPARE(list_->currentIndex().row(), 0);
        waitForRemedies();
        const double width = session().view.width();
        QTest::keyClick(list_, Qt::Key_Right);
        QCOMPARE(session().view.width(), width + 1);
        QTest::keyClick(list_, Qt::Key_F8);
        QCOMPARE(list_->currentIndex().row(), 1);
        QTest::keyClick(list_, Qt::Key_F8, Qt::ShiftModifier);
        QCOMPARE(list_->currentIndex().row(), 0);
        waitForRemedies();
        QVERIFY(!buttons().empty());
        QTest::keyClick(list_, Qt::Key_Tab);
        QVERIFY(buttons().front()->hasFocus());
        QTest::keyClick(buttons().front(), Qt::Key_Escape);
        QVERIFY(row->hasFocus());
    }

    // At 1280 × 800 the remedies of a long finding are below the fold.
    void areReachedByKeyAndByWheel() {
        click(rowOf("out-of-line"));
        waitForRemedies();
        QVERIFY(!buttons().empty());
        QWidget* const first = buttons().front();
        QTest::keyClick(list_, Qt::Key_Tab);
        QVERIFY(first->hasFocus());
        QTRY_VERIFY(first->visibleRegion().boundingRect() == first->rect());
        // One turn of the wheel scrolls by less than half of what the list shows.
        list_->verticalScrollBar()->setValue(0);
        const QPointF at(list_->viewport()->rect().center());
        QWheelEvent turn(at, list_->viewport()->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                         Qt::NoScrollPhase, false);
        QApplication::sendEvent(list_->viewport(), &turn);
        QVERIFY(list_->verticalScrollBar()->value() > 0);
        QVERIFY(list_->verticalScrollBar()->value() < list_->viewport()->height() / 2);
    }

private:
    static QString sample(const QString& name) {
        return QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/") + name + ".tenter.json";
    }
    Document& document() { return session().document; }
    Session& session() { return window_->session; }
    CheckRunner& checking() { return session().checks; }
    QModelIndex index(int row) { return list_->model()->index(row, 0); }
    int rowOf(const std::string& check) {
        const auto& all = checking().findings();
        const auto found = std::ranges::find(all, check, &checks::Finding::check);
        return found == all.end() ? -1 : static_cast<int>(found - all.begin());
    }
    void click(int row) {
        QVERIFY(row >= 0);
        list_->scrollTo(index(row));
        QTest::mouseClick(list_->viewport(), Qt::LeftButton, {},
                          list_->visualRect(index(row)).topLeft() + QPoint(60, 14));
        QCOMPARE(list_->currentIndex().row(), row);
    }
    void waitForRemedies() { QVERIFY(panel_->remedies().search().waitFor(20000)); }
    std::vector<findings::RemedyButton*> buttons() { return panel_->remedies().box()->buttons(); }
    QStringList titles() {
        QStringList all;
        for (const findings::RemedyButton* button : buttons())
            all << button->accessibleName();
        return all;
    }
    bool hasLabel(const QString& start) {
        for (const QLabel* label : panel_->findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(start)) return true;
        return false;
    }

    std::unique_ptr<TestWindow> window_;
    findings::Panel* panel_ = nullptr;
    QListView* list_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::RemediesTest)
#include "remedies_test.moc"
