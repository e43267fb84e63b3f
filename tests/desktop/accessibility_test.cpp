// What assistive technology gets of every screen: names, roles, room for a finger, the data of plots, an
// order.
#include <QComboBox>
#include <QDialog>
#include <QtTest>
#include <map>

#include "accessible_tree.h"
#include "at_the_window.h"
#include "window/theme.h"

namespace tenter::desktop {

namespace {

constexpr int leastTarget = 24;  // CSS px. WCAG 2.2 SC 2.5.8
const QStringList panelNames{"Row", "Text", "Spacing", "Colour", "Words", "Pictures"};
const QStringList dialogNames{"New row…",    "Import row from page…", "Compare with browser…",
                              "Stylesheet…", "Page folder…",          "Pictures…",
                              "Spec sheet…", "Design tokens…",        "Picture of this view…"};

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
        QVERIFY(count > 5);
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join('\n')));
    }

    void givesEveryTargetRoomForAFinger_data() { addAllScreens(); }
    void givesEveryTargetRoomForAFinger() {
        QFETCH(QString, screen);
        QWidget* const root = show(screen);
        QVERIFY(root != nullptr);
        QStringList small;
        int count = 0;
        for (const AccessibleNode& node : accessibleTree(root)) {
            if (!isTarget(node)) continue;
            ++count;
            const QRect target = targetOf(node);
            if (target.width() < leastTarget || target.height() < leastTarget)
                small << QString("%1 × %2: %3").arg(target.width()).arg(target.height()).arg(node.path);
        }
        QVERIFY(count > 2);
        QVERIFY2(small.isEmpty(), qPrintable(small.join('\n')));
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
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::AccessibilityTest)
#include "accessibility_test.moc"
