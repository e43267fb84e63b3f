// All panels: everything is visible, every setting can be found, keys work as described.
#include <QClipboard>
#include <QContextMenuEvent>
#include <QListView>
#include <QMenu>
#include <QProcess>
#include <QScrollBar>
#include <QTextDocument>
#include <QTextEdit>
#include <QTreeWidget>
#include <QtTest>

#include "at_the_window.h"
#include "emit/class_names.h"
#include "panels/binding.h"
#include "pictures/uploads.h"
#include "project/cascade.h"
#include "project/differences/setting_names.h"

namespace tenter::desktop {

class PanelsTest : public AtTheWindow {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        open("shore-walks");
        openPanel(panels::PanelKind::Text);
    }
    void cleanup() { window_.reset(); }

    // At the minimum width of the panels.
    void neverScrollsSideways() {
        side().setFixedWidth(side().minimumSizeHint().width());
        everyPanelFits("as opened");
        openPanel(panels::PanelKind::Text);
        type("Wish: size at most", "26 px");
        press("Solve sizes");
        settle();
        everyPanelFits("in a preview of sizes", panels::PanelKind::Text);
        press("Apply sizes");
        settle();
        everyPanelFits("with sizes applied");
        openPanel(panels::PanelKind::Text);
        type("Wish: size at least", "26 px");
        type("Wish: lines at most", "1");
        press("Solve sizes");
        settle();
        QVERIFY(!session().shown.isProposal() && label("Change “") != nullptr);
        everyPanelFits("in a conflict", panels::PanelKind::Text);
    }

    // `tenter-cli diff` names settings without a window.
    void haveTheLabelsThatDifferencesOfProjectsName() {
        const auto bindings = window_->findChildren<panels::Binding*>();
        QVERIFY(bindings.size() > 40);
        for (const panels::Binding* binding : bindings) {
            QString label = QString::fromStdString(project::settingName(binding->path()));
            QVERIFY2(label.contains(" › "), qPrintable(label));
            label.remove(0, label.indexOf(" › ") + 3);
            const qsizetype subject = label.lastIndexOf(" of ");
            const QString& title = binding->title();
            QVERIFY2(label == title || (subject > 0 && label.left(subject) == title),
                     qPrintable(label + " is " + title));
        }
    }

