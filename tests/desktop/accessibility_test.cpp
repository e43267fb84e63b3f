// What assistive technology gets of every screen: names, roles, room for a finger, the data of plots, an
// order.
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QStackedWidget>
#include <QTabBar>
#include <QTableWidget>
#include <QtTest>
#include <map>

#include "accessible_tree.h"
#include "at_the_window.h"
#include "axis/axis_pane.h"
#include "controls/inks.h"
#include "panels/dimension_drawing.h"
#include "row/ink.h"
#include "window/theme.h"

namespace tenter::desktop {

namespace {

constexpr int leastTarget = 24;  // CSS px. WCAG 2.2 SC 2.5.8
const QStringList panelNames{"Row", "Text", "Spacing", "Colour", "Words", "Pictures"};
const QStringList dialogNames{
    "New row…",   "Import row from page…", "Compare with browser…", "Stylesheet…",           "Page folder…",
    "Pictures…",  "Spec sheet…",           "Design tokens…",        "Picture of this view…", "Manual",
    "Undo list…", "Show data as table…"};
// They have few controls.
const QStringList smallDialogNames{"Manual", "Undo list…", "Show data as table…"};

bool isFocusable(const AccessibleNode& node) {
    return node.state().focusable;
}

/// True for what a pointer can operate, apart from text to read, which can only be selected.
bool isTarget(const AccessibleNode& node) {
    if (node.state().disabled || node.role() == QAccessible::StaticText) return false;
    // Cards and their parts are drawn to scale. WCAG 2.2 SC 2.5.8 excepts targets of which a particular
    // presentation is essential.
    if (node.widget() == nullptr && node.role() != QAccessible::MenuItem) return false;
    return node.can(QAccessibleActionInterface::pressAction()) ||
           node.can(QAccessibleActionInterface::toggleAction()) ||
           node.can(QAccessibleActionInterface::increaseAction()) || isFocusable(node);
}

/// The field inside a list of choices is a part of its target.
QRect targetOf(const AccessibleNode& node) {
    const QWidget* const widget = node.widget();
    if (widget != nullptr && qobject_cast<QComboBox*>(widget->parentWidget()) != nullptr)
        return widget->parentWidget()->rect();
    return node.interface->rect();
}

}  // namespace

class AccessibilityTest : public AtTheWindow {
    Q_OBJECT

private:
    void trigger(const QString& text) {
        for (QAction* action : window_->findChildren<QAction*>())
            if (action->text().remove('&').section('\t', 0, 0) == text) return action->trigger();
        QFAIL(qPrintable(text));
    }
    /// Shows a panel with all its sections open, a dialog, or the start page. Returns its window.
    QWidget* show(const QString& screen) {
        if (screen == "Start page") {
            bare_ = std::make_unique<TestWindow>();
            bare_->resize(1280, 800);
            bare_->show();
            // Samples are read once the window is shown.
            QTest::qWait(50);
            return bare_.get();
        }
        if (panelNames.contains(screen)) {
            openPanel(static_cast<panels::PanelKind>(panelNames.indexOf(screen)));
            for (auto* fold : side().findChildren<controls::Fold*>())
                if (fold->isVisible()) fold->setOpen(true);
            settle();
            return window_.get();
        }
        trigger(screen);
        settle();
        for (auto* dialog : window_->findChildren<QDialog*>())
            if (dialog->isVisible()) return dialog;
        return nullptr;
    }
    void addScreens(const QStringList& screens) {
        QTest::addColumn<QString>("screen");
        for (const QString& screen : screens)
            QTest::newRow(qPrintable(screen)) << screen;
    }
    void addAllScreens() { addScreens(QStringList{"Start page"} + panelNames + dialogNames); }

