// The room of the window: whole cards, many settings, the drawer of findings, and what is kept between
// starts.
#include <QAbstractSpinBox>
#include <QLabel>
#include <QListView>
#include <QScrollArea>
#include <QScrollBar>
#include <QtTest>

#include "axis/axis_pane.h"
#include "axis/disclosure.h"
#include "axis/plot.h"
#include "axis/size_plot.h"
#include "controls/segments.h"
#include "row/ink.h"
#include "showing.h"

namespace tenter::desktop {

class RoomTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { forgetSettings(); }
    void cleanup() { window_.reset(); }

    void fitShowsAWholeCardOfEverySample_data() {
        QTest::addColumn<QString>("name");
        for (const char* name :
             {"bird-counts", "ferry-words", "marsh-ar", "night-sky", "season", "shore-walks"})
            QTest::newRow(name) << name;
    }
    // In every variant, at widths of each band.
    void fitShowsAWholeCardOfEverySample() {
        QFETCH(QString, name);
        start(name);
        row().fitAction()->trigger();
        const std::size_t variants = session().document.project().row().variants.size();
        for (std::size_t variant = 0; variant < variants; ++variant) {
            session().view.setVariant(variant);
            for (const double width : {360.0, 700.0, 1120.0, 1440.0}) {
                session().view.setWidth(width);
                QCoreApplication::processEvents();
                const layout::Layout& layout = session().layouts.layout();
                const layout::LaidCard& card = layout.cards.front();
                const double top = card.box.y * row().zoom() - row().verticalScrollBar()->value();
                const double bottom = card.box.bottom() * row().zoom() - row().verticalScrollBar()->value();
                QVERIFY2(top >= 0 && bottom <= row().viewport()->height(),
                         qPrintable(QString("variant %1 at %2 px: %3 to %4 of %5")
                                        .arg(variant)
                                        .arg(width)
                                        .arg(top)
                                        .arg(bottom)
                                        .arg(row().viewport()->height())));
            }
        }
    }

    // The flag of the cursor is above the numbers of the ruler.
    void theFlagOfTheCursorTouchesNoNumber() {
        start("shore-walks");
        auto* axis = window_->findChild<axis::AxisPane*>();
        const QImage image = axis->grab().toImage();
        const row::Ink ink = row::Ink::of(axis->palette());
        const auto isFlag = [&](int x, int y) { return image.pixelColor(x, y) == ink.accent; };
        constexpr int inside = 3;  // a row of the flag above its text
        int first = 0;
        while (first < image.width() && !isFlag(first, inside))
            ++first;
        int last = first;
        while (last + 1 < image.width() && isFlag(last + 1, inside))
            ++last;
        QVERIFY2(last - first > 100, qPrintable(QString::number(last - first)));
        int below = inside;
        while (isFlag(first + 2, below))
            ++below;
        for (int x = first + 2; x <= last; ++x)
            QCOMPARE(image.pixelColor(x, below), ink.ground);
        // There are numbers below, and they are not cut.
        int inked = 0;
        for (int x = first + 2; x <= last; ++x)
            for (int y = below + 1; y < below + 12; ++y)
                inked += image.pixelColor(x, y) == ink.quiet ? 1 : 0;
        QVERIFY(inked > 0);
    }

    void atActualSizeTheFirstCardsAreWhole() {
        start("shore-walks");
        QCOMPARE(row().zoom(), 1.0);
        const layout::LaidCard& card = session().layouts.layout().cards.front();
        QTRY_VERIFY(card.box.bottom() - row().verticalScrollBar()->value() <= row().viewport()->height());
        QVERIFY(card.box.y >= row().verticalScrollBar()->value());
    }

    void theSidePanelShowsTenSettings() {
        start("shore-walks");
        auto* side = window_->findChild<panels::SidePanel*>();
        for (const auto kind : {panels::PanelKind::Row, panels::PanelKind::Spacing}) {
            side->openPanel(kind);
            QTest::qWait(20);
            int whole = 0;
            for (const QWidget* widget : side->findChildren<QWidget*>()) {
                const bool edits = widget->inherits("QLineEdit") || widget->inherits("QComboBox") ||
                                   qobject_cast<const controls::Segments*>(widget) != nullptr;
                if (edits && widget->isVisible())
                    whole += widget->visibleRegion().boundingRect() == widget->rect();
            }
            QVERIFY2(whole >= 10, qPrintable(QString("%1 settings").arg(whole)));
        }
    }