    void goesToTheFoundSettingThatIsLit() {
        QLineEdit* search = seek("size");
        auto* list = foundSettings();
        QVERIFY(list->isVisible());
        QCOMPARE(list->currentIndex().row(), 0);
        QTest::keyClick(search, Qt::Key_Down);
        const QString lit = list->currentIndex().data().toString();
        QVERIFY(list->currentIndex().row() == 1 && search->text() == "size");
        QTest::keyClick(search, Qt::Key_Return);
        QTRY_VERIFY(search->text().isEmpty() && !list->isVisible() && !search->hasFocus());
        const QString gone = QApplication::focusWidget()->accessibleName();
        QCOMPARE(gone, nameOf(lit));
        // Or by a click.
        seek("size");
        const QRect second = list->visualRect(list->model()->index(1, 0));
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, second.center());
        QVERIFY(!list->isVisible());
        QCOMPARE(QApplication::focusWidget()->accessibleName(), gone);
    }

    void closesTheListOfFoundSettings() {
        QLineEdit* search = seek("gap");
        auto* list = foundSettings();
        QVERIFY(list->isVisible());
        QVERIFY(window_->rect().contains(list->geometry()));
        QTRY_VERIFY(list->sizeHintForColumn(0) <= list->viewport()->width());
        QTest::keyClick(search, Qt::Key_Escape);
        QVERIFY(!list->isVisible() && search->text().isEmpty() && search->hasFocus());
        // A click on a tab beside the list, and on one that was below it, opens that panel.
        auto* tabs = window_->findChild<QTabBar*>();
        const auto clickTab = [&](int tab) {
            const QPoint at = tabs->mapTo(window_.get(), tabs->tabRect(tab).center());
            QTest::mouseClick(window_->windowHandle(), Qt::LeftButton, {}, at);
        };
        seek("gap");
        QVERIFY(list->isVisible());
        clickTab(5);
        QTRY_COMPARE(tabs->currentIndex(), 5);
        QVERIFY(!list->isVisible());
        seek("size");
        QTest::keyClick(search, Qt::Key_Escape);
        clickTab(0);
        QTRY_COMPARE(tabs->currentIndex(), 0);
        // Text that no setting has closes it, too, and so does another focus.
        seek("gap");
        QTest::keyClicks(search, "xyz");
        QVERIFY(!list->isVisible());
        seek("gap");
        tabs->setFocus();
        QVERIFY(!list->isVisible());
    }

    // Bands with sizes of their own: an edit changes the size of the band, and one button uses it everywhere.
    void usesAValueInAllBandsByOneButton() {
        session().view.setWidth(1200);
        session().selection.selectRole("heading");
        settle();
        const project::Project before = project();
        type("Heading font size at the smaller width", "18");
        type("Heading font size: the smaller width", "400");
        type("Heading font size at the larger width", "30");
        type("Heading font size: the larger width", "1600");
        const auto sizeOf = [&](std::size_t variant, std::size_t band) {
            return project::resolve(project(), project().row().variants[variant], band)
                .text.find("heading")
                ->size;
        };
        // The edits change what applies at this width: the size of the band.
        QVERIFY(std::abs(sizeOf(0, 2)->sizeAt(1600) - 30) < 0.01);
        QVERIFY(sizeOf(0, 1)->sizeAt(1600) != 30);
        auto* everywhere = named<QPushButton>("Use in all variants and bands: Heading font size");
        QVERIFY(everywhere != nullptr && everywhere->isVisible());
        const int steps = document().undoStack().count();
        // Tab goes from the fields to it: past Paste size.
        field("Heading font size: the larger width")->setFocus();
        for (int i = 0; i < 2; ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(everywhere));
        QTest::keyClick(everywhere, Qt::Key_Space);
        settle();
        QCOMPARE(document().undoStack().count(), steps + 1);
        QCOMPARE(document().undoStack().undoText(), QString("Use heading font size in all bands"));
        for (std::size_t i = 0; i < project().row().variants.size(); ++i)
            for (std::size_t band = 0; band < project().row().variants[i].bands.size(); ++band) {
                QVERIFY(std::abs(sizeOf(i, band)->sizeAt(400) - 18) < 0.01);
                QVERIFY(std::abs(sizeOf(i, band)->sizeAt(1600) - 30) < 0.01);
            }
        QVERIFY(!everywhere->isVisible());
        // The sizes of other roles stay.
        const auto bodyOf = [](const project::Project& of) {
            return project::resolve(of, of.row().variants[0], 0).text.find("body")->size;
        };
        QVERIFY(bodyOf(before) == bodyOf(project()));
        document().undoStack().undo();
        settle();
        QVERIFY(everywhere->isVisible());
    }

    void copiesTheClassesOfTheElementsFromTheRowPanel() {
        openPanel(panels::PanelKind::Row);
        const std::string line = emit::classLine(project(), session().view.variant());
        auto* classes = named<QLabel>("Classes for the elements of your page");
        QVERIFY(classes != nullptr);
        QTextDocument shown;
        shown.setHtml(classes->text());
        QCOMPARE(shown.toPlainText().replace(QChar::Nbsp, ' ').remove(QChar(0x2060)),
                 QString::fromStdString(line));
        QTest::keyClick(seek("CMS classes"), Qt::Key_Return);
        auto* copy = named<QPushButton>("Copy class names");
        QTRY_VERIFY(copy->hasFocus());
        QTest::keyClick(copy, Qt::Key_Space);
        QCOMPARE(QGuiApplication::clipboard()->text(), QString::fromStdString(line) + '\n');
        QTRY_VERIFY(named<QLabel>("Last message")->text().startsWith("Class names copied: row .walks-trio"));
        // One class, without the dot, by its link.
        Q_EMIT classes->linkActivated("walks-card");
        QCOMPARE(QGuiApplication::clipboard()->text(), QString("walks-card"));
        // They follow the variant.
        session().view.setVariant(1);
        settle();
        QVERIFY(classes->text().contains("walks-pair"));
    }

    void keepsTheHeadOfACardInSight() {
        for (const auto panel : {panels::PanelKind::Words, panels::PanelKind::Pictures}) {
            openPanel(panel);
            QToolButton* next = nullptr;
            for (auto* one : side().findChildren<QToolButton*>())
                if (one->accessibleName() == "Next card" && one->isVisible()) next = one;
            QVERIFY(next != nullptr);
            session().selection.select(Place{0, 1});
            settle();
            for (auto* scroll : side().findChildren<QScrollArea*>())
                if (scroll->isVisible()) scroll->verticalScrollBar()->setValue(9999);
            const QPoint at = next->mapTo(window_.get(), next->rect().center());
            QTest::mouseClick(window_->windowHandle(), Qt::LeftButton, {}, at);
            settle();
            QCOMPARE(session().selection.card(), std::optional<std::size_t>(1));
            QCOMPARE(next->mapTo(window_.get(), next->rect().center()), at);
            QVERIFY(next->visibleRegion().boundingRect() == next->rect());
        }
    }

    void marksThePartWhoseTextIsTypedIn() {
        session().selection.select(Place{0, 1});
        openPanel(panels::PanelKind::Words);
        const auto roleOfMarked = [&]() -> std::string {
            const auto& parts = project().row().cards[0].parts;
            const auto* text = std::get_if<project::TextPart>(&parts[*session().selection.place()->part]);
            return text == nullptr ? "picture" : text->role;
        };
        auto* link = named<QLineEdit>("Link address of the button");
        QVERIFY(link != nullptr && link->isVisible());
        link->setFocus();
        QTest::keyClicks(link, "x");
        QCOMPARE(roleOfMarked(), std::string("button"));
        // Also if something else was selected meanwhile.
        auto* text = named<QTextEdit>("Body text");
        text->setFocus();
        session().selection.select(Place{0, 0});
        QTest::keyClicks(text, "y");
        QCOMPARE(roleOfMarked(), std::string("body"));
    }

    void saysWhatToUploadForEachPicture() {
        session().selection.select(Place{0, 0});
        openPanel(panels::PanelKind::Pictures);
        const auto uploads = pictures::uploadsOf(project(), document().store(), session().view.profile());
        QVERIFY(uploads.size() > 2);
        auto* table = named<QTreeWidget>("Files to upload");
        QTRY_COMPARE(table->topLevelItemCount(), static_cast<int>(uploads.size()));
        for (int i = 0; i < table->topLevelItemCount(); ++i) {
            const auto& one = uploads[static_cast<std::size_t>(i)];
            QCOMPARE(table->topLevelItem(i)->text(1),
                     QString("%1 × %2").arg(one.size.width).arg(one.size.height));
            QCOMPARE(table->topLevelItem(i)->text(0).endsWith(", too small"), one.isTooSmall);
        }
        auto* upload = named<QLabel>("File to upload");
        QCOMPARE(upload->text(), "Upload " + QString::fromStdString(pictures::sizeLabel(uploads[0].size)));
        // A click on a line goes to that picture.
        const QRect second = table->visualItemRect(table->topLevelItem(1));
        QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, second.center());
        settle();
        QCOMPARE(session().selection.card(), std::optional<std::size_t>(uploads[1].place.card));
        QCOMPARE(upload->text(), "Upload " + QString::fromStdString(pictures::sizeLabel(uploads[1].size)));
        // A smaller file is too small, and a huge one is not.
        auto* verdict = named<QLabel>("Present file");
        for (const int width : {200, 9000}) {
            document().edit("Other file", [&](project::Project& project) {
                auto& picture = std::get<project::PicturePart>(project.part(uploads[1].place));
                picture.height = picture.height * width / picture.width;
                picture.width = width;
            });
            settle();
            QTRY_VERIFY2(verdict->text().startsWith(width == 200 ? "This picture is too small: 200 × "
                                                                 : "This picture is large enough: 9000 × "),
                         qPrintable(verdict->text()));
        }
    }

    void findsByWordsThatPeopleUse() {
        for (const char* words : {"minimum size", "least size", "Smallest size"}) {
            QTest::keyClick(seek(words), Qt::Key_Return);
            QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), QString("Wish: size at least"));
        }
        QTest::keyClick(seek("wishes: above"), Qt::Key_Return);
        // Hidden for most widths: the field that shows it has the focus.
        QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), QString("Wishes: widths"));
    }

    void findsSettingsByTheirFormerLabels() {
        const std::pair<const char*, const char*> words[] = {
            {"level parts", "Row align parts: Off"},     {"stands at", "Heading alignment"},
            {"keep lines", "Heading minimum lines"},     {"page ground", "Container background"},
            {"edge to edge", "Card full-bleed picture"}, {"its share", "Card picture width"},
            {"right by", "Card shadow offset x"},        {"container widest", "Container maximum width"},
            {"reader's size", "Reader text size"},       {"widths from", "Smallest viewport width"},
            {"preview to", "Largest viewport width"},    {"row name", "Class prefix"},
            {"zoom for 2×", "Wish: double at zoom"},     {"factor", "Wish: ratio to role"},
            {"room for longer", "Solver: reserve"},      {"page maximum width", "Container maximum width"},
        };
        session().selection.selectRole("heading");
        for (const auto& [typed, name] : words) {
            QTest::keyClick(seek(typed), Qt::Key_Return);
            QTRY_COMPARE(QApplication::focusWidget()->accessibleName(), QString(name));
        }
    }

    void leadsToEverySettingItNamesInFullSight() {
        session().view.setWidth(1200);
        for (const auto& place : side().places()) {
            QVERIFY2(!place.words.startsWith(' '), qPrintable(place.words));
            side().go(place);
            QWidget* field = QApplication::focusWidget();
            QVERIFY2(field != nullptr && side().isAncestorOf(field) && field->isEnabled(),
                     qPrintable(place.words));
            const auto isWhole = [&] { return field->visibleRegion().boundingRect() == field->rect(); };
            QTRY_VERIFY2_WITH_TIMEOUT(isWhole(), qPrintable(place.words), 1000);
        }
    }

    void asksForTheBreakpointThatTheWidestBandStartsAt() {
        session().view.setWidth(1200);
        openPanel(panels::PanelKind::Row);
        press("Leeway of the breakpoint");
        QVERIFY(label("(2 to 3 columns): ") != nullptr);
    }

    // WCAG 2.2 SC 2.5.3: the accessible name contains the visible label.
    void namesFieldsByWhatStandsBesideThem() {
        int seen = 0;
        for (const panels::PanelKind panel : allPanels) {
            openAllOf(panel);
            for (QLabel* title : side().findChildren<QLabel*>()) {
                if (title->buddy() == nullptr || title->text().isEmpty() || !title->isVisible()) continue;
                QVERIFY2(title->wordWrap() || title->sizeHint().width() <= title->width(),
                         qPrintable("cut: " + title->text()));
                QWidget* field = title->buddy();
                while (field->focusProxy() != nullptr)
                    field = field->focusProxy();
                QVERIFY2(field->accessibleName().contains(title->text(), Qt::CaseInsensitive),
                         qPrintable(title->text() + " / " + field->accessibleName()));
                ++seen;
            }
        }
        QVERIFY2(seen > 50, qPrintable(QString::number(seen)));
    }

    void solvesAndDiscardsByTheKeyboard() {
        type("Wish: size at most", "26 px");
        openPanel(panels::PanelKind::Row);
        QTest::keyClick(window_.get(), Qt::Key_F9);
        waitForJobs(*window_);
        QTRY_VERIFY(session().shown.isProposal());
        QCOMPARE(onKeyboard(), QString("Apply sizes"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QCOMPARE(onKeyboard(), QString("Discard"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QVERIFY(!session().shown.isProposal());
        QCOMPARE(onKeyboard(), QString("Solve sizes"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_VERIFY(session().shown.isProposal());
        // Also in a field, if nothing is being typed there.
        field("Wish: size at most")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QVERIFY(!session().shown.isProposal());
        type("Wish: size at least", "26 px");
        type("Wish: lines at most", "1");
        QTest::keyClick(window_.get(), Qt::Key_F9);
        waitForJobs(*window_);
        QVERIFY(!session().shown.isProposal());
        press("Close");
        QVERIFY(label("No sizes satisfy") == nullptr);
    }

    void saysThatALeastIsAboveTheMostOnlyOnceItIsTyped() {
        type("Wish: size at most", "20 px");
        controls::NumberField* least = field("Wish: size at least");
        least->setFocus();
        least->selectAll();
        QTest::keyClicks(least, "30 px");
        QVERIFY(label("must not exceed") == nullptr);
        QTest::keyClick(least, Qt::Key_Return);
        QVERIFY(label("must not exceed") != nullptr);
        QCOMPARE(least->text(), QString("11 px"));
        type("Wish: size at least", "15 px");
        QVERIFY(label("must not exceed") == nullptr);
        type("Wish: size at least", "30 px");
        QVERIFY(label("must not exceed") != nullptr);
        field("Wish: size at most")->setFocus();
        QVERIFY(label("must not exceed") == nullptr);
    }

    void clearsAMessageWhenTheTextIsValidAgain() {
        controls::NumberField* lines = field("Wish: lines at most");
        lines->setFocus();
        lines->selectAll();
        QTest::keyClicks(lines, "99");
        QVERIFY(label("Wish: lines at most: enter a whole number from 1 to 50, or none.") != nullptr);
        QTest::keyClick(lines, Qt::Key_Backspace);
        QVERIFY(label("from 1 to 50") == nullptr);
    }

    void givesAnExampleThatTheRowHasCardsFor() {
        for (auto* one : side().findChildren<controls::Fold*>())
            one->setOpen(true);
        auto* cards = named<QLineEdit>("Solver: ignored cards");
        cards->setFocus();
        QTest::keyClicks(cards, "9");
        QVERIFY(project().row().cards.size() == 4 &&
                label("counted from 1 to 4, for example 1, 4.") != nullptr);
    }

    void resetsFromTheMenuOfAField() {
        controls::NumberField* spacing = field("Heading letter spacing");
        QVERIFY(spacing != nullptr);
        const QString before = spacing->text();
        bool offered = false;
        QTimer::singleShot(0, this, [&] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            if (menu == nullptr) return;
            for (QAction* action : menu->actions())
                if (action->text().remove('&') == "Reset to inherited value") {
                    offered = action->isEnabled();
                    action->trigger();
                }
            menu->close();
        });
        QContextMenuEvent asked(QContextMenuEvent::Mouse, QPoint(5, 5), spacing->mapToGlobal(QPoint(5, 5)));
        QApplication::sendEvent(spacing, &asked);
        settle();
        QVERIFY(offered);
        QVERIFY2(spacing->text() != before, qPrintable(spacing->text()));
        document().undoStack().undo();
        settle();
        QCOMPARE(spacing->text(), before);
    }

    void copiesEveryVariantsStylesheetAsTheCommandLinePrintsIt() {
        QProcess cli;
        cli.start(TENTER_CLI, {"stylesheet", sample_, "--all-variants"});
        QVERIFY(cli.waitForFinished());
        QAction* copy = nullptr;
        for (QAction* action : window_->findChildren<QAction*>())
            if (action->text() == "Copy stylesheets of &all variants") copy = action;
        QVERIFY(copy != nullptr && !copy->shortcut().isEmpty());
        copy->trigger();
        QCOMPARE(QGuiApplication::clipboard()->text(), QString::fromUtf8(cli.readAllStandardOutput()));
        QVERIFY(label("Stylesheet copied: 3 variants, ") != nullptr &&
                label("not those of the preview") == nullptr);
        type("Wish: size at most", "26 px");
        press("Solve sizes");
        copy->trigger();
        QVERIFY(label(" lines, with the current sizes, not those of the preview") != nullptr);
    }

    void namesStepsOfUndoByWhatTheyDo() {
        openPanel(panels::PanelKind::Text);
        session().selection.selectRole("heading");
        settle();
        type("Heading letter spacing", "0.1 em");
        QCOMPARE(document().undoStack().undoText(), QString("Change heading letter spacing"));
        type("Heading letter spacing", "");
        QCOMPARE(document().undoStack().undoText(), QString("Reset heading letter spacing"));
        openPanel(panels::PanelKind::Row);
        type("Largest viewport width", "1800");
        QCOMPARE(document().undoStack().undoText(), QString("Change largest viewport width"));
    }

private:
    /// The text of the button that has the focus.
    static QString onKeyboard() {
        auto* button = qobject_cast<QAbstractButton*>(QApplication::focusWidget());
        return button != nullptr ? button->text() : QString();
    }
    QListView* foundSettings() { return named<QListView>("Settings found"); }
    QLineEdit* seek(const QString& words) {
        auto* search = named<QLineEdit>("Find setting");
        search->setFocus();
        search->clear();
        QTest::keyClicks(search, words);
        return search;
    }
    /// The accessible name of the field that a place leads to.
    QString nameOf(const QString& words) {
        for (const auto& place : side().places())
            if (place.words == words) {
                side().go(place);
                return QApplication::focusWidget()->accessibleName();
            }
        return {};
    }
    static constexpr std::array allPanels{panels::PanelKind::Row,     panels::PanelKind::Text,
                                          panels::PanelKind::Spacing, panels::PanelKind::Colour,
                                          panels::PanelKind::Words,   panels::PanelKind::Pictures};
    void openAllOf(panels::PanelKind panel) {
        openPanel(panel);
        for (auto* one : side().findChildren<controls::Fold*>())
            if (one->isVisible()) one->setOpen(true);
        settle();
    }
    /// Checks all panels, or `only` one, if opening another would close what is shown.
    void everyPanelFits(const char* when, std::optional<panels::PanelKind> only = {}) {
        for (const panels::PanelKind panel : allPanels) {
            if (only && panel != *only) continue;
            openAllOf(panel);
            for (auto* scroll : side().findChildren<QScrollArea*>()) {
                if (!scroll->isVisible()) continue;
                const int least = scroll->widget()->minimumSizeHint().width();
                QVERIFY2(least <= scroll->viewport()->width(),
                         qPrintable(QString("panel %1 %2: %3 px in %4")
                                        .arg(static_cast<int>(panel))
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
