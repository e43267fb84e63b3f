// Every variant at one width: where each page stands, what a press on it does, what the edge drags.
#include <QLineEdit>
#include <QScrollBar>
#include <QtTest>

#include "controls/segments.h"
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
                QCOMPARE(sheets[i].page.height(), layout::layOutDrawn(row, width).pageHeight);
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
        const layout::Layout laid = layout::layOutDrawn(row, 390);
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
        for (const char* title : {"Home page: ", "Walk page: ", "Calendar page: "})
            QVERIFY2(says.contains(title) && says.contains("heading"), qPrintable(says));
        row_->allVariantsAction()->trigger();
        QVERIFY(!row_->accessibleDescription().contains("Home page: "));
    }

    void renamesAVariantInTheWindow() {
        auto* const variants = variantButtons();
        QAbstractButton* second = variants->button(1);
        QCOMPARE(second->text(), QString("Walk page"));
        QCOMPARE(second->accessibleName(), QString("Walk page, class walks-pair, 1 to 2 columns"));
        // A double click chooses the variant and goes to its name.
        QTest::mouseClick(second, Qt::LeftButton);
        QTest::mouseDClick(second, Qt::LeftButton);
        QTRY_VERIFY(QApplication::focusWidget() != nullptr &&
                    QApplication::focusWidget()->accessibleName() == "Variant name");
        QCOMPARE(session().view.variant(), std::size_t(1));
        auto* name = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        QCOMPARE(name->text(), QString("Walk page"));
        name->selectAll();
        QTest::keyClicks(name, "Offer");
        QTest::keyClick(name, Qt::Key_Return);
        QTRY_COMPARE(variants->button(1)->text(), QString("Offer"));
        QVERIFY(row_->accessibleDescription().contains("Offer: "));
        // One undoable step; without a name the class is shown.
        session().document.undoStack().undo();
        QTRY_COMPARE(variants->button(1)->text(), QString("Walk page"));
        QCOMPARE(session().document.undoStack().index(), 0);
        name->selectAll();
        QTest::keyClick(name, Qt::Key_Delete);
        QTest::keyClick(name, Qt::Key_Return);
        QTRY_COMPARE(variants->button(1)->text(), QString("walks-pair"));
        QCOMPARE(name->placeholderText(), QString("walks-pair"));
    }

    // Files made before have names that are only column counts.
    void namesAVariantByItsClassIfItsNameIsAColumnCount() {
        session().document.edit("Older names", [](project::Project& project) {
            project.row().variants[0].name = "3";
            project.row().variants[1].name = "2 columns";
        });
        QTRY_COMPARE(variantButtons()->button(0)->text(), QString("walks-trio"));
        QCOMPARE(variantButtons()->button(1)->text(), QString("walks-pair"));
        QVERIFY(row_->accessibleDescription().contains("walks-trio: "));
        QCOMPARE(project().row().variants[0].name, std::string("3"));
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
    controls::Segments* variantButtons() {
        for (auto* one : window_->findChildren<controls::Segments*>())
            if (one->accessibleName() == "Variant") return one;
        return nullptr;
    }
    Session& session() { return window_->session; }
    const project::Project& project() { return session().document.project(); }
    std::unique_ptr<TestWindow> window_;
    row::RowView* row_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::VariantsTest)
#include "variants_test.moc"
