// The choice of the break profile, and the marks where browsers differ. Results are compared with the command
// line, which the engine tests compare with browsers.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMenuBar>
#include <QProcess>
#include <QtTest>

#include "axis/axis_pane.h"
#include "axis/differences_lane.h"
#include "document/wording.h"
#include "row/figures.h"
#include "row/row_view.h"
#include "session/engine_sweep.h"
#include "showing.h"

namespace tenter::desktop {

class EnginesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        forgetSettings();
        makeWindow();
    }
    void cleanup() { window_.reset(); }

    void laysOutWithTheChosenProfile() {
        for (const char* engine : {"gecko", "blink"}) {
            session().view.setProfile(*text::profile(engine));
            for (const double width : {391.0, 645.0, 1001.0}) {
                session().view.setWidth(width);
                QCOMPARE(lineCounts(), commandLineCounts(engine, width));
            }
        }
    }

    void savesTheChoiceInTheSettingsNotInTheProject() {
        const std::string before = project::write(session().document.project());
        QAction* firefox = action("Line breaks as in Firefox");
        QVERIFY(firefox != nullptr);
        firefox->trigger();
        QCOMPARE(&session().view.profile(), &text::gecko());
        QVERIFY(!session().document.isModified());
        QCOMPARE(session().document.undoStack().count(), 0);
        QCOMPARE(project::write(session().document.project()), before);
        makeWindow();
        QCOMPARE(&session().view.profile(), &text::gecko());
        QVERIFY(action("Line breaks as in Firefox")->isChecked());
    }

    void showsDifferencesOnTheAxis() {
        const EngineSweep& sweep = swept();
        QVERIFY(!sweep.differences().empty());
        const sweep::LineDifference& difference = sweep.differences().front();
        const auto index = [&](const QJsonArray& counts) {
            return counts[static_cast<int>(difference.place.card)]
                .toArray()[static_cast<int>(difference.place.part)]
                .toInt();
        };
        // At its ends, `geometry` rounds lengths to the engine's grid, and the sweep by the mean of what
        // rounding takes.
        const double width = (difference.first + difference.last) / 2;
        QCOMPARE(index(commandLineCounts("blink", width)), static_cast<int>(difference.lines[0]));
        QCOMPARE(index(commandLineCounts("gecko", width)), static_cast<int>(difference.lines[1]));
        auto* lane = window_->findChild<axis::DifferencesLane*>();
        // In a window of this height the lane is closed at first.
        for (QAction* toggle : window_->findChild<axis::AxisPane*>()->laneActions())
            if (toggle->text() == "Chromium/Firefox differences" && !toggle->isChecked()) toggle->trigger();
        QVERIFY(lane != nullptr && lane->isVisible());
        const auto* pane = window_->findChild<axis::AxisPane*>();
        const QString says = lane->toolTipAt(pane->scale().x(difference.first));
        QVERIFY2(says.contains("Firefox") && says.contains("card"), qPrintable(says));
    }

    void keyGoesToTheNextDifference() {
        const EngineSweep& sweep = swept();
        session().view.setWidth(session().shown.project().leastWidth);
        const double first = sweep.ranges().front().first > session().view.width()
                                 ? sweep.ranges().front().first
                                 : sweep.ranges().at(1).first;
        QTest::keyClick(window_.get(), Qt::Key_E, Qt::ControlModifier);
        QCOMPARE(session().view.width(), first);
    }

    void computesDifferencesAgainAfterAnEdit() {
        swept();
        auto* sweep = window_->findChild<EngineSweep*>();
        // Text that both browsers break only at spaces.
        session().document.edit("Words", [](project::Project& project) {
            for (project::Card& card : project.row().cards)
                for (project::Part& part : card.parts)
                    if (auto* text = std::get_if<project::TextPart>(&part))
                        text->copy = {
                            {project::Run::Kind::Plain, "low water and high water come and go", ""}};
        });
        QVERIFY(!sweep->isFresh());
        QTRY_VERIFY_WITH_TIMEOUT(sweep->isFresh(), 20000);
        QVERIFY(sweep->differences().empty());
    }

    void figuresShowTheLineCountOfTheOtherBrowser() {
        const sweep::LineDifference difference = swept().differences().front();
        session().view.setWidth(difference.first);
        const std::size_t part =
            session().layouts.layout().cards[difference.place.card].firstPart + difference.place.part;
        const QString under = row::figuresOf(session().layouts, session().view.variant(), part).asSentence();
        QVERIFY2(under.contains("Firefox " + linesTitle(difference.lines[1])), qPrintable(under));
        session().view.setProfile(text::gecko());
        const QString over = row::figuresOf(session().layouts, session().view.variant(), part).asSentence();
        QVERIFY2(over.contains("Chromium " + linesTitle(difference.lines[0])), qPrintable(over));
    }

    void overlayMarksThePartThatDiffers() {
        const sweep::LineDifference difference = swept().differences().front();
        session().view.setWidth(difference.first);
        auto* row = window_->findChild<row::RowView*>();
        const std::size_t part =
            session().layouts.layout().cards[difference.place.card].firstPart + difference.place.part;
        row->ensureVisible(part);
        QCoreApplication::processEvents();
        const QImage marked = row->viewport()->grab().toImage();
        for (QAction* overlay : row->overlayActions())
            overlay->setChecked(false);
        const QImage plain = row->viewport()->grab().toImage();
        QVERIFY(marked != plain);
    }

    // UAX #14, class SA: Thai has no spaces between words.
    void figuresExplainThatThaiIsBrokenByADictionary() {
        session().document.edit("Words", [](project::Project& project) {
            for (project::Part& part : project.row().cards[0].parts)
                if (auto* text = std::get_if<project::TextPart>(&part))
                    text->copy = {{project::Run::Kind::Plain, "น้ำลงและน้ำขึ้น", ""}};
        });
        const auto noteOf = [&](std::size_t card) {
            const layout::LaidCard& laid = session().layouts.layout().cards[card];
            for (std::uint32_t i = 0; i < laid.partCount; ++i)
                if (!session().layouts.layout().parts[laid.firstPart + i].picture)
                    return row::figuresOf(session().layouts, session().view.variant(), laid.firstPart + i)
                        .note;
            return QString("no text");
        };
        QVERIFY2(noteOf(0).contains("dictionary"), qPrintable(noteOf(0)));
        QCOMPARE(noteOf(1), QString());
    }

private:
    void makeWindow() {
        window_.reset();
        window_ = std::make_unique<TestWindow>();
        window_->resize(1280, 800);
        window_->show();
        window_->openFile(sample());
        openPlotsAndFindings(*window_);
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    }
    Session& session() { return window_->session; }
    static QString sample() {
        return QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json");
    }
    const EngineSweep& swept() {
        auto* sweep = window_->findChild<EngineSweep*>();
        if (!QTest::qWaitFor([&] { return sweep->isFresh(); }, 20000)) qWarning("the sweep did not end");
        return *sweep;
    }
    QAction* action(const QString& text) {
        for (QAction* menu : window_->menuBar()->actions())
            for (QAction* action : menu->menu()->actions())
                if (action->text().remove(QLatin1Char('&')) == text) return action;
        return nullptr;
    }
    /// The line counts of the parts of each card; pictures have 0.
    QJsonArray lineCounts() {
        QJsonArray cards;
        const layout::Layout& layout = session().layouts.layout();
        for (const layout::LaidCard& card : layout.cards) {
            QJsonArray parts;
            for (std::uint32_t i = 0; i < card.partCount; ++i)
                parts.append(static_cast<int>(layout.parts[card.firstPart + i].lineCount));
            cards.append(parts);
        }
        return cards;
    }
    static QJsonArray commandLineCounts(const QString& engine, double width) {
        QProcess process;
        process.start(TENTER_CLI,
                      {"geometry", sample(), "--engine", engine, "--widths", QString::number(width)});
        process.waitForFinished();
        const QJsonObject document = QJsonDocument::fromJson(process.readAllStandardOutput()).object();
        QJsonArray cards;
        for (const QJsonValue& card : document["layouts"].toArray().first().toObject()["cards"].toArray()) {
            QJsonArray parts;
            for (const QJsonValue& part : card.toObject()["parts"].toArray())
                parts.append(static_cast<int>(part.toObject()["lines"].toArray().size()));
            cards.append(parts);
        }
        return cards;
    }

    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::EnginesTest)
#include "engines_test.moc"
