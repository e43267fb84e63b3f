// What holds of every panel: nothing stands out of sight, every setting can be found, keys do what they say.
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

private:
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
