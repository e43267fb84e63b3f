// What holds of every panel: nothing stands out of sight, every setting can be found, keys do what they say.
#include <QAbstractItemView>
#include <QCompleter>
#include <QScrollBar>
#include <QtTest>

#include "at_the_window.h"

namespace tenter::desktop {

class PanelsTest : public AtTheWindow {
    Q_OBJECT

private slots:
    void init() {
        open("shore-walks");
        openPanel(1);
    }
    void cleanup() { window_.reset(); }

    void neverScrollsSideways() {
        everyPanelFits("as opened");
        openPanel(1);
        type("Wish: most size", "26 px");
        press("Solve sizes");
        settle();
        everyPanelFits("while sizes are proposed", 1);
        press("Take these sizes");
        settle();
        everyPanelFits("with sizes taken");
        openPanel(1);
        type("Wish: least size", "26 px");
        type("Wish: lines at most", "1");
        press("Solve sizes");
        settle();
        QVERIFY(!viewing().isProposal() && label("Rather ") != nullptr);
        everyPanelFits("in a conflict", 1);
    }

    void goesToTheFoundSettingThatIsLit() {
        QLineEdit* search = seek("size");
        auto* list = search->completer()->popup();
        QTRY_VERIFY(list->isVisible());
        QTest::keyClick(list, Qt::Key_Down);
        QTest::keyClick(list, Qt::Key_Down);
        const QString lit = list->currentIndex().data().toString();
        QVERIFY(list->currentIndex().row() == 1 && search->text() == lit);
        QTest::keyClick(list, Qt::Key_Return);
        QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), nameOf(lit));
        QVERIFY(search->text().isEmpty() && !list->isVisible());
    }

    void findsByWordsThatPeopleUse() {
        for (const char* words : {"minimum size", "least size", "Smallest size"}) {
            QTest::keyClick(seek(words), Qt::Key_Return);
            QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), QString("Wish: least size"));
        }
        QTest::keyClick(seek("ratio is"), Qt::Key_Return);
        // Shown once there is a ratio: what brings it up has the keyboard.
        QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), QString("Wish: ratio to a role"));
    }

    void leadsToEverySettingItNamesInFullSight() {
        viewing().setWidth(1200);
        for (const auto& place : side().places()) {
            QVERIFY2(!place.words.startsWith(' '), qPrintable(place.words));
            side().go(place);
            QTest::qWait(60);
            QWidget* field = QApplication::focusWidget();
            QVERIFY2(field != nullptr && side().isAncestorOf(field) && field->isEnabled(),
                     qPrintable(place.words));
            QVERIFY2(field->visibleRegion().boundingRect() == field->rect(), qPrintable(place.words));
        }
    }

    void asksForTheBreakpointThatTheWidestBandStartsAt() {
        viewing().setWidth(1200);
        openPanel(0);
        press("Leeway of the breakpoint");
        QVERIFY(label("The end of the band of 2 columns") != nullptr);
    }

private:
    QLineEdit* seek(const QString& words) {
        auto* search = named<QLineEdit>("Find a setting");
        search->setFocus();
        search->clear();
        QTest::keyClicks(search, words);
        return search;
    }
    /// Of the field that a place leads to.
    QString nameOf(const QString& words) {
        for (const auto& place : side().places())
            if (place.words == words) {
                side().go(place);
                return QApplication::focusWidget()->accessibleName();
            }
        return {};
    }
    static constexpr int panelCount = 6;
    /// All of them, or `only` one: another would close what is shown.
    void everyPanelFits(const char* when, int only = -1) {
        for (int panel = 0; panel < panelCount; ++panel) {
            if (only >= 0 && panel != only) continue;
            openPanel(panel);
            for (auto* one : side().findChildren<controls::Fold*>())
                if (one->isVisible()) one->setOpen(true);
            settle();
            for (auto* scroll : side().findChildren<QScrollArea*>()) {
                if (!scroll->isVisible()) continue;
                const int least = scroll->widget()->minimumSizeHint().width();
                QVERIFY2(least <= scroll->viewport()->width(),
                         qPrintable(QString("panel %1 %2: %3 px in %4")
                                        .arg(panel)
                                        .arg(when)
                                        .arg(least)
                                        .arg(scroll->viewport()->width())));
                QCOMPARE(scroll->horizontalScrollBar()->maximum(), 0);
            }
        }
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::PanelsTest)
#include "panels_test.moc"