    void aChosenFindingOpensTheDrawer() {
        start("shore-walks");
        auto* findings = window_->findChild<findings::Panel*>();
        QVERIFY(!findings->isOpen());
        QTRY_VERIFY(session().checks.isFresh());
        QTest::keyClick(window_.get(), Qt::Key_F8);
        QVERIFY(findings->isOpen() && session().checks.chosen());
        const auto* list = findings->findChild<QListView*>();
        QTRY_VERIFY(list->viewport()->rect().contains(list->visualRect(list->currentIndex()).topLeft()));
        // The head closes it; an edit does not open it again.
        for (auto* button : findings->findChildren<QToolButton*>())
            if (button->text() == "Findings") QTest::mouseClick(button, Qt::LeftButton);
        QVERIFY(!findings->isOpen());
        session().scope.setSetting("Gap", "row/columnGap", "31px");
        QTRY_VERIFY(session().checks.isFresh());
        QVERIFY(!findings->isOpen());
    }

    void aPlotTakesItsHeightFromTheRowAndGivesItBack() {
        start("shore-walks");
        auto* pane = window_->findChild<axis::AxisPane*>();
        auto* plot = pane->findChild<axis::SizePlot*>();
        const int before = pane->height();
        QVERIFY(!plot->isVisible());
        toggleLane("Font size");
        QTRY_VERIFY(plot->isVisible() && plot->height() >= 80);
        QVERIFY(row().height() > pane->height());
        toggleLane("Font size");
        QTRY_COMPARE(pane->height(), before);
    }

    // Each plot has the height of its axis, also beside plots with a larger share.
    void noPlotIsSquashed() {
        start("shore-walks");
        auto* pane = window_->findChild<axis::AxisPane*>();
        for (const QString lane : {"Font size", "Measure", "Card height", "Picture size"})
            toggleLane(lane);
        QTest::qWait(50);
        int count = 0;
        for (const auto* plot : pane->findChildren<axis::Plot*>()) {
            if (!plot->isVisible()) continue;
            ++count;
            QVERIFY2(plot->height() >= 55,
                     qPrintable(plot->accessibleName() + ": " + QString::number(plot->height())));
            QVERIFY(plot->geometry().bottom() <= pane->height());
        }
        QCOMPARE(count, 4);
    }

    void keepsTheArrangementForTheNextStart() {
        start("shore-walks");
        toggleLane("Measure");
        window_->findChild<findings::Panel*>()->setOpen(true);
        row().fitAction()->trigger();
        QTest::qWait(20);
        const int axisHeight = window_->findChild<axis::AxisPane*>()->height();
        const int findingsHeight = window_->findChild<findings::Panel*>()->height();
        window_->close();
        start("shore-walks");
        const auto* pane = window_->findChild<axis::AxisPane*>();
        QTRY_COMPARE(pane->height(), axisHeight);
        const QStringList lanes = pane->chosenLanes().value_or(QStringList());
        QVERIFY(lanes.contains("Measure") && lanes.contains("Bands") && !lanes.contains("Font size"));
        QCOMPARE(window_->findChild<findings::Panel*>()->height(), findingsHeight);
        QVERIFY(row().fit());
        // And as at first again.
        for (QAction* action : window_->findChildren<QAction*>())
            if (action->text().remove('&') == "Reset layout of the window") action->trigger();
        QTest::qWait(20);
        QVERIFY(!pane->chosenLanes() && !window_->findChild<findings::Panel*>()->isOpen());
        QVERIFY(!row().fit());
    }

private:
    void start(const QString& name) {
        window_ = std::make_unique<TestWindow>();
        window_->resize(1280, 800);
        window_->show();
        window_->openFile(QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/") + name + ".tenter.json");
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        QTest::qWait(20);
    }
    Session& session() { return window_->session; }
    row::RowView& row() { return *window_->findChild<row::RowView*>(); }
    void toggleLane(const QString& name) {
        for (auto* toggle : window_->findChildren<axis::Disclosure*>())
            if (toggle->text() == name) QTest::mouseClick(toggle, Qt::LeftButton);
    }

    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::RoomTest)
#include "room_test.moc"
