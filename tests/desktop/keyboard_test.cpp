// The keyboard in the side panels: Tab goes where the eye goes, and nothing changes by itself.
#include <QClipboard>
#include <QListView>
#include <QTextEdit>
#include <QToolButton>
#include <QToolTip>
#include <QtTest>

#include "at_the_window.h"

namespace tenter::desktop {

class KeyboardTest : public AtTheWindow {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        open("shore-walks");
        QVERIFY(document()
                    .edit("Grow the heading",
                          [](project::Project& project) {
                              project.row().style.text.of("heading").size =
                                  *units::Ramp::between({400, 18}, {1600, 30});
                              for (project::Variant& variant : project.row().variants) {
                                  variant.set.text.of("heading").size.reset();
                                  for (project::Band& band : variant.bands)
                                      band.set.text.of("heading").size.reset();
                              }
                          })
                    .empty());
        openPanel(panels::PanelKind::Text);
    }
    void cleanup() { window_.reset(); }

    void goesThroughARampLineByLine() {
        controls::NumberField* size = field("Heading font size at the smaller width");
        QVERIFY(size != nullptr && size->isVisible());
        size->setFocus();
        QStringList order;
        for (int i = 0; i < 4; ++i) {
            order << QApplication::focusWidget()->accessibleName();
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        }
        QCOMPARE(
            order,
            QStringList({"Heading font size at the smaller width", "Heading font size: the smaller width",
                         "Heading font size at the larger width", "Heading font size: the larger width"}));
    }

    void keepsTheEndsOfARampWhereTheyAreWhileAWidthIsTyped() {
        controls::NumberField* smaller = field("Heading font size: the smaller width");
        smaller->setFocus();
        smaller->selectAll();
        QTest::keyClicks(smaller, "1700");
        QTest::keyClick(smaller, Qt::Key_Return);
        settle();
        // Each end keeps its size; a width past the other end is refused, and the field says what it may be.
        QCOMPARE(project().row().style.text.find("heading")->size,
                 units::Ramp::between({400, 18}, {1600, 30}));
        QVERIFY(label("1599") != nullptr);
        smaller->selectAll();
        QTest::keyClicks(smaller, "500");
        QTest::keyClick(smaller, Qt::Key_Return);
        settle();
        QCOMPARE(project().row().style.text.find("heading")->size,
                 units::Ramp::between({500, 18}, {1600, 30}));
    }

    void goesFromATextToTheNextAndMovesAPartByKeys() {
        openPanel(panels::PanelKind::Words);
        auto* heading = named<QTextEdit>("Heading text");
        auto* body = named<QTextEdit>("Body text");
        QVERIFY(heading != nullptr && heading->isVisible() && body != nullptr);
        heading->setFocus();
        QTest::keyClick(heading, Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget(), body);
        const project::Project before = project();
        QTest::keyClick(body, Qt::Key_Space);
        QCOMPARE(project().row().cards[0].parts.size(), before.row().cards[0].parts.size());
        QTest::keyClick(body, Qt::Key_Up, Qt::AltModifier);
        settle();
        const auto roleOf = [&](std::size_t part) {
            const auto* text = std::get_if<project::TextPart>(&project().row().cards[0].parts[part]);
            return text ? text->role : std::string("picture");
        };
        std::size_t at = 0;
        while (roleOf(at) != "body")
            ++at;
        QCOMPARE(roleOf(at + 1), std::string("heading"));
        // The focus stays in the part that moved, and the mark in the row follows the focus.
        QCOMPARE(QApplication::focusWidget()->accessibleName(), QString("Body text"));
        QCOMPARE(session().selection.place(), std::optional(Place{0, at}));
    }

    // Each form of what is copied says what it is, beside its control too, and is what the command line
    // prints.
    void saysWhatWasCopied() {
        const auto copy = [this](const QString& text) {
            for (QAction* action : window_->findChildren<QAction*>())
                if (action->text().remove('&') == text) return action->trigger();
            QFAIL(qPrintable(text));
        };
        const auto clipboard = [] { return QGuiApplication::clipboard()->text(); };
        auto* control = window_->findChild<QPushButton*>("copyStylesheet");
        QVERIFY(control != nullptr && control->isVisible());
        QTest::mouseClick(control, Qt::LeftButton);
        const QString css = clipboard();
        const QString said = "Stylesheet copied: walks-trio, " + QString::number(css.count('\n')) + " lines";
        QVERIFY2(label(said) != nullptr, qPrintable(said));
        QCOMPARE(QToolTip::text(), said);
        copy("Copy markup");
        const QString markup = clipboard();
        QVERIFY(markup.startsWith("<section class=\"walks-trio\""));
        QVERIFY(label("Markup copied: walks-trio, ") != nullptr);
        copy("Copy stylesheet and markup");
        QCOMPARE(clipboard(), "<style>\n" + css + "</style>\n" + markup);
        copy("Copy class names");
        QVERIFY(clipboard().startsWith("row .walks-trio, card ."));
    }

    // Alt and a number lead into a panel at its top, also if it is open already.
    void goesToAPanelByItsNumber() {
        for (const int key : {Qt::Key_6, Qt::Key_2, Qt::Key_2}) {
            QTest::keyClick(window_.get(), static_cast<Qt::Key>(key), Qt::AltModifier);
            settle();
            auto* tabs = side().findChild<QTabBar*>();
            QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(tabs));
            QCOMPARE(tabs->currentIndex(), key - static_cast<int>(Qt::Key_1));
            QTest::keyClick(tabs, Qt::Key_Tab);
            QVERIFY(side().isAncestorOf(QApplication::focusWidget()));
        }
    }

    void revertsToTheSavedProjectInOneStepAndGoesBackInTheList() {
        const project::Project edited = project();
        const auto trigger = [this](const QString& text) {
            for (QAction* action : window_->findChildren<QAction*>())
                if (action->text().remove('&') == text) action->trigger();
        };
        trigger("Revert to saved");
        QCOMPARE(project(), document().savedProject());
        QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier | Qt::AltModifier);
        auto* list = named<QListView>("Undo list");
        QVERIFY(list != nullptr && list->isVisible());
        // As opened, the heading grown, reverted.
        QCOMPARE(list->model()->rowCount(), 3);
        const QModelIndex step = list->model()->index(1, 0);
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(step).center());
        QCOMPARE(project(), edited);
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::KeyboardTest)
#include "keyboard_test.moc"