    /// The object with this role and name; none if there is none.
    AccessibleNode node(QAccessible::Role role, const QString& name) const {
        for (const AccessibleNode& one : accessibleTree(window_.get()))
            if (one.role() == role && one.name() == name) return one;
        return {};
    }
    /// Presses it; returns false if it is not there or cannot be pressed.
    bool press(QAccessible::Role role, const QString& name) {
        const AccessibleNode one = node(role, name);
        const QString action = QAccessibleActionInterface::pressAction();
        if (one.interface == nullptr || !one.can(action) || one.state().disabled) return false;
        one.doAction(action);
        settle();
        return true;
    }

    std::unique_ptr<TestWindow> bare_;

private Q_SLOTS:
    void initTestCase() { window::useTheme("light"); }
    void init() { open("shore-walks"); }
    void cleanup() {
        bare_.reset();
        window_.reset();
    }

    void namesWhatCanTakeTheFocus_data() { addAllScreens(); }
    void namesWhatCanTakeTheFocus() {
        QFETCH(QString, screen);
        QWidget* const root = show(screen);
        QVERIFY(root != nullptr);
        QStringList nameless;
        int count = 0;
        for (const AccessibleNode& node : accessibleTree(root, Hidden::Included)) {
            count += isFocusable(node) ? 1 : 0;
            if (isFocusable(node) && node.name().isEmpty()) nameless << node.path;
        }
        QVERIFY(count > (smallDialogNames.contains(screen) ? 1 : 5));
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join('\n')));
    }

    void givesEveryTargetRoomForAFinger_data() { addAllScreens(); }
    void givesEveryTargetRoomForAFinger() {
        QFETCH(QString, screen);
        QWidget* const root = show(screen);
        QVERIFY(root != nullptr);
        int count = 0;
        const auto small = [&] {
            QStringList found;
            count = 0;
            for (const AccessibleNode& node : accessibleTree(root)) {
                if (!isTarget(node)) continue;
                ++count;
                const QRect target = targetOf(node);
                if (target.width() < leastTarget || target.height() < leastTarget)
                    found << QString("%1 × %2: %3").arg(target.width()).arg(target.height()).arg(node.path);
            }
            return found.join('\n');
        };
        // Layouts that have just been opened settle in several passes.
        QTRY_VERIFY2(small().isEmpty(), qPrintable(small()));
        QVERIFY(count > (smallDialogNames.contains(screen) ? 1 : 2));
    }

    void givesNoTwoControlsOfAGroupTheSameName_data() { addAllScreens(); }
    void givesNoTwoControlsOfAGroupTheSameName() {
        QFETCH(QString, screen);
        QWidget* const root = show(screen);
        QVERIFY(root != nullptr);
        std::map<QString, int> uses;
        for (const AccessibleNode& node : accessibleTree(root))
            if (isTarget(node) && !node.name().isEmpty())
                ++uses[node.group + " · " + roleName(node.role()) + " · " + node.name()];
        QStringList ambiguous;
        for (const auto& [name, count] : uses)
            if (count > 1) ambiguous << QString("%1 × %2").arg(count).arg(name);
        QVERIFY2(ambiguous.isEmpty(), qPrintable(ambiguous.join('\n')));
    }

    void offersTheDataOfEveryOpenLaneAsATable() {
        window_->findChild<axis::AxisPane*>()->chooseLanes(QStringList{
            "Bands", "Wrap points", "Findings", "Font size", "Measure", "Card height", "Picture size"});
        waitForJobs(*window_);
        const std::map<QString, int> leastRows{{"Bands", 3},
                                               {"Wrap points", 5},
                                               {"Findings at each viewport width", 3},
                                               {"Font size of each role at each viewport width", 10},
                                               {"Measure at each viewport width", 10},
                                               {"Card height at each viewport width", 10},
                                               {"Picture size at each viewport width", 10}};
        std::map<QString, QAccessibleTableInterface*> tables;
        for (const AccessibleNode& node : accessibleTree(window_.get()))
            if (leastRows.contains(node.name()) && node.interface->tableInterface() != nullptr)
                tables[node.name()] = node.interface->tableInterface();
        for (const auto& [name, rows] : leastRows) {
            QVERIFY2(tables.contains(name), qPrintable(name));
            QAccessibleTableInterface& table = *tables[name];
            QVERIFY2(table.rowCount() >= rows, qPrintable(name));
            QVERIFY(table.columnCount() >= 2);
            for (int row = 0; row < table.rowCount(); ++row)
                for (int column = 0; column < table.columnCount(); ++column) {
                    QAccessibleInterface* const cell = table.cellAt(row, column);
                    QVERIFY(cell != nullptr && cell->tableCellInterface()->rowIndex() == row);
                    QVERIFY2(!cell->text(QAccessible::Name).isEmpty(), qPrintable(name));
                    const auto heads = cell->tableCellInterface()->columnHeaderCells();
                    QCOMPARE(heads.size(), 1);
                    QCOMPARE(heads.first()->text(QAccessible::Name), table.columnDescription(column));
                }
        }
        // The bands of the sample, as the file has them.
        QAccessibleTableInterface& bands = *tables["Bands"];
        QStringList columns;
        for (int row = 0; row < bands.rowCount(); ++row)
            columns << bands.cellAt(row, 1)->text(QAccessible::Name);
        QCOMPARE(columns, QStringList({"1", "2", "3"}));
    }

    void showsTheSameDataAsAVisibleTable() {
        trigger("Show data as table…");
        auto* table = window_->findChild<QTableWidget*>();
        QVERIFY(table != nullptr && table->isVisible());
        QCOMPARE(table->rowCount(), 3);
        QCOMPARE(table->item(1, 1)->text(), QString("2"));
        // An edit is followed.
        QVERIFY(document()
                    .edit("Columns",
                          [](project::Project& project) {
                              project.row().variants[0].bands[1].set.row.columns = 4;
                          })
                    .empty());
        QTRY_COMPARE(table->item(1, 1)->text(), QString("4"));
    }

    void offersCardsAndPartsOfTheRow() {
        const auto tree = accessibleTree(window_.get());
        const auto nodeOf = [&](const QString& name) {
            return std::ranges::find_if(tree,
                                        [&](const AccessibleNode& node) { return node.name() == name; });
        };
        const auto card = nodeOf("Card 2 of 4");
        QVERIFY(card != tree.end());
        QCOMPARE(card->role(), QAccessible::ListItem);
        const auto& parts = project().row().cards[1].parts;
        QCOMPARE(card->interface->childCount(), static_cast<int>(parts.size()));
        int findings = 0;
        for (int i = 0; i < card->interface->childCount(); ++i) {
            QAccessibleInterface* const part = card->interface->child(i);
            QVERIFY(!part->text(QAccessible::Name).isEmpty());
            QVERIFY(card->interface->rect().contains(part->rect().center()));
            const QString description = part->text(QAccessible::Description);
            if (part->role() != QAccessible::Graphic)
                QVERIFY2(description.contains("Font size") && description.contains("Lines"),
                         qPrintable(description));
            findings += description.contains("Warning: ") ? 1 : 0;
        }
        QVERIFY(findings > 0);
        // What is under a point is the part that is drawn there.
        QAccessibleInterface* const first = card->interface->child(1);
        const QPoint middle = first->rect().center();
        QAccessibleInterface* const view =
            QAccessible::queryAccessibleInterface(window_->findChild<row::RowView*>());
        QCOMPARE(view->childAt(middle.x(), middle.y()), first);
    }

    void readsTheTextOfALabelThatHasAName() {
        openPanel(panels::PanelKind::Pictures);
        session().selection.select(Place{0, 0});
        settle();
        QStringList names;
        for (const AccessibleNode& node : accessibleTree(window_.get()))
            if (node.role() == QAccessible::StaticText) names << node.name();
        QVERIFY2(names.filter(QRegularExpression("^Slot: .*px")).size() == 1, qPrintable(names.join('\n')));
    }

    // Tab goes down, and along a line from its start to its end. The fields of the drawing of margins and
    // paddings go around it.
    void goesThroughPanelsAsTheyAreRead_data() { addScreens(panelNames); }
    void goesThroughPanelsAsTheyAreRead() {
        QFETCH(QString, screen);
        QVERIFY(show(screen) != nullptr);
        const auto placeOf = [this](const QWidget* widget) {
            return QRect(widget->mapTo(&side(), QPoint()), widget->size());
        };
        const auto nameOf = [](QWidget* widget) {
            return QAccessible::queryAccessibleInterface(widget)->text(QAccessible::Name);
        };
        const auto isInDrawing = [](const QWidget* widget) {
            for (; widget != nullptr; widget = widget->parentWidget())
                if (qobject_cast<const panels::DimensionDrawing*>(widget) != nullptr) return true;
            return false;
        };
        auto* const panel = side().findChild<QStackedWidget*>()->currentWidget();
        QWidget* widget = side().findChild<QTabBar*>();
        widget->setFocus(Qt::TabFocusReason);
        QWidget* before = nullptr;
        QStringList wrong;
        int count = 0;
        for (int step = 0; step < 200; ++step) {
            QTest::keyClick(widget, Qt::Key_Tab);
            widget = QApplication::focusWidget();
            // A label with links keeps the focus from link to link.
            if (widget == before) continue;
            if (!panel->isAncestorOf(widget)) {
                if (before != nullptr) break;
                continue;
            }
            ++count;
            if (before != nullptr && !(isInDrawing(before) && isInDrawing(widget))) {
                const QRect from = placeOf(before);
                const QRect to = placeOf(widget);
                const bool below = to.center().y() > from.bottom();
                const bool beside = to.left() >= from.right() && to.bottom() > from.top();
                if (!below && !beside) wrong << nameOf(before) + " → " + nameOf(widget);
            }
            before = widget;
        }
        QVERIFY2(count >= 5, qPrintable(QString::number(count)));
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join('\n')));
    }

    void movesNothingByItself() {
        QCOMPARE(window_->style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, window_.get()),
                 0);
        QVERIFY(window_->findChildren<QAbstractAnimation*>().isEmpty());
    }

    // With text of 1.5 times the usual size. WCAG 2.2 SC 1.4.4 asks for twice, which browsers and Qt give by
    // the scale of the whole window.
    void holdsLargerText_data() { addAllScreens(); }
    void holdsLargerText() {
        QFETCH(QString, screen);
        const QFont usual = QApplication::font();
        const auto restore = qScopeGuard([&] {
            bare_.reset();
            window_.reset();
            QApplication::setFont(usual);
        });
        QFont large = usual;
        large.setPointSizeF(usual.pointSizeF() * 1.5);
        QApplication::setFont(large);
        open("shore-walks");
        window_->resize(1920, 1080);
        QWidget* const root = show(screen);
        QVERIFY(root != nullptr);
        settle();
        QStringList clipped;
        int count = 0;
        const auto expect = [&](const QWidget* widget, int width, int height) {
            ++count;
            if (widget->width() < width || widget->height() < height)
                clipped << QString("%1 %2 “%3”: %4 × %5 of %6 × %7")
                               .arg(widget->metaObject()->className(), widget->objectName(),
                                    widget->property("text").toString().left(60))
                               .arg(widget->width())
                               .arg(widget->height())
                               .arg(width)
                               .arg(height);
        };
        for (QWidget* widget : root->findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->visibleRegion().isEmpty()) continue;
            const QFontMetrics metrics = widget->fontMetrics();
            if (auto* label = qobject_cast<QLabel*>(widget)) {
                if (label->text().isEmpty()) continue;
                if (label->wordWrap())
                    expect(label, 0, label->heightForWidth(label->width()));
                else
                    expect(label, label->minimumSizeHint().width(), metrics.height());
            } else if (auto* button = qobject_cast<QAbstractButton*>(widget)) {
                if (button->text().isEmpty()) continue;
                expect(button, metrics.horizontalAdvance(QString(button->text()).remove('&')),
                       metrics.height());
            } else if (qobject_cast<QLineEdit*>(widget) != nullptr ||
                       qobject_cast<QComboBox*>(widget) != nullptr) {
                expect(widget, 0, metrics.height() + 4);
            }
        }
        QVERIFY(count > (smallDialogNames.contains(screen) ? 1 : 2));
        QVERIFY2(clipped.isEmpty(), qPrintable(clipped.join('\n')));
    }

    // Secondary text and lines have the contrast of text in black and white.
    void respectsHighContrast() {
        for (const QPalette& palette : {window::contrastLightPalette(), window::contrastDarkPalette()}) {
            const row::Ink ink = row::Ink::of(palette);
            for (const QColor& colour : {ink.text, ink.quiet, ink.line, controls::caution(palette),
                                         controls::quiet(palette), controls::hairline(palette)})
                QVERIFY(row::contrast(colour, ink.ground) >= 20);
            QVERIFY(row::contrast(ink.accent, ink.ground) >= 7);
            QVERIFY(row::contrast(palette.color(QPalette::HighlightedText),
                                  palette.color(QPalette::Highlight)) >= 7);
        }
    }

    // By nothing but names, actions and values.
    void selectsAndEditsThroughTheTreeAlone() {
        const QString press = QAccessibleActionInterface::pressAction();
        // Select a part.
        const QString heading = QString::fromStdString(
            project::plainText(std::get<project::TextPart>(project().row().cards[1].parts[1]).copy));
        const AccessibleNode part = node(QAccessible::Heading, heading);
        QVERIFY(part.interface != nullptr && part.can(press) && !part.state().selected);
        part.doAction(press);
        settle();
        QVERIFY(part.state().selected);
        QCOMPARE(session().selection.place(), std::optional(Place{1, 1}));
        // Change a size: as a value, as text, and by a step.
        const auto lineHeight = [&] { return node(QAccessible::SpinBox, "Heading line height"); };
        QVERIFY(lineHeight().interface != nullptr);
        lineHeight().interface->valueInterface()->setCurrentValue(1.5);
        settle();
        const auto held = [this] { return project().row().style.text.find("heading")->lineHeight; };
        const auto first = held();
        QVERIFY(first.has_value());
        lineHeight().interface->setText(QAccessible::Value, "1.3");
        settle();
        QVERIFY(held() != first);
        QCOMPARE(lineHeight().interface->valueInterface()->currentValue().toDouble(), 1.3);
        lineHeight().doAction(QAccessibleActionInterface::increaseAction());
        settle();
        QCOMPARE(lineHeight().interface->text(QAccessible::Value), QString("1.35"));
        // A value out of range is refused.
        lineHeight().interface->setText(QAccessible::Value, "-3");
        settle();
        QCOMPARE(lineHeight().interface->text(QAccessible::Value), QString("1.35"));
        // Move the width.
        const AccessibleNode axis = node(QAccessible::Slider, "Viewport width axis");
        QVERIFY(axis.interface != nullptr);
        axis.interface->valueInterface()->setCurrentValue(700);
        QCOMPARE(session().view.width(), 700.0);
    }

    // Open the worst finding, read it, apply its first remedy, copy the stylesheet.
    void fixesAFindingThroughTheTreeAlone() {
        const auto head = [this] {
            for (const AccessibleNode& one : accessibleTree(window_.get()))
                if (one.role() == QAccessible::Button && one.name().startsWith("Findings: "))
                    return one.name();
            return QString();
        };
        const auto all = session().checks.findings();
        QCOMPARE(all.front().check, std::string("out-of-line"));
        QVERIFY2(head().contains("warning"), qPrintable(head()));
        // Close the drawer, and open it.
        for (const bool open : {false, true}) {
            QVERIFY(press(QAccessible::Button, head()));
            QCOMPARE(static_cast<bool>(node(QAccessible::Button, head()).state().expanded), open);
            QCOMPARE(node(QAccessible::List, "Findings").interface != nullptr, open);
        }
        const AccessibleNode list = node(QAccessible::List, "Findings");
        QVERIFY(list.interface != nullptr);
        QCOMPARE(list.interface->childCount(), static_cast<int>(all.size()));
        QAccessibleInterface* const worst = list.interface->child(0);
        QCOMPARE(worst->role(), QAccessible::ListItem);
        QCOMPARE(worst->parent(), list.interface);
        const QString worstText = worst->text(QAccessible::Name);
        QVERIFY(worstText.startsWith("Warning, "));
        QVERIFY(worst->state().collapsed && !worst->state().selected && !session().checks.chosen());
        QAccessibleActionInterface* const actions = worst->actionInterface();
        QVERIFY(actions != nullptr &&
                actions->actionNames().contains(QAccessibleActionInterface::pressAction()));
        actions->doAction(QAccessibleActionInterface::pressAction());
        waitForJobs(*window_);
        QCOMPARE(session().checks.chosen(), std::optional<std::size_t>(0));
        QVERIFY(worst->state().expanded && worst->state().selected);
        QCOMPARE(session().view.width(), session().checks.findings()[0].at);
        // Its remedies are in its row.
        QTRY_COMPARE(worst->childCount(), 1);
        QAccessibleInterface* const box = worst->child(0);
        QCOMPARE(box->parent(), worst);
        const auto remedy = [this] {
            return node(QAccessible::Button, "Reserve space for the longest heading in every card");
        };
        QTRY_VERIFY(remedy().interface != nullptr);
        QVERIFY(remedy().path.contains("ListItem “Warning, "));
        QVERIFY(remedy().interface->text(QAccessible::Description).contains("Adds 1 note: “Spare room”"));
        const project::Project before = project();
        QVERIFY(press(QAccessible::Button, remedy().name()));
        QTRY_VERIFY(project() != before);
        waitForJobs(*window_);
        QTRY_VERIFY(session().checks.isFresh());
        QVERIFY(session().checks.findings().front().check != "out-of-line");
        QVERIFY(list.interface->child(0)->text(QAccessible::Name) != worstText);
        QGuiApplication::clipboard()->clear();
        QVERIFY(press(QAccessible::Button, "Copy stylesheet"));
        QTRY_VERIFY(QGuiApplication::clipboard()->text().contains(".walks-trio {"));
    }

    // Solve sizes, read the result, hide its preview, apply it, copy the stylesheet.
    void solvesAndExportsThroughTheTreeAlone() {
        QVERIFY(press(QAccessible::PageTab, "Text"));
        document().edit("Larger heading", [](project::Project& project) {
            for (project::Band& band : project.row().variants[0].bands)
                band.set.text.of("heading").size = units::Ramp::flat(60);
        });
        settle();
        const project::Project before = project();
        QVERIFY(press(QAccessible::Button, "Solve sizes"));
        QTRY_VERIFY(node(QAccessible::Button, "Apply sizes").interface != nullptr);
        waitForJobs(*window_);
        const AccessibleNode result = node(QAccessible::StaticText, "Result");
        QVERIFY(result.interface == nullptr || !result.interface->text(QAccessible::Value).isEmpty());
        const AccessibleNode preview = node(QAccessible::CheckBox, "Preview (F4)");
        QVERIFY(preview.interface != nullptr && preview.state().checked);
        preview.doAction(QAccessibleActionInterface::toggleAction());
        settle();
        QVERIFY(!preview.state().checked);
        // Assistive technology presses a button for a tenth of a second.
        QVERIFY(press(QAccessible::Button, "Apply sizes"));
        QTRY_VERIFY(project() != before);
        QGuiApplication::clipboard()->clear();
        QVERIFY(press(QAccessible::Button, "Copy stylesheet"));
        QTRY_VERIFY(QGuiApplication::clipboard()->text().contains(".walks-trio {"));
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::AccessibilityTest)
#include "accessibility_test.moc"
