// Every variant at one width: where each page stands, what a press on it does, what the edge drags.
#include <QScrollBar>
#include <QtTest>

#include "layout/layout.h"
#include "row/row_view.h"
#include "row/sheets.h"
#include "showing.h"
#include "window/main_window.h"

namespace tenter::desktop {

using row::Sheet;

class VariantsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json"));
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        row_ = window_->findChild<row::RowView*>();
        row_->allVariantsAction()->trigger();
        QVERIFY(row_->allVariantsAction()->isChecked());
        // They come fitted into the window; most tests look at them as large as they are.
        QVERIFY(row_->fit());
        row_->actualSizeAction()->trigger();
    }
    void cleanup() { window_.reset(); }

    void showsEachVariantAsTallAsItIsLaidOut() {
        for (const double width : {390.0, 700.0, 1200.0}) {
            session().view.setWidth(width);
            const std::vector<Sheet> sheets = row_->sheetsInView();
            QCOMPARE(sheets.size(), project().row().variants.size());
            for (std::size_t i = 0; i < sheets.size(); ++i) {
                const layout::PreparedRow row(project(), i, session().document.store(),
                                              session().view.profile());
                QCOMPARE(sheets[i].page.width(), width);
                QCOMPARE(sheets[i].page.height(), layout::layOut(row, width).pageHeight);
                for (std::size_t j = 0; j < i; ++j)
                    QVERIFY(!sheets[i].page.intersects(sheets[j].page) &&
                            !sheets[i].caption.intersects(sheets[j].page));
            }
        }
    }

    // Pages stand beside each other where there is room for them, below each other where there is none.
    void standsPagesBesideEachOtherWhereThereIsRoom() {
        window_->resize(1720, 900);
        session().view.setWidth(390);
        std::vector<Sheet> sheets = row_->sheetsInView();
        QCOMPARE(sheets[0].page.top(), sheets[1].page.top());
        session().view.setWidth(1400);
        sheets = row_->sheetsInView();
        QCOMPARE(sheets[0].page.left(), sheets[1].page.left());
        QVERIFY(sheets[1].caption.top() >= sheets[0].page.bottom());
    }

    void aPressOnAPartAsksForItsVariant() {
        session().view.setWidth(390);
        session().view.setVariant(0);
        row_->horizontalScrollBar()->setValue(0);
        row_->verticalScrollBar()->setValue(0);
        const Sheet sheet = row_->sheetsInView()[1];
        const layout::PreparedRow row(project(), 1, session().document.store(), session().view.profile());
        const layout::Layout laid = layout::layOut(row, 390);
        std::size_t part = 0;
        while (laid.parts[part].picture)
            ++part;
        row_->horizontalScrollBar()->setValue(static_cast<int>(sheet.page.left()) - 40);
        row_->verticalScrollBar()->setValue(static_cast<int>(sheet.page.top() + laid.parts[part].box.y) - 80);
        const QPointF corner = row_->sheetsInView()[1].page.topLeft();
        const layout::Box& box = laid.parts[part].box;
        QTest::mouseClick(row_->viewport(), Qt::LeftButton, {},
                          (corner + QPointF(box.x + 8, box.y + 8)).toPoint());
        QCOMPARE(session().view.variant(), std::size_t{1});
        QCOMPARE(session().selection.place(), std::optional(Place{0, laid.parts[part].index}));
    }

    void aPressOnACaptionAsksForItsVariant() {
        session().view.setVariant(0);
        row_->verticalScrollBar()->setValue(
            static_cast<int>(row_->sheetsInView()[2].caption.top() + row_->verticalScrollBar()->value()));
        const QRectF caption = row_->sheetsInView()[2].caption;
        QTest::mouseClick(row_->viewport(), Qt::LeftButton, {}, caption.topLeft().toPoint() + QPoint(8, 12));
        QCOMPARE(session().view.variant(), std::size_t{2});
    }

    // Whichever page's edge is held, it stays under the pointer.
    void dragsTheWidthByAnyPagesEdge() {
        window_->resize(1720, 900);
        session().view.setWidth(330);
        const std::vector<Sheet> sheets = row_->sheetsInView();
        QCOMPARE(sheets[1].place, 1);
        const QPointF edge(sheets[1].page.right() + 1, 60 + sheets[1].page.top());
        QTest::mousePress(row_->viewport(), Qt::LeftButton, {}, edge.toPoint());
        QTest::mouseMove(row_->viewport(), edge.toPoint() + QPoint(40, 0));
        QCOMPARE(session().view.width(), 350.0);
        QVERIFY(qAbs(row_->sheetsInView()[1].page.right() + 1 - (edge.x() + 40)) <= 1);
        QTest::mouseRelease(row_->viewport(), Qt::LeftButton, {}, edge.toPoint() + QPoint(40, 0));
    }

    void followsWhatIsEdited() {
        const double before = row_->sheetsInView()[1].page.height();
        session().document.edit("Larger headings", [](project::Project& project) {
            for (project::Variant& variant : project.row().variants) {
                variant.set.text.of("heading").size = units::Ramp::flat(60);
                for (project::Band& band : variant.bands)
                    band.set.text.of("heading").size.reset();
            }
        });
        QVERIFY(row_->sheetsInView()[1].page.height() > before + 20);
        session().document.undoStack().undo();
        QCOMPARE(row_->sheetsInView()[1].page.height(), before);
    }

    void tellsTheCaptionsToThoseWhoHearThem() {
        const QString says = row_->accessibleDescription();
        for (const char* title : {"3 columns: ", "2 columns: ", "4 columns: "})
            QVERIFY2(says.contains(title) && says.contains("heading"), qPrintable(says));
        row_->allVariantsAction()->trigger();
        QVERIFY(!row_->accessibleDescription().contains("3 columns: "));
    }

    void fitsEveryPageIntoTheWindow() {
        session().view.setWidth(1200);
        row_->fitAction()->trigger();
        QVERIFY(row_->zoom() < 1);
        QCOMPARE(row_->horizontalScrollBar()->maximum(), 0);
        QCOMPARE(row_->sheetsInView()[0].page.top(), row_->sheetsInView()[1].page.top());
    }

    // Every variant comes fitted; one alone is then as it was looked at before.
    void comesFittedAndGoesBackToTheZoomBefore() {
        row_->allVariantsAction()->trigger();
        QCOMPARE(row_->sheetsInView().size(), std::size_t{1});
        QVERIFY(!row_->fit());
        QCOMPARE(row_->zoom(), 1.0);
        session().view.setWidth(1200);
        row_->allVariantsAction()->trigger();
        QVERIFY(row_->zoom() < 1);
        row_->allVariantsAction()->trigger();
        QCOMPARE(row_->zoom(), 1.0);
    }

private:
    Session& session() { return window_->session; }
    const project::Project& project() { return session().document.project(); }
    std::unique_ptr<TestWindow> window_;
    row::RowView* row_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::VariantsTest)
#include "variants_test.moc"
