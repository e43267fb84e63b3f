// The row tried with other copy and cards, and as a reader sees it who zooms in. What is found then is
// compared with the command line.
#include <QJsonArray>
#include <QJsonDocument>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QRadioButton>
#include <QtTest>

#include "checks/room_for_copy.h"
#include "controls/copy_edit.h"
#include "controls/number_field.h"
#include "document/wording.h"
#include "panels/side_panel.h"
#include "panels/trial_box.h"
#include "row/row_view.h"
#include "showing.h"

namespace tenter::desktop {

using project::Trial;

class TrialTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = shownWindow(file());
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
        window_->findChild<panels::SidePanel*>()->openPanel(panels::PanelKind::Words);
        box_ = window_->findChild<panels::TrialBox*>();
        QTRY_VERIFY(box_ != nullptr && box_->isVisible());
    }
    void cleanup() { window_.reset(); }

    void showsTheRowUnderEachTrialAndLeavesTheProjectAsItIs() {
        const project::Project before = document().project();
        for (const Trial::Kind kind : project::trialKinds()) {
            choice(trialTitle(kind))->click();
            QVERIFY(session().shown.project() == project::tried(before, {kind}));
            QCOMPARE(session().layouts.layout().cards.size(), session().shown.project().row().cards.size());
            QVERIFY(document().project() == before && !document().isModified());
            auto* note = statusButton();
            QVERIFY(note != nullptr && note->text().contains(trialTitle(kind)));
        }
        // Back by the note in the status bar.
        statusButton()->click();
        QVERIFY(session().shown.project() == before && statusButton() == nullptr);
        QVERIFY(choice("No test")->isChecked());
    }

    // What the window finds under a trial is what `tenter-cli check --try` finds.
    void findsWhatTheCommandLineFinds() {
        choice(trialTitle(Trial::Kind::LongestTitles))->click();
        const auto* checks = &session().checks;
        QTRY_VERIFY(checks->isFresh());
        QProcess process;
        process.start(TENTER_CLI, {"check", file(), "--try", "longest-titles", "--json"});
        QVERIFY(process.waitForFinished());
        const QJsonArray told = QJsonDocument::fromJson(process.readAllStandardOutput()).array();
        QVERIFY(told.size() > 1);
        QCOMPARE(static_cast<qsizetype>(checks->findings().size()), told.size());
    }

    void editsTheCopyAsItIsWhileLongerCopyIsShown() {
        session().selection.select(Place{0, 1});
        choice(trialTitle(Trial::Kind::LongerCopy))->click();
        const auto& words = std::get<project::TextPart>(document().project().row().cards[0].parts[1]).copy;
        QTRY_VERIFY(window_->findChild<controls::CopyEdit*>() != nullptr);
        const auto edits = window_->findChildren<controls::CopyEdit*>();
        const auto shown = std::ranges::find_if(
            edits, [&](const controls::CopyEdit* edit) { return edit->copyText() == words; });
        QVERIFY(shown != edits.end());
        QVERIFY(project::plainText(
                    std::get<project::TextPart>(session().shown.project().row().cards[0].parts[1]).copy)
                    .size() > project::plainText(words).size());
        // A larger share is longer at once.
        const std::size_t before = lengthShown();
        auto* share = box_->findChild<controls::NumberField*>();
        share->setFocus();
        QTest::keyClick(share, Qt::Key_Up, Qt::ShiftModifier);
        QVERIFY(lengthShown() > before);
    }

    void selectsNothingWherePartsAreOthers() {
        session().selection.select(Place{1, 1});
        choice(trialTitle(Trial::Kind::NoPictures))->click();
        QVERIFY(!session().selection.place());
        session().selection.select(Place{1, 0});
        QVERIFY(!session().selection.place());
        choice("No test")->click();
        session().selection.select(Place{1, 0});
        QCOMPARE(session().selection.card(), std::optional<std::size_t>(1));
    }

    void triesThemAllInOnePress() {
        QPushButton* all = nullptr;
        for (QPushButton* button : box_->findChildren<QPushButton*>())
            if (button->text() == "Run all tests") all = button;
        QVERIFY(all != nullptr);
        all->click();
        QStringList told;
        for (const QLabel* label : box_->findChildren<QLabel*>())
            if (label->accessibleName().startsWith("Findings with: ") && !label->text().isEmpty())
                told << label->text();
        QCOMPARE(static_cast<std::size_t>(told.size()), project::trialKinds().size());
        QVERIFY(told.filter("more").size() > 1);
        // What was told of a row that is another now is told no more.
        session().scope.setSetting("Gap", "row/columnGap", "77px");
        QTRY_VERIFY(foundWith(trialTitle(Trial::Kind::CardMore)).isEmpty());
    }

    void tellsTheRoomThatCoreComputes() {
        session().selection.select(Place{0, 1});
        const auto rooms =
            checks::roomForCopy(document().project(), session().view.variant(), document().store());
        const auto room = std::ranges::find_if(rooms, [](const checks::RoomForCopy& one) {
            return one.place == project::PartRef{0, 1};
        });
        QVERIFY(room != rooms.end());
        const auto label = [&]() -> const QLabel* {
            for (const QLabel* each : window_->findChildren<QLabel*>())
                if (each->accessibleName() == "Room for longer text, heading" && each->isVisible())
                    return each;
            return nullptr;
        };
        QTRY_VERIFY(label() != nullptr);
        QVERIFY2(label()->text().contains(QString::number(std::abs(room->spare))) || room->spare == 0,
                 qPrintable(label()->text()));
        QVERIFY(label()->text().contains(pixels(room->width)));
    }

    // A window of 1600 px at 400 % is a page of 400 px. CSSOM View 1 § 2, page zoom.
    void showsThePageAsAReaderZoomsIn() {
        session().view.setWidth(1600);
        zoom("400\u00A0%")->trigger();
        QCOMPARE(session().view.width(), 400.0);
        auto* row = window_->findChild<row::RowView*>();
        QCOMPARE(row->zoom(), 4.0);
        zoom("200\u00A0%")->trigger();
        QCOMPARE(session().view.width(), 800.0);
        zoom("100\u00A0%")->trigger();
        QCOMPARE(session().view.width(), 1600.0);
        QCOMPARE(row->zoom(), 1.0);
        // Zooming the view in another way ends browser zoom.
        zoom("200\u00A0%")->trigger();
        row->setZoom(1.5);
        QVERIFY(zoom("100\u00A0%")->isChecked());
    }

private:
    static QString file() {
        return QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json");
    }
    Document& document() { return session().document; }
    Session& session() { return window_->session; }
    QRadioButton* choice(const QString& title) {
        for (QRadioButton* button : box_->findChildren<QRadioButton*>())
            if (button->text() == title) return button;
        return nullptr;
    }
    QPushButton* statusButton() {
        for (QPushButton* button : window_->findChildren<QPushButton*>())
            if (button->text().startsWith("Text test: ") && button->isVisible()) return button;
        return nullptr;
    }
    QString foundWith(const QString& title) {
        for (const QLabel* label : box_->findChildren<QLabel*>())
            if (label->accessibleName() == "Findings with: " + title) return label->text();
        return "?";
    }
    std::size_t lengthShown() {
        return project::plainText(
                   std::get<project::TextPart>(session().shown.project().row().cards[0].parts[2]).copy)
            .size();
    }
    QAction* zoom(const QString& title) {
        for (QAction* action : window_->findChildren<QAction*>())
            if (action->text() == title && action->isCheckable()) return action;
        return nullptr;
    }

    std::unique_ptr<TestWindow> window_;
    panels::TrialBox* box_ = nullptr;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::TrialTest)
#include "trial_test.moc"
