// Base of the window tests: opens a sample, clicks, chooses, types, finds labels.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QtTest>
#include <algorithm>

#include "controls/fold.h"
#include "controls/number_field.h"
#include "panels/side_panel.h"
#include "showing.h"

namespace tenter::desktop {

/// `name` is an accessible name, or the text of a button.
class AtTheWindow : public QObject {
protected:
    /// Opens a sample by its name, without its wishes, in a window of 1280 × 800.
    void open(const QString& sample) {
        folder_ = std::make_unique<QTemporaryDir>();
        sample_ = bareSample(sample, *folder_);
        window_ = shownWindow(sample_);
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    }
    Session& session() { return window_->session; }
    Document& document() { return session().document; }
    const project::Project& project() { return document().project(); }
    panels::SidePanel& side() { return *window_->findChild<panels::SidePanel*>(); }
    void openPanel(panels::PanelKind kind) {
        side().openPanel(kind);
        settle();
    }
    /// Waits until the panels are refreshed.
    void settle() {
        QTest::qWait(20);
        waitForJobs(*window_);
    }
    template <class T>
    T* named(const QString& name) {
        for (T* one : window_->findChildren<T*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }
    void choose(const QString& name, const QString& title) {
        auto* list = named<QComboBox>(name);
        QVERIFY2(list != nullptr && list->findText(title) >= 0, qPrintable(name + ": " + title));
        list->setCurrentIndex(list->findText(title));
        Q_EMIT list->activated(list->currentIndex());
        settle();
    }
    controls::NumberField* field(const QString& name) { return named<controls::NumberField>(name); }
    controls::Fold* fold(const QString& title) {
        for (auto* one : window_->findChildren<controls::Fold*>())
            if (one->button()->text().startsWith(title)) return one;
        return nullptr;
    }
    QLabel* label(const QString& text) {
        for (QLabel* one : window_->findChildren<QLabel*>())
            if (one->isVisible() && one->text().contains(text)) return one;
        return nullptr;
    }
    void press(const QString& text) {
        for (auto* button : window_->findChildren<QAbstractButton*>())
            if ((button->text() == text || button->accessibleName() == text) && button->isVisible()) {
                button->click();
                waitForJobs(*window_);
                return;
            }
        QFAIL(qPrintable("no button " + text));
    }
    void type(const QString& name, const QString& text) {
        controls::NumberField* number = field(name);
        QVERIFY2(number != nullptr && number->isVisible(), qPrintable(name));
        number->setFocus();
        number->selectAll();
        if (text.isEmpty())
            QTest::keyClick(number, Qt::Key_Delete);
        else
            QTest::keyClicks(number, text);
        QTest::keyClick(number, Qt::Key_Return);
        settle();
    }

    std::unique_ptr<QTemporaryDir> folder_;
    QString sample_;  ///< its file
    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop
